import { finite, formula, positive, within } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';
import { checkConversions } from './conversions.js';
import { timeBetween } from './rate-integral.js';

export interface AutocatalyticTimeInput {
  readonly rateConstant: RateConstant;
  readonly m: number;
  readonly n: number;
  readonly startConversion: Ratio;
  readonly conversion: Ratio;
}

/**
 * Time to a degree of cure by the autocatalytic law (Sestak-Berggren), at one temperature.
 *
 * $$t = \int_{a_0}^{a} \frac{da}{k a^m (1-a)^n}$$
 *
 * @param input.rateConstant    k at the temperature [1/s], > 0
 * @param input.m               order of the autocatalysis, from 0 to 5
 * @param input.n               order of the rest, from 0 to 10
 * @param input.startConversion a_0; above 0 when m is
 * @param input.conversion      a, from a_0 up to, not including, 1
 * @returns time from a_0 to a [s]
 * @throws CalculationError `invalid-input`; `no-solution` for a start from 0 when m > 0
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see Bogetti and Gillespie 1991, as a public program carries it
 */
export function autocatalyticTime(input: AutocatalyticTimeInput): Time {
  const { rateConstant: k, m, n, startConversion: a0, conversion: a } = input;
  positive(k, 'rateConstant', '1/s');
  within(m, 0, 5, 'm', '');
  within(n, 0, 10, 'n', '');
  checkConversions(a0, a, m > 0);
  const t = timeBetween((conversion, left) => k * (conversion ** m * left ** n), a0, a);
  finite(t, 'rateConstant', '1/s');
  return t as Time;
}

export const autocatalyticTimeFormula = /* @__PURE__ */ formula<AutocatalyticTimeInput, Time>({
  id: 'cure/autocatalytic-time',
  title: 'Time to a degree of cure, autocatalytic',
  search: ['kamal', 'cure kinetics', 'dsc'],
  compute: autocatalyticTime,
  equation: {
    algorithm: 'Integral of 1/(k a^m (1 - a)^n) over the conversion by adaptive Simpson on the scale of ln(a/(1 - a)).',
  },
  inputs: {
    rateConstant: { symbol: 'k', kind: 'rate constant', name: 'rate constant', sample: [1e-6, 1e-2] },
    m: { symbol: 'm', kind: 'number', name: 'order of the autocatalysis', sample: [0.2, 1.2] },
    n: { symbol: 'n', kind: 'number', name: 'order of the rest', sample: [0.8, 2.8] },
    startConversion: { symbol: 'a_0', kind: 'ratio', name: 'degree of cure at the start', sample: [0.001, 0.1] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.1, 0.95] },
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [{ key: 'bogetti-gillespie-1991', locator: 'form' }],
  evidence: { form: { tag: 'secondary', derived: 'closed form where m + n = 2' } },
  limits: [],
});
