import { finite, formula, nonNegative, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';
import { checkConversions } from './conversions.js';
import { timeBetween } from './rate-integral.js';

export interface KamalTimeInput {
  readonly firstRate: RateConstant;
  readonly secondRate: RateConstant;
  readonly m: number;
  readonly n: number;
  readonly startConversion: Ratio;
  readonly conversion: Ratio;
}

/**
 * Time to a degree of cure by the Kamal-Sourour law at one temperature.
 *
 * $$t = \int_{a_0}^{a} \frac{da}{(k_1 + k_2 a^m)(1-a)^n}$$
 *
 * @param input.firstRate       k_1 at the temperature [1/s], >= 0
 * @param input.secondRate      k_2 at the temperature [1/s], >= 0
 * @param input.m               order of the autocatalysis, from 0 to 5
 * @param input.n               order of the rest, from 0 to 10
 * @param input.startConversion a_0; above 0 when k_1 is 0
 * @param input.conversion      a, from a_0 up to, not including, 1
 * @returns time from a_0 to a [s]
 * @throws CalculationError `invalid-input`; `no-solution` when both rates are 0, or for a start from 0 without k_1
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see Kamal and Sourour 1973, as recalled
 */
export function kamalTime(input: KamalTimeInput): Time {
  const { firstRate: k1, secondRate: k2, m, n, startConversion: a0, conversion: a } = input;
  nonNegative(k1, 'firstRate', '1/s');
  nonNegative(k2, 'secondRate', '1/s');
  within(m, 0, 5, 'm', '');
  within(n, 0, 10, 'n', '');
  checkConversions(a0, a, k1 === 0 && m > 0);
  const t = timeBetween((conversion, left) => (k1 + k2 * conversion ** m) * left ** n, a0, a);
  finite(t, 'firstRate', '1/s');
  return t as Time;
}

export const kamalTimeFormula = /* @__PURE__ */ formula<KamalTimeInput, Time>({
  id: 'cure/kamal-time',
  title: 'Time to a degree of cure, Kamal-Sourour',
  search: ['cure kinetics', 'dsc'],
  compute: kamalTime,
  equation: {
    algorithm:
      'Integral of 1/((k_1 + k_2 a^m)(1 - a)^n) over the conversion by adaptive Simpson on a logarithmic scale.',
  },
  inputs: {
    firstRate: { symbol: 'k_1', kind: 'rate constant', name: 'rate without autocatalysis', sample: [1e-5, 1e-3] },
    secondRate: { symbol: 'k_2', kind: 'rate constant', name: 'rate of the autocatalysis', sample: [1e-4, 1e-2] },
    m: { symbol: 'm', kind: 'number', name: 'order of the autocatalysis', sample: [0.5, 1.5] },
    n: { symbol: 'n', kind: 'number', name: 'order of the rest', sample: [0.8, 2] },
    startConversion: { symbol: 'a_0', kind: 'ratio', name: 'degree of cure at the start', sample: [0, 0.1] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.1, 0.95] },
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [{ key: 'kamal-sourour-1973', locator: 'rate law' }],
  evidence: { form: { tag: 'recalled', derived: 'closed form where both orders are 1' } },
  limits: [],
});
