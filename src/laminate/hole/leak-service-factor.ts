import { atMost, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

export interface LeakServiceFactorInput {
  readonly designLife: Time;
  readonly firstYear: number;
  readonly decay: number;
  readonly coefficientUnit?: Time;
  readonly longestLife?: Time;
}

/**
 * Service factor on the pressure that a laminate holds over a hole, by repair class and design life.
 *
 * $$f_{leak} = f_1\, 10^{-k (L/L_1 - 1)}$$
 *
 * @param input.designLife       L [s], > 0, at most the longest life
 * @param input.firstYear        f_1 of the rule set for the class, above 0, at most 1
 * @param input.decay            k of the rule set for the class, >= 0; 0 for a fixed factor
 * @param input.coefficientUnit  L_1, the time that k is for: 1 year unless given
 * @param input.longestLife      20 years unless given
 * @returns service factor, above 0 and at most f_1
 * @throws CalculationError `invalid-input`; `outside-validity` for a longer life
 * @remarks A life under one year takes the factor of one year. The recalled constants of all classes meet at 0.333 after
 *   20 years.
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled
 */
export function leakServiceFactor(input: LeakServiceFactorInput): number {
  const { designLife: L, firstYear: f1, decay: k } = input;
  const { coefficientUnit: L1 = 31_557_600 as Time, longestLife = 631_152_000 as Time } = input;
  positive(L, 'designLife', 's');
  positive(f1, 'firstYear', '');
  nonNegative(k, 'decay', '');
  positive(L1, 'coefficientUnit', 's');
  positive(longestLife, 'longestLife', 's');
  atMost(f1, 1, 'the whole resistance', 'firstYear', '');
  if (L > longestLife) {
    refuse({
      code: 'outside-validity',
      parameter: 'designLife',
      value: L,
      unit: 's',
      constraint: 'must be at most {limit}',
      limit: longestLife,
      source: 'after ISO 24817:2017, 7.5.7, as recalled',
    });
  }
  const factor = L <= L1 ? f1 : f1 * 10 ** (-k * (L / L1 - 1));
  positive(factor, 'service factor', '');
  return factor;
}

export const leakServiceFactorFormula = /* @__PURE__ */ formula<LeakServiceFactorInput, number>({
  id: 'laminate/leak-service-factor',
  title: 'Service factor of a leak repair',
  search: ['through wall', 'derating'],
  compute: leakServiceFactor,
  equation: {
    branches: [{ when: 'L <= L_1', expression: 'f_1' }, { expression: 'f_1 * 10^(-k * (L / L_1 - 1))' }],
  },
  inputs: {
    designLife: { symbol: 'L', kind: 'time', name: 'design life', sample: [1e7, 6.3e8] },
    firstYear: { symbol: 'f_1', kind: 'number', name: 'factor of the first year', sample: [0.3, 0.9] },
    decay: { symbol: 'k', kind: 'number', name: 'decay', sample: [0, 0.025] },
    coefficientUnit: {
      symbol: 'L_1',
      kind: 'time',
      name: 'time of the coefficients',
      default: 31_557_600,
      sample: [3e7, 3.3e7],
    },
    longestLife: {
      symbol: 'L_max',
      kind: 'time',
      name: 'longest life',
      default: 631_152_000,
      sample: [6.3e8, 9e8],
    },
  },
  output: { symbol: 'f_leak', kind: 'number', name: 'service factor' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12 to 14, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    firstYear: { tag: 'recalled' },
    decay: { tag: 'recalled' },
    longestLife: { tag: 'recalled' },
  },
  limits: [{ sort: 'stop', text: 'the factor is not given for more than 20 years' }],
});
