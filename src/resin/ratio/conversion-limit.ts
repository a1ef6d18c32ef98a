import { formula, positive } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';

export interface ConversionLimitInput {
  readonly ratioError: Ratio;
}

/**
 * Greatest conversion of the side in excess that a wrong mixing ratio allows.
 *
 * $$\alpha_{max} = \min(r, 1/r)$$
 *
 * @param input.ratioError r, ratio as weighed over ratio as stated [1], > 0
 * @returns greatest conversion [1]
 * @throws CalculationError `invalid-input`
 */
export function conversionLimit(input: ConversionLimitInput): Ratio {
  const { ratioError: r } = input;
  positive(r, 'ratioError', '');
  return Math.min(r, 1 / r) as Ratio;
}

export const conversionLimitFormula = /* @__PURE__ */ formula<ConversionLimitInput, Ratio>({
  id: 'resin/conversion-limit',
  title: 'Conversion that a wrong mixing ratio allows',
  search: ['off ratio', 'mix ratio', 'soft spots'],
  compute: conversionLimit,
  equation: { expression: 'min(r, 1 / r)' },
  inputs: {
    ratioError: { symbol: 'r', kind: 'ratio', name: 'ratio as weighed over ratio as stated', sample: [0.5, 2] },
  },
  output: { symbol: 'alpha_max', kind: 'ratio', name: 'greatest conversion' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'count of reactive groups' } },
  limits: [],
});
