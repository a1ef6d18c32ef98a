import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';

export interface NthOrderConversionInput {
  readonly rateConstant: RateConstant;
  readonly order: number;
  readonly time: Time;
}

/**
 * Degree of cure after a time by the n-th order law at one temperature.
 *
 * $$a = 1 - \left[1 - (1-n) k t\right]^{1/(1-n)}, \quad n = 1:\ 1 - e^{-k t}$$
 *
 * @param input.rateConstant k at the temperature [1/s], > 0
 * @param input.order        n, from 0 to 10
 * @param input.time         t [s], >= 0
 * @returns degree of cure; an order below 1 is complete at t = 1/((1-n) k), and stays so
 * @throws CalculationError `invalid-input`
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see a paper of 2013 on a two-part polyurethane (abstract)
 */
export function nthOrderConversion(input: NthOrderConversionInput): Ratio {
  const { rateConstant: k, order: n, time: t } = input;
  positive(k, 'rateConstant', '1/s');
  within(n, 0, 10, 'order', '');
  nonNegative(t, 'time', 's');
  finite(k * t, 'time', 's');
  if (n === 1) return -Math.expm1(-k * t) as Ratio;
  const spent = (1 - n) * k * t;
  if (spent >= 1) return 1 as Ratio;
  return -Math.expm1(Math.log1p(-spent) / (1 - n)) as Ratio;
}

export const nthOrderConversionFormula = /* @__PURE__ */ formula<NthOrderConversionInput, Ratio>({
  id: 'cure/nth-order-conversion',
  title: 'Degree of cure after a time, n-th order',
  compute: nthOrderConversion,
  equation: {
    branches: [
      { when: 'n == 1', expression: '1 - exp(-k * t)' },
      { when: '(1 - n) * k * t >= 1', expression: '1' },
      { expression: '1 - (1 - (1 - n) * k * t)^(1 / (1 - n))' },
    ],
  },
  inputs: {
    rateConstant: { symbol: 'k', kind: 'rate constant', name: 'rate constant', sample: [1e-6, 1e-4] },
    order: { symbol: 'n', kind: 'number', name: 'order', sample: [0.5, 2.5] },
    time: { symbol: 't', kind: 'time', name: 'time', sample: [60, 20000] },
  },
  output: { symbol: 'a', kind: 'ratio', name: 'degree of cure' },
  sources: [{ key: 'polyurethane-kinetics-2013', locator: 'form and constants' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the time' } },
  limits: [],
});
