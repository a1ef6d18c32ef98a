import { finite, formula, nonNegative, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface StaggerInput {
  readonly taper: Length;
  readonly layers: number;
}

/**
 * How much farther in each pass, or each layer of sheet, starts and ends than the one below it.
 *
 * $$s = \frac{l_s}{n - 1}$$
 *
 * @param input.taper l_s, length on each side that the steps share out [m], >= 0
 * @param input.layers n, passes of tape or layers of sheet, whole, 1 or above
 * @returns step from one to the next [m]; 0 where there is only one
 * @throws CalculationError `invalid-input`
 */
export function stagger(input: StaggerInput): Length {
  const { taper: ls, layers: n } = input;
  nonNegative(ls, 'taper', 'm');
  wholeNumber(n, 1, 'layers');
  const s = n > 1 ? ls / (n - 1) : 0;
  finite(s, 'stagger', 'm');
  return s as Length;
}

export const staggerFormula = /* @__PURE__ */ formula<StaggerInput, Length>({
  id: 'wrap/stagger',
  title: 'Step from one pass or layer to the next',
  compute: stagger,
  equation: { branches: [{ when: 'n > 1', expression: 'l_s / (n - 1)' }, { expression: '0 * l_s' }] },
  inputs: {
    taper: { symbol: 'l_s', kind: 'length', name: 'length on each side that the steps share out', sample: [0, 0.2] },
    layers: { symbol: 'n', kind: 'count', name: 'passes of tape or layers of sheet', sample: [1, 20] },
  },
  output: { symbol: 's', kind: 'length', name: 'step from one to the next' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
