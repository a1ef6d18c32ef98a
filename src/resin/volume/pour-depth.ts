import { finite, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface PourDepthInput {
  readonly thicknessOverDefect: Length;
  readonly depth: Length;
}

/**
 * Depth of filler from its top to the bottom of the defect that it fills.
 *
 * $$h = t_p + d$$
 *
 * @param input.thicknessOverDefect t_p, filler above the surface of the sound pipe [m], >= 0
 * @param input.depth d, depth of the defect below that surface [m], >= 0; 0 where it is on the inside
 * @returns depth of the pour [m]
 * @throws CalculationError `invalid-input`
 * @remarks What a maker allows to be placed at once speaks of this depth, not of the thickness above the pipe.
 */
export function pourDepth(input: PourDepthInput): Length {
  const { thicknessOverDefect: tP, depth: d } = input;
  nonNegative(tP, 'thicknessOverDefect', 'm');
  nonNegative(d, 'depth', 'm');
  const h = tP + d;
  finite(h, 'pourDepth', 'm');
  return h as Length;
}

export const pourDepthFormula = /* @__PURE__ */ formula<PourDepthInput, Length>({
  id: 'resin/pour-depth',
  title: 'Depth of a pour of filler',
  search: ['lift', 'exotherm'],
  compute: pourDepth,
  equation: { expression: 't_p + d' },
  inputs: {
    thicknessOverDefect: {
      symbol: 't_p',
      kind: 'length',
      name: 'filler above the surface of the sound pipe',
      sample: [0, 0.03],
    },
    depth: { symbol: 'd', kind: 'length', name: 'depth of the defect below that surface', sample: [0, 0.02] },
  },
  output: { symbol: 'h', kind: 'length', name: 'depth of the pour' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
