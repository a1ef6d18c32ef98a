import { atMost, formula } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';
import { celsiusWithin, type MagnusSetName, magnusSet } from './magnus-set.js';

export interface RelativeHumidityInput {
  readonly temperature: Temperature;
  readonly dewPoint: Temperature;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Relative humidity of the air from its dew point.
 *
 * $$RH = \frac{e_s(t_d)}{e_s(t)} = \exp\left(\frac{b\,t_d}{c + t_d} - \frac{b\,t}{c + t}\right)$$
 *
 * @param input.temperature T, of the air [K]; within the span of the coefficients
 * @param input.dewPoint    T_d, over water [K], at most T
 * @param input.set         name of the coefficients; Sonntag (WMO) when absent
 * @returns relative humidity over water
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @see Sonntag 1990 and WMO-No. 8, Annex 4.B, as public pages give them
 */
export function relativeHumidity({ temperature, dewPoint, set = 'sonntag' }: RelativeHumidityInput): Ratio {
  const coefficients = magnusSet(set);
  const t = celsiusWithin(coefficients, temperature, 'temperature');
  const td = celsiusWithin(coefficients, dewPoint, 'dewPoint');
  atMost(dewPoint, temperature, 'the air temperature', 'dewPoint', 'K');
  const { b, c } = coefficients;
  // One fraction, so that air near saturation loses no digits.
  return Math.exp((b * c * (td - t)) / ((c + td) * (c + t))) as Ratio;
}

export const relativeHumidityFormula = /* @__PURE__ */ formula<RelativeHumidityInput, Ratio>({
  id: 'site/relative-humidity',
  title: 'Relative humidity from the dew point',
  search: ['rh', 'hygrometer'],
  compute: relativeHumidity,
  equation: {
    where: [
      { symbol: 't', kind: 'number', expression: 'T - 273.15' },
      { symbol: 't_d', kind: 'number', expression: 'T_d - 273.15' },
    ],
    branches: [
      { when: 'set == "sonntag"', expression: 'exp(17.62 * t_d / (243.12 + t_d) - 17.62 * t / (243.12 + t))' },
      {
        when: 'set == "alduchov-eskridge"',
        expression: 'exp(17.625 * t_d / (243.04 + t_d) - 17.625 * t / (243.04 + t))',
      },
      { when: 'set == "bolton"', expression: 'exp(17.67 * t_d / (243.5 + t_d) - 17.67 * t / (243.5 + t))' },
      { expression: 'exp(17.269388197455342 * t_d / (237.3 + t_d) - 17.269388197455342 * t / (237.3 + t))' },
    ],
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [288.15, 308.15] },
    dewPoint: { symbol: 'T_d', kind: 'temperature', name: 'dew point', sample: [273.15, 298.15] },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: { symbol: 'RH', kind: 'ratio', name: 'relative humidity' },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [{ sort: 'stop', text: 'Only within the span of temperature of the coefficients.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
