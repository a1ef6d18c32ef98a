import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface FullCountLengthInput {
  readonly totalLength: Length;
  readonly taper: Length;
  readonly axialTapeWidth: Length;
}

/**
 * Length over which a wrap of tape must carry every layer: the end bands, one tape width on each side, carry fewer layers
 * than the rest, so that they may form the tapers.
 *
 * $$L_f = \max\left(L - 2\,l_t,\; L - 2\,w_x\right)$$
 *
 * @param input.totalLength L, length of the laminate with both tapers [m], > 0
 * @param input.taper l_t, length of one taper [m], >= 0
 * @param input.axialTapeWidth w_x, width of the tape along the pipe, taken at the first layer [m], > 0
 * @returns length of the full layer count [m]
 * @throws CalculationError `invalid-input` when nothing is left between the ends
 */
export function fullCountLength(input: FullCountLengthInput): Length {
  const { totalLength: L, taper: lt, axialTapeWidth: wx } = input;
  positive(L, 'totalLength', 'm');
  nonNegative(lt, 'taper', 'm');
  positive(wx, 'axialTapeWidth', 'm');
  const Lf = Math.max(L - 2 * lt, L - 2 * wx);
  positive(Lf, 'fullCountLength', 'm');
  return Lf as Length;
}

export const fullCountLengthFormula = /* @__PURE__ */ formula<FullCountLengthInput, Length>({
  id: 'wrap/full-count-length',
  title: 'Length that carries every layer of tape',
  compute: fullCountLength,
  equation: { expression: 'max(L - 2 * l_t, L - 2 * w_x)' },
  inputs: {
    totalLength: { symbol: 'L', kind: 'length', name: 'length of the laminate with both tapers', sample: [0.3, 3] },
    taper: { symbol: 'l_t', kind: 'length', name: 'length of one taper', sample: [0, 0.1] },
    axialTapeWidth: { symbol: 'w_x', kind: 'length', name: 'width of the tape along the pipe', sample: [0.025, 0.3] },
  },
  output: { symbol: 'L_f', kind: 'length', name: 'length that carries every layer' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
