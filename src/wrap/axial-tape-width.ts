import { formula } from '../formula/index.js';
import type { Length, Ratio } from '../quantity/index.js';
import { axialWidthAt, leadCosine, leadSine } from './lead-sine.js';

export interface AxialTapeWidthInput {
  readonly tapeWidth: Length;
  readonly overlap: Ratio;
  readonly meanDiameter: Length;
}

/**
 * Width that a helical tape takes up along the pipe.
 *
 * $$w_x = \frac{w}{\cos\psi}$$
 *
 * @param input.tapeWidth w, width of the tape [m], > 0 and w(1 - o) < pi D
 * @param input.overlap o, overlap of neighbouring turns, as a part of the tape width [1], from 0 up to, not
 *   including, 1
 * @param input.meanDiameter D, mean diameter of the layer being laid [m], > 0
 * @returns axial width of the tape [m]
 * @throws CalculationError `invalid-input`; `no-solution` when w(1 - o) reaches pi D
 * @remarks The full layer count starts one such width in from each edge of a pass.
 */
export function axialTapeWidth(input: AxialTapeWidthInput): Length {
  const { tapeWidth: w, overlap: o, meanDiameter: D } = input;
  return axialWidthAt(w, leadCosine(leadSine(w, o, D)));
}

export const axialTapeWidthFormula = /* @__PURE__ */ formula<AxialTapeWidthInput, Length>({
  id: 'wrap/axial-tape-width',
  title: 'Width of a helical tape along the pipe',
  compute: axialTapeWidth,
  equation: {
    expression: 'w / sqrt(1 - s^2)',
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
  output: { symbol: 'w_x', kind: 'length', name: 'axial width of the tape' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'cylinder unrolled flat; tape area equals layers times wrapped area' } },
  limits: [],
});
