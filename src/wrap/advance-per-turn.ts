import { formula } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';
import { advanceAt, leadCosine, leadSine } from './lead-sine.js';

export interface AdvancePerTurnInput {
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly meanDiameter: Length;
}

/**
 * Distance along the pipe by which an overlapped helical tape moves on in one turn.
 *
 * $$a = \pi D \tan\psi = \frac{w (1 - o)}{\cos\psi}$$
 *
 * @param input.tapeWidth w, width of the tape [m], > 0 and w(1 - o) < pi D
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.meanDiameter D, mean diameter of the layer being laid [m], > 0
 * @returns advance per turn [m]
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @remarks The small-angle value w(1 - o) is always the smaller one.
 */
export function advancePerTurn(input: AdvancePerTurnInput): Length {
  const { tapeWidth: w, overlap: o, meanDiameter: D } = input;
  return advanceAt(w, o, leadCosine(leadSine(w, o, D)));
}

export const advancePerTurnFormula = /* @__PURE__ */ formula<AdvancePerTurnInput, Length>({
  id: 'wrap/advance-per-turn',
  title: 'Advance of a helical tape in one turn',
  search: ['pitch', 'spiral'],
  compute: advancePerTurn,
  equation: {
    expression: 'w * (1 - o) / sqrt(1 - s^2)',
    where: [{ symbol: 's', kind: 'number', expression: 'w * (1 - o) / (pi * D)' }],
  },
  inputs: {
    tapeWidth: { symbol: 'w', kind: 'length', name: 'width of the tape', sample: [0.025, 0.3] },
    overlap: {
      symbol: 'o',
      kind: 'ratio',
      name: 'overlap of neighbouring turns, as a part of the tape width',
      sample: [0, 0.8],
    },
    meanDiameter: { symbol: 'D', kind: 'length', name: 'mean diameter of the layer being laid', sample: [0.06, 1.2] },
  },
  output: { symbol: 'a', kind: 'length', name: 'advance per turn' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'cylinder unrolled flat; tape area equals layers times wrapped area' } },
  limits: [],
});
