import { finite, formula, positive, properFraction, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';

export interface NthOrderTimeInput {
  readonly rateConstant: RateConstant;
  readonly order: number;
  readonly conversion: Ratio;
}

/**
 * Time to a degree of cure by the n-th order law at one temperature.
 *
 * $$\frac{da}{dt} = k (1-a)^n, \qquad k t = \frac{1 - (1-a)^{1-n}}{1-n}, \quad n = 1:\ -\ln(1-a)$$
 *
 * @param input.rateConstant k at the temperature [1/s], > 0
 * @param input.order        n, from 0 to 10
 * @param input.conversion   a, from 0 up to, not including, 1
 * @returns time from the start [s]
 * @throws CalculationError `invalid-input`
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see a paper of 2013 on a two-part polyurethane (abstract)
 */
export function nthOrderTime(input: NthOrderTimeInput): Time {
  const { rateConstant: k, order: n, conversion: a } = input;
  positive(k, 'rateConstant', '1/s');
  within(n, 0, 10, 'order', '');
  properFraction(a, 'conversion');
  const logLeft = Math.log1p(-a);
  const t = n === 1 ? -logLeft / k : -Math.expm1((1 - n) * logLeft) / ((1 - n) * k);
  finite(t, 'rateConstant', '1/s');
  return t as Time;
}

export const nthOrderTimeFormula = /* @__PURE__ */ formula<NthOrderTimeInput, Time>({
  id: 'cure/nth-order-time',
  title: 'Time to a degree of cure, n-th order',
  search: ['cure kinetics', 'dsc'],
  compute: nthOrderTime,
  equation: {
    branches: [
      { when: 'n == 1', expression: '-log(1 - a) / k' },
      { expression: '(1 - (1 - a)^(1 - n)) / ((1 - n) * k)' },
    ],
  },
  inputs: {
    rateConstant: { symbol: 'k', kind: 'rate constant', name: 'rate constant', sample: [1e-6, 1e-2] },
    order: { symbol: 'n', kind: 'number', name: 'order', sample: [0.5, 2.5] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.1, 0.95] },
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [{ key: 'polyurethane-kinetics-2013', locator: 'form and constants' }],
  evidence: { form: { tag: 'secondary', derived: 'integral of the rate' } },
  limits: [],
});
