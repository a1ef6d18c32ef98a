import { formula, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';
import { celsiusWithin, type MagnusSetName, magnusSet, saturatedAt } from './magnus-set.js';

export interface DewPointInput {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Dew point of the air over water (Magnus form).
 *
 * $$t_d = \frac{c\,g}{b - g}, \qquad g = \ln RH + \frac{b\,t}{c + t}$$
 *
 * @param input.temperature T, of the air [K]; t in degC, within the span of the coefficients
 * @param input.humidity    RH, relative humidity over water, above 0 and up to 1
 * @param input.set         name of the coefficients; Sonntag (WMO) when absent
 * @returns dew point [K]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @remarks Below 0 degC this is the dew point over supercooled water; frost forms already at the somewhat higher frost
 *   point (`frostPoint`). Beside sensors the choice of coefficients does not matter: 3 per cent of humidity and 0.5 K
 *   make about 0.8 K (`dewPointBand`).
 * @see WMO-No. 8, Annex 4.B
 */
export function dewPoint({ temperature, humidity: RH, set = 'sonntag' }: DewPointInput): Temperature {
  const coefficients = magnusSet(set);
  positive(RH, 'humidity', '');
  within(RH, 0, 1, 'humidity', '');
  const t = celsiusWithin(coefficients, temperature, 'temperature');
  const { b, c } = coefficients;
  return saturatedAt(coefficients, Math.log(RH) + (b * t) / (c + t), 'humidity');
}

/** Whether the dew point lies below 0 degC, where frost has to be judged instead. */
export function dewPointBelowFreezing(input: DewPointInput): boolean {
  return dewPoint(input) < 273.15;
}

export const dewPointFormula = /* @__PURE__ */ formula<DewPointInput, Temperature>({
  id: 'site/dew-point',
  title: 'Dew point',
  search: ['condensation', 'sweating', 'magnus'],
  compute: dewPoint,
  equation: {
    where: [{ symbol: 't', kind: 'number', expression: 'T - 273.15' }],
    branches: [
      {
        when: 'set == "sonntag"',
        expression:
          '273.15 + 243.12 * (log(RH) + 17.62 * t / (243.12 + t)) / (17.62 - (log(RH) + 17.62 * t / (243.12 + t)))',
      },
      {
        when: 'set == "alduchov-eskridge"',
        expression:
          '273.15 + 243.04 * (log(RH) + 17.625 * t / (243.04 + t)) / (17.625 - (log(RH) + 17.625 * t / (243.04 + t)))',
      },
      {
        when: 'set == "bolton"',
        expression:
          '273.15 + 243.5 * (log(RH) + 17.67 * t / (243.5 + t)) / (17.67 - (log(RH) + 17.67 * t / (243.5 + t)))',
      },
      {
        expression:
          '273.15 + 237.3 * (log(RH) + 17.269388197455342 * t / (237.3 + t)) / (17.269388197455342 - (log(RH) + 17.269388197455342 * t / (237.3 + t)))',
      },
    ],
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [278.15, 308.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.2, 1] },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: { symbol: 'T_d', kind: 'temperature', name: 'dew point' },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: {
    form: { tag: 'secondary', derived: 'ASHRAE form of a psychrometrics package within 0.05 K above 0 degC' },
  },
  limits: [
    { sort: 'stop', text: 'Only within the span of temperature of the coefficients.' },
    {
      sort: 'note',
      text: 'The dew point lies below 0 degC: frost forms, at the frost point, which is higher.',
      beyond: dewPointBelowFreezing,
    },
  ],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
