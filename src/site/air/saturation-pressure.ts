import { formula } from '../../formula/index.js';
import type { AbsolutePressure, Temperature } from '../../quantity/index.js';
import { celsiusWithin, type MagnusSetName, magnusSet, saturation } from './magnus-set.js';

export interface SaturationPressureInput {
  readonly temperature: Temperature;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Pressure of water vapour at saturation over water (Magnus form).
 *
 * $$e_s = e_0 \exp\frac{b\,t}{c + t}$$
 *
 * @param input.temperature T [K]; t in degC, within the span of the coefficients
 * @param input.set         name of the coefficients; Sonntag (WMO) when absent
 * @returns vapour pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @remarks Over water, also below 0 degC. Within 0.3 per cent of the ASHRAE form from 0 to 50 degC.
 * @see WMO-No. 8, Annex 4.B
 */
export function saturationPressure({ temperature, set = 'sonntag' }: SaturationPressureInput): AbsolutePressure {
  const coefficients = magnusSet(set);
  return saturation(coefficients, celsiusWithin(coefficients, temperature, 'temperature')) as AbsolutePressure;
}

export const saturationPressureFormula = /* @__PURE__ */ formula<SaturationPressureInput, AbsolutePressure>({
  id: 'site/saturation-pressure',
  title: 'Vapour pressure at saturation over water',
  search: ['magnus'],
  compute: saturationPressure,
  equation: {
    where: [{ symbol: 't', kind: 'number', expression: 'T - 273.15' }],
    branches: [
      { when: 'set == "sonntag"', expression: '611.2 * exp(17.62 * t / (243.12 + t))' },
      { when: 'set == "alduchov-eskridge"', expression: '610.94 * exp(17.625 * t / (243.04 + t))' },
      { when: 'set == "bolton"', expression: '611.2 * exp(17.67 * t / (243.5 + t))' },
      { expression: '610.78 * exp(17.269388197455342 * t / (237.3 + t))' },
    ],
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [273.15, 308.15] },
    set: {
      symbol: 'set',
      kind: 'choice',
      name: 'coefficients',
      choices: ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'],
      default: 'sonntag',
    },
  },
  output: { symbol: 'e_s', kind: 'absolute pressure', name: 'vapour pressure at saturation' },
  sources: [
    { key: 'sonntag-1990', locator: 'Magnus form over water' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'within 0.3 per cent of the ASHRAE form' } },
  limits: [{ sort: 'stop', text: 'Only within the span of temperature of the coefficients.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
