import { formula, positive, properFraction, wholeNumber } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';

export interface FinishedDiameterInput {
  readonly outsideDiameter: Length;
  readonly layers: number;
  readonly layerThickness: Length;
  readonly overlap?: Ratio | undefined;
}

/**
 * Mean diameter over a finished wrap: of sheet by its layers, of overlapped tape by the mean of layers of its passes.
 *
 * $$D_N = D + \frac{2 N t}{1 - o}$$
 *
 * @param input.outsideDiameter D, surface that the first layer is laid on [m], > 0
 * @param input.layers          N, layers of sheet, or passes of tape, >= 1
 * @param input.layerThickness  t [m], > 0
 * @param input.overlap         o, of neighbouring turns of the tape [1], from 0 up to, not including, 1; 0 for sheet
 * @returns mean diameter of the finished surface [m]
 * @throws CalculationError `invalid-input`
 * @remarks Between full turns an overlapped pass leaves its mean of layers, so tape grows more than its counted layers.
 */
export function finishedDiameter(input: FinishedDiameterInput): Length {
  const { outsideDiameter: D, layers: N, layerThickness: t, overlap: o = 0 as Ratio } = input;
  positive(D, 'outsideDiameter', 'm');
  wholeNumber(N, 1, 'layers');
  positive(t, 'layerThickness', 'm');
  properFraction(o, 'overlap');
  const finished = D + (2 * N * t) / (1 - o);
  positive(finished, 'finishedDiameter', 'm');
  return finished as Length;
}

export const finishedDiameterFormula = /* @__PURE__ */ formula<FinishedDiameterInput, Length>({
  id: 'wrap/finished-diameter',
  title: 'Diameter over the finished wrap',
  compute: finishedDiameter,
  equation: { expression: 'D + 2 * N * t / (1 - o)' },
  inputs: {
    outsideDiameter: {
      symbol: 'D',
      kind: 'length',
      name: 'diameter of the surface that the first layer is laid on',
      sample: [0.0213, 1.2],
    },
    layers: { symbol: 'N', kind: 'count', name: 'layers of sheet, or passes of tape', sample: [1, 40] },
    layerThickness: { symbol: 't', kind: 'length', name: 'thickness of one layer', sample: [0.0002, 0.002] },
    overlap: { symbol: 'o', kind: 'ratio', name: 'overlap of the tape', sample: [0, 0.8], default: 0 },
  },
  output: { symbol: 'D_N', kind: 'length', name: 'mean diameter of the finished surface' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
