import { finite, formula, positive, properFraction } from '../../formula/index.js';
import type { RateConstant, Ratio, Time } from '../../quantity/index.js';

export interface KamalTimeClosedInput {
  readonly firstRate: RateConstant;
  readonly secondRate: RateConstant;
  readonly conversion: Ratio;
}

/**
 * Time to a degree of cure by the Kamal-Sourour law with both orders 1, at one temperature.
 *
 * $$\frac{da}{dt} = (k_1 + k_2 a)(1-a), \qquad t = \frac{1}{k_1+k_2} \ln\frac{k_1 + k_2 a}{k_1 (1-a)}$$
 *
 * @param input.firstRate  k_1 at the temperature [1/s], > 0
 * @param input.secondRate k_2 at the temperature [1/s], > 0
 * @param input.conversion a, from 0 up to, not including, 1
 * @returns time from the start [s]
 * @throws CalculationError `invalid-input`
 * @remarks A fit to a DSC run is no field cure time: at site temperature the resin turns to glass first (`requiredCureTemperature`).
 * @see Kamal and Sourour 1973, as recalled
 */
export function kamalTimeClosed(input: KamalTimeClosedInput): Time {
  const { firstRate: k1, secondRate: k2, conversion: a } = input;
  positive(k1, 'firstRate', '1/s');
  positive(k2, 'secondRate', '1/s');
  properFraction(a, 'conversion');
  const t = Math.log1p((a * (k1 + k2)) / (k1 * (1 - a))) / (k1 + k2);
  finite(t, 'firstRate', '1/s');
  return t as Time;
}

export const kamalTimeClosedFormula = /* @__PURE__ */ formula<KamalTimeClosedInput, Time>({
  id: 'cure/kamal-time-closed',
  title: 'Time to a degree of cure, Kamal-Sourour with both orders 1',
  compute: kamalTimeClosed,
  equation: { expression: 'log((k_1 + k_2 * a) / (k_1 * (1 - a))) / (k_1 + k_2)' },
  inputs: {
    firstRate: { symbol: 'k_1', kind: 'rate constant', name: 'rate without autocatalysis', sample: [1e-5, 1e-3] },
    secondRate: { symbol: 'k_2', kind: 'rate constant', name: 'rate of the autocatalysis', sample: [1e-4, 1e-2] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.05, 0.95] },
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [{ key: 'kamal-sourour-1973', locator: 'rate law' }],
  evidence: { form: { tag: 'recalled', derived: 'quadrature of the rate' } },
  limits: [],
});
