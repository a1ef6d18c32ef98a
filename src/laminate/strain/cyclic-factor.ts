import { finite, formula, positive, refuse, wholeNumber, within } from '../../formula/index.js';

export interface CyclicFactorInput {
  readonly cycles: number;
  readonly pressureRatio: number;
  readonly slope?: number;
  readonly intercept?: number;
  readonly freeCycles?: number;
  readonly lastCycles?: number;
}

/**
 * Factor on the allowable strains, and on the service factor of a leak, for repeated loading.
 *
 * $$f_c = \min\left(1,\; \sqrt{R_c^2 + \frac{1 - R_c^2}{a \log_{10} N - b}}\right) \text{ for } N > N_1,
 *   \text{ else } 1$$
 *
 * @param input.cycles         N, load cycles over the design life, whole, >= 0
 * @param input.pressureRatio  R_c, lowest over highest pressure of a cycle, 0 to 1
 * @param input.slope          a, 2.888 unless given
 * @param input.intercept      b, 7.108 unless given
 * @param input.freeCycles     N_1, cycles without reduction, 7000 unless given
 * @param input.lastCycles     N_2, up to which the form is known, 1e8 unless given
 * @returns cyclic factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`; `outside-validity` above N_2 cycles, and when the constants leave the bracket at
 *   0 or below
 * @remarks At R_c = 0 the factor steps from 1 to 0.50 just past 7000 cycles and falls to 0.25 at 1e8.
 * @see ISO 24817:2017 and ASME PCC-2 Part 4, cyclic loading, as recalled
 */
export function cyclicFactor(input: CyclicFactorInput): number {
  const { cycles: N, pressureRatio: R, slope: a = 2.888, intercept: b = 7.108 } = input;
  const { freeCycles: N1 = 7000, lastCycles: N2 = 1e8 } = input;
  wholeNumber(N, 0, 'cycles');
  within(R, 0, 1, 'pressureRatio', '');
  positive(a, 'slope', '');
  positive(b, 'intercept', '');
  wholeNumber(N1, 1, 'freeCycles');
  wholeNumber(N2, N1, 'lastCycles');
  if (N > N2) {
    refuse({
      code: 'outside-validity',
      parameter: 'cycles',
      value: N,
      unit: '',
      constraint: 'must be at most {limit}, up to which the form is known',
      limit: N2,
      source: 'cyclic loading, as recalled',
    });
  }
  if (N <= N1) return 1;
  const bracket = a * Math.log10(N) - b;
  finite(bracket, 'bracket under the root', '');
  if (!(bracket > 0)) {
    refuse({
      code: 'outside-validity',
      parameter: 'cycles',
      value: N,
      unit: '',
      constraint: 'must be above {limit}, where the form with these constants begins',
      limit: 10 ** (b / a),
    });
  }
  const raw = Math.sqrt(R * R + (1 - R * R) / bracket);
  return Math.min(raw, 1);
}

export const cyclicFactorFormula = /* @__PURE__ */ formula<CyclicFactorInput, number>({
  id: 'laminate/cyclic-factor',
  title: 'Factor for repeated loading',
  search: ['fatigue', 'pressure cycles'],
  compute: cyclicFactor,
  equation: {
    branches: [
      { when: 'N <= N_1', expression: '1' },
      { expression: 'min(1, sqrt(R_c^2 + (1 - R_c^2) / (a * log10(N) - b)))' },
    ],
  },
  inputs: {
    cycles: { symbol: 'N', kind: 'count', name: 'load cycles over the design life', sample: [0, 2e7] },
    pressureRatio: { symbol: 'R_c', kind: 'number', name: 'lowest over highest pressure', sample: [0, 1] },
    slope: { symbol: 'a', kind: 'number', name: 'slope', default: 2.888, sample: [2.8, 3] },
    intercept: { symbol: 'b', kind: 'number', name: 'intercept', default: 7.108, sample: [7, 7.2] },
    freeCycles: { symbol: 'N_1', kind: 'count', name: 'cycles without reduction', default: 7000, sample: [1000, 1e7] },
    lastCycles: { symbol: 'N_2', kind: 'count', name: 'last cycles of the form', default: 1e8, sample: [2e7, 1e8] },
  },
  output: { symbol: 'f_c', kind: 'number', name: 'cyclic factor' },
  sources: [
    { key: 'iso-24817', locator: 'cyclic loading, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, cyclic loading, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    slope: { tag: 'recalled' },
    intercept: { tag: 'recalled' },
    freeCycles: { tag: 'recalled' },
    lastCycles: { tag: 'recalled', note: 'weak memory' },
  },
  limits: [{ sort: 'stop', text: 'more cycles than the form is known for' }],
});
