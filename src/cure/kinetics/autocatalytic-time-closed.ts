import { finite, formula, positive, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';
import { checkConversions } from './conversions.js';

export interface AutocatalyticTimeClosedInput {
  readonly rateConstant: RateConstant;
  readonly m: number;
  readonly startConversion: Ratio;
  readonly conversion: Ratio;
}

/**
 * Time to a degree of cure by the autocatalytic law whose orders add up to 2, at one temperature.
 *
 * $$\frac{da}{dt} = k a^m (1-a)^{2-m}, \qquad k t = \left[\frac{u^{1-m}}{1-m}\right]_{u_0}^{u}, \quad u = \frac{a}{1-a}$$
 *
 * @param input.rateConstant    k at the temperature [1/s], > 0
 * @param input.m               order of the autocatalysis, from 0 to 2; that of the rest is 2 - m
 * @param input.startConversion a_0, above 0: the law never starts from nothing
 * @param input.conversion      a, from a_0 up to, not including, 1
 * @returns time from a_0 to a [s]
 * @throws CalculationError `invalid-input`; `no-solution` for a start from 0
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see Bogetti and Gillespie 1991, as a public program carries it
 */
export function autocatalyticTimeClosed(input: AutocatalyticTimeClosedInput): Time {
  const { rateConstant: k, m, startConversion: a0, conversion: a } = input;
  positive(k, 'rateConstant', '1/s');
  within(m, 0, 2, 'm', '');
  checkConversions(a0, a, true);
  const u0 = a0 / (1 - a0);
  // (a - a0) is exact where the two are near, so that a short step loses no digits.
  const growth = Math.log1p((a - a0) / (a0 * (1 - a)));
  const t = m === 1 ? growth / k : (u0 ** (1 - m) * Math.expm1((1 - m) * growth)) / ((1 - m) * k);
  finite(t, 'startConversion', '');
  return t as Time;
}

export const autocatalyticTimeClosedFormula = /* @__PURE__ */ formula<AutocatalyticTimeClosedInput, Time>({
  id: 'cure/autocatalytic-time-closed',
  title: 'Time to a degree of cure, autocatalytic with orders that add up to 2',
  compute: autocatalyticTimeClosed,
  equation: {
    where: [
      { symbol: 'u_0', kind: 'number', expression: 'a_0 / (1 - a_0)' },
      { symbol: 'u', kind: 'number', expression: 'a / (1 - a)' },
    ],
    branches: [
      { when: 'm == 1', expression: 'log(u / u_0) / k' },
      { expression: '(u^(1 - m) - u_0^(1 - m)) / ((1 - m) * k)' },
    ],
  },
  inputs: {
    rateConstant: { symbol: 'k', kind: 'rate constant', name: 'rate constant', sample: [1e-6, 1e-2] },
    m: { symbol: 'm', kind: 'number', name: 'order of the autocatalysis', sample: [0.2, 1.6] },
    startConversion: { symbol: 'a_0', kind: 'ratio', name: 'degree of cure at the start', sample: [0.001, 0.1] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.1, 0.95] },
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [{ key: 'bogetti-gillespie-1991', locator: 'm = 0.524, n = 1.476' }],
  evidence: { form: { tag: 'secondary', derived: 'quadrature of the rate' } },
  limits: [],
});
