import { formula } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';
import { celsiusWithin, type MagnusSetName, magnusSet } from './magnus-set.js';

export interface HumidityAtSteelInput {
  readonly steelTemperature: Temperature;
  readonly dewPoint: Temperature;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Relative humidity in the film of air on the steel.
 *
 * $$RH_s = \frac{e_s(t_d)}{e_s(t_s)} = \exp\left(\frac{b\,t_d}{c + t_d} - \frac{b\,t_s}{c + t_s}\right)$$
 *
 * @param input.steelTemperature T_s, of the steel: the fluid in the pipe sets it, not the air [K]
 * @param input.dewPoint         T_d, of the air over water [K]
 * @param input.set              name of the coefficients; Sonntag (WMO) when absent
 * @returns relative humidity at the steel; above 1 means that the steel is wet
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @remarks Steel 3 K above the dew point is at 80 per cent (0 degC) to 85 per cent (40 degC): the two rules are nearly one.
 * @see Sonntag 1990 and WMO-No. 8, Annex 4.B, as public pages give them
 */
export function humidityAtSteel({ steelTemperature, dewPoint, set = 'sonntag' }: HumidityAtSteelInput): Ratio {
  const coefficients = magnusSet(set);
  const ts = celsiusWithin(coefficients, steelTemperature, 'steelTemperature');
  const td = celsiusWithin(coefficients, dewPoint, 'dewPoint');
  const { b, c } = coefficients;
  return Math.exp((b * c * (td - ts)) / ((c + td) * (c + ts))) as Ratio;
}

/** Whether the steel is at or below the dew point. */
export function humidityAtSteelWet({ steelTemperature, dewPoint }: HumidityAtSteelInput): boolean {
  return steelTemperature <= dewPoint;
}

export const humidityAtSteelFormula = /* @__PURE__ */ formula<HumidityAtSteelInput, Ratio>({
  id: 'site/humidity-at-steel',
  title: 'Relative humidity at the steel',
  search: ['surface humidity', 'rust bloom'],
  compute: humidityAtSteel,
  equation: {
    where: [
      { symbol: 't_s', kind: 'number', expression: 'T_s - 273.15' },
      { symbol: 't_d', kind: 'number', expression: 'T_d - 273.15' },
    ],
    branches: [
      { when: 'set == "sonntag"', expression: 'exp(17.62 * t_d / (243.12 + t_d) - 17.62 * t_s / (243.12 + t_s))' },
      {
        when: 'set == "alduchov-eskridge"',
        expression: 'exp(17.625 * t_d / (243.04 + t_d) - 17.625 * t_s / (243.04 + t_s))',
      },
      { when: 'set == "bolton"', expression: 'exp(17.67 * t_d / (243.5 + t_d) - 17.67 * t_s / (243.5 + t_s))' },
      { expression: 'exp(17.269388197455342 * t_d / (237.3 + t_d) - 17.269388197455342 * t_s / (237.3 + t_s))' },
    ],
  },
  inputs: {
    steelTemperature: { symbol: 'T_s', kind: 'temperature', name: 'steel temperature', sample: [273.15, 308.15] },
    dewPoint: { symbol: 'T_d', kind: 'temperature', name: 'dew point', sample: [273.15, 303.15] },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: { symbol: 'RH_s', kind: 'ratio', name: 'relative humidity at the steel' },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [
    { sort: 'stop', text: 'Only within the span of temperature of the coefficients.' },
    { sort: 'note', text: 'The steel is at or below the dew point: it is wet.', beyond: humidityAtSteelWet },
  ],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
