import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface FreeTaperInput {
  readonly totalLength: Length;
  readonly taper: Length;
  readonly fullCountLength: Length;
}

/**
 * What is left of a taper beyond the end bands of the tape: the steps of the passes share it out.
 *
 * $$l_s = \max\left(0,\; \frac{L_f - (L - 2\,l_t)}{2}\right)$$
 *
 * @param input.totalLength L, length of the laminate with both tapers [m], > 0
 * @param input.taper l_t, length of one taper [m], >= 0
 * @param input.fullCountLength L_f, length over which the wrap carries every layer before its passes are stepped [m],
 *   > 0, at most L
 * @returns length on each side that the steps may take [m]; 0 where the end bands are the taper
 * @throws CalculationError `invalid-input`
 * @remarks A rest below a billionth of the taper is the rounding of a difference, and counts as none.
 */
export function freeTaper(input: FreeTaperInput): Length {
  const { totalLength: L, taper: lt, fullCountLength: Lf } = input;
  positive(L, 'totalLength', 'm');
  nonNegative(lt, 'taper', 'm');
  positive(Lf, 'fullCountLength', 'm');
  atMost(Lf, L, 'the length with both tapers', 'fullCountLength', 'm');
  finite(2 * lt, 'both tapers', 'm');
  const rest = (Lf - (L - 2 * lt)) / 2;
  return (rest > 1e-9 * lt ? rest : 0) as Length;
}

export const freeTaperFormula = /* @__PURE__ */ formula<FreeTaperInput, Length>({
  id: 'wrap/free-taper',
  title: 'Taper beyond the end bands of the tape',
  compute: freeTaper,
  equation: {
    branches: [
      { when: '(L_f - (L - 2 * l_t)) / 2 > 1e-9 * l_t', expression: '(L_f - (L - 2 * l_t)) / 2' },
      { expression: '0 * l_t' },
    ],
  },
  inputs: {
    totalLength: { symbol: 'L', kind: 'length', name: 'length of the laminate with both tapers', sample: [0.5, 3] },
    taper: { symbol: 'l_t', kind: 'length', name: 'length of one taper', sample: [0, 0.2] },
    fullCountLength: {
      symbol: 'L_f',
      kind: 'length',
      name: 'length that carries every layer before the passes are stepped',
      sample: [0.1, 3],
    },
  },
  output: { symbol: 'l_s', kind: 'length', name: 'taper on each side that the steps share out' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
