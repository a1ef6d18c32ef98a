import { atLeast, atMost, finite, formula, positive } from '../../formula/index.js';

export interface DamageSafetyFactorInput {
  readonly designFactor?: number;
  readonly safetyFactor?: number;
  readonly leastFactor?: number;
}

/**
 * Safety factor of a damaged pipe: the largest of the inverse design factor of the line, the stated factor and the least
 * one.
 *
 * $$n = \max\left(\frac{1}{F},\ n_s,\ n_{min}\right)$$
 *
 * @param input.designFactor  F, of the code of the line, > 0 and <= 1; 1 where none is stated
 * @param input.safetyFactor  n_s, as stated, >= 1; 1 where none is stated
 * @param input.leastFactor   n_min, >= 1; 1.25 by default
 * @returns safety factor
 * @throws CalculationError `invalid-input`
 * @remarks While people work beside the pipe the least factor always holds. For the end of life a stated factor may stand
 *   in its place, with n_min = 1, but never below 1/F.
 * @see 49 CFR 192.933(a)(1), predicted failure pressure times the design factor
 */
export function damageSafetyFactor(input: DamageSafetyFactorInput): number {
  const { designFactor: F = 1, safetyFactor: n = 1, leastFactor = 1.25 } = input;
  positive(F, 'designFactor', '');
  atMost(F, 1, 'the whole strength', 'designFactor', '');
  atLeast(n, 1, 'no margin', 'safetyFactor', '');
  atLeast(leastFactor, 1, 'no margin', 'leastFactor', '');
  const factor = Math.max(1 / F, n, leastFactor);
  finite(factor, 'safety factor', '');
  return factor;
}

export const damageSafetyFactorFormula = /* @__PURE__ */ formula<DamageSafetyFactorInput, number>({
  id: 'pipe/damage-safety-factor',
  title: 'Safety factor of a damaged pipe',
  search: ['margin', 'dent'],
  compute: damageSafetyFactor,
  equation: { expression: 'max(1 / F, n_s, n_min)' },
  inputs: {
    designFactor: { symbol: 'F', kind: 'number', name: 'design factor of the line', sample: [0.4, 1], default: 1 },
    safetyFactor: { symbol: 'n_s', kind: 'number', name: 'stated safety factor', sample: [1, 3], default: 1 },
    leastFactor: { symbol: 'n_min', kind: 'number', name: 'least safety factor', sample: [1, 2], default: 1.25 },
  },
  output: { symbol: 'n', kind: 'number', name: 'safety factor' },
  sources: [{ key: 'cfr-49-192', locator: '192.933(a)(1)' }],
  evidence: { form: { tag: 'published' }, leastFactor: { tag: 'chosen' } },
  limits: [],
});
