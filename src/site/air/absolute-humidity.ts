import { formula, positive, within } from '../../formula/index.js';
import type { Density, Ratio, SpecificHeat, Temperature } from '../../quantity/index.js';
import { celsiusWithin, type MagnusSetName, magnusSet, saturation } from './magnus-set.js';

export interface AbsoluteHumidityInput {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
  readonly vapourGasConstant?: SpecificHeat | undefined;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Mass of water vapour in a volume of air.
 *
 * $$\rho_v = \frac{RH\,e_s(t)}{R_v T}$$
 *
 * @param input.temperature       T [K]; t in degC, within the span of the coefficients
 * @param input.humidity          RH, from 0 to 1
 * @param input.vapourGasConstant R_v, of water vapour; 461.5 J/(kg K) when absent, > 0
 * @param input.set               name of the coefficients; Sonntag (WMO) when absent
 * @returns vapour density [kg/m3]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @remarks The common "217 e/T" in g/m3 and hPa has R_v = 460.83 J/(kg K), 0.15 per cent more vapour.
 * @see Sonntag 1990 and WMO-No. 8, Annex 4.B, as public pages give them
 */
export function absoluteHumidity(input: AbsoluteHumidityInput): Density {
  const { temperature: T, humidity: RH, vapourGasConstant: Rv = 461.5 as SpecificHeat, set = 'sonntag' } = input;
  const coefficients = magnusSet(set);
  const t = celsiusWithin(coefficients, T, 'temperature');
  within(RH, 0, 1, 'humidity', '');
  positive(Rv, 'vapourGasConstant', 'J/(kg K)');
  within(Rv, 1, 1e6, 'vapourGasConstant', 'J/(kg K)');
  return ((RH * saturation(coefficients, t)) / (Rv * T)) as Density;
}

export const absoluteHumidityFormula = /* @__PURE__ */ formula<AbsoluteHumidityInput, Density>({
  id: 'site/absolute-humidity',
  title: 'Vapour content of the air',
  search: ['moisture content'],
  compute: absoluteHumidity,
  equation: {
    where: [{ symbol: 't', kind: 'number', expression: 'T - 273.15' }],
    branches: [
      { when: 'set == "sonntag"', expression: 'RH * 611.2 * exp(17.62 * t / (243.12 + t)) / (R_v * T)' },
      { when: 'set == "alduchov-eskridge"', expression: 'RH * 610.94 * exp(17.625 * t / (243.04 + t)) / (R_v * T)' },
      { when: 'set == "bolton"', expression: 'RH * 611.2 * exp(17.67 * t / (243.5 + t)) / (R_v * T)' },
      { expression: 'RH * 610.78 * exp(17.269388197455342 * t / (237.3 + t)) / (R_v * T)' },
    ],
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [273.15, 308.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.1, 1] },
    vapourGasConstant: {
      symbol: 'R_v',
      kind: 'specific heat',
      name: 'gas constant of water vapour',
      sample: [460, 462],
      default: 461.5,
    },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: { symbol: 'rho_v', kind: 'density', name: 'vapour content' },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: {
    form: { tag: 'secondary', derived: 'law of ideal gases' },
    R_v: { tag: 'recalled', derived: 'molar gas constant over 18.015 g/mol' },
  },
  limits: [{ sort: 'stop', text: 'Only within the span of temperature of the coefficients.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
