import { atLeast, formula } from '../../formula/index.js';

export interface DesignFactorOfSafetyFactorInput {
  readonly safetyFactor: number;
}

/**
 * Design factor that a safety factor amounts to: the share of its strength that a pipe may use.
 *
 * $$F = \frac{1}{n}$$
 *
 * @param input.safetyFactor  n, >= 1
 * @returns design factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`
 */
export function designFactorOfSafetyFactor(input: DesignFactorOfSafetyFactorInput): number {
  const { safetyFactor: n } = input;
  atLeast(n, 1, 'no margin', 'safetyFactor', '');
  return 1 / n;
}

export const designFactorOfSafetyFactorFormula = /* @__PURE__ */ formula<DesignFactorOfSafetyFactorInput, number>({
  id: 'pipe/design-factor-of-safety-factor',
  title: 'Design factor that a safety factor amounts to',
  compute: designFactorOfSafetyFactor,
  equation: { expression: '1 / n' },
  inputs: { safetyFactor: { symbol: 'n', kind: 'number', name: 'safety factor', sample: [1, 3] } },
  output: { symbol: 'F', kind: 'number', name: 'design factor' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
