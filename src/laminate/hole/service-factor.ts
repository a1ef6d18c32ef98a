import { atMost, formula, positive } from '../../formula/index.js';

export interface ServiceFactorInput {
  readonly leakFactor: number;
  readonly temperatureFactor: number;
  readonly cyclicFactor: number;
}

/**
 * Service factor on the resistance of a laminate over a hole: life, temperature and cycles together.
 *
 * $$f = f_{leak}\, f_T\, f_c$$
 *
 * @param input.leakFactor         f_leak, for class and life, above 0, at most 1
 * @param input.temperatureFactor  f_T, above 0, at most 1
 * @param input.cyclicFactor       f_c, above 0, at most 1
 * @returns service factor, above 0 and at most 1
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 12, as recalled
 */
export function serviceFactor(input: ServiceFactorInput): number {
  const { leakFactor: fLeak, temperatureFactor: fT, cyclicFactor: fc } = input;
  factor(fLeak, 'leakFactor');
  factor(fT, 'temperatureFactor');
  factor(fc, 'cyclicFactor');
  const f = fLeak * fT * fc;
  factor(f, 'service factor');
  return f;
}

function factor(value: number, parameter: string): void {
  positive(value, parameter, '');
  atMost(value, 1, 'the whole resistance', parameter, '');
}

export const serviceFactorFormula = /* @__PURE__ */ formula<ServiceFactorInput, number>({
  id: 'laminate/service-factor',
  title: 'Service factor over a hole',
  search: ['leak', 'derating'],
  compute: serviceFactor,
  equation: { expression: 'f_leak * f_T * f_c' },
  inputs: {
    leakFactor: { symbol: 'f_leak', kind: 'number', name: 'leak service factor', sample: [0.3, 0.83] },
    temperatureFactor: { symbol: 'f_T', kind: 'number', name: 'temperature factor', sample: [0.7, 1] },
    cyclicFactor: { symbol: 'f_c', kind: 'number', name: 'cyclic factor', sample: [0.25, 1] },
  },
  output: { symbol: 'f', kind: 'number', name: 'service factor' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 12, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});
