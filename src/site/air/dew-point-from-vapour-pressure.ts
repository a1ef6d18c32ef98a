import { formula, positive } from '../../formula/index.js';
import type { AbsolutePressure, Temperature } from '../../quantity/index.js';
import { type MagnusSetName, magnusSet, saturatedAt } from './magnus-set.js';

export interface DewPointFromVapourPressureInput {
  readonly vapourPressure: AbsolutePressure;
  readonly set?: MagnusSetName | undefined;
}

/**
 * Dew point over water from the pressure of the vapour in the air.
 *
 * $$t_d = \frac{c\,g}{b - g}, \qquad g = \ln\frac{e}{e_0}$$
 *
 * @param input.vapourPressure e [Pa], > 0
 * @param input.set            name of the coefficients; Sonntag (WMO) when absent
 * @returns dew point [K]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @see Sonntag 1990 and WMO-No. 8, Annex 4.B, as public pages give them
 */
export function dewPointFromVapourPressure(input: DewPointFromVapourPressureInput): Temperature {
  const { vapourPressure: e, set = 'sonntag' } = input;
  const coefficients = magnusSet(set);
  positive(e, 'vapourPressure', 'Pa');
  return saturatedAt(coefficients, Math.log(e / coefficients.atZero), 'vapourPressure');
}

export const dewPointFromVapourPressureFormula = /* @__PURE__ */ formula<DewPointFromVapourPressureInput, Temperature>({
  id: 'site/dew-point-from-vapour-pressure',
  title: 'Dew point from the vapour pressure',
  compute: dewPointFromVapourPressure,
  equation: {
    branches: [
      { when: 'set == "sonntag"', expression: '273.15 + 243.12 * log(e_v / 611.2) / (17.62 - log(e_v / 611.2))' },
      {
        when: 'set == "alduchov-eskridge"',
        expression: '273.15 + 243.04 * log(e_v / 610.94) / (17.625 - log(e_v / 610.94))',
      },
      { when: 'set == "bolton"', expression: '273.15 + 243.5 * log(e_v / 611.2) / (17.67 - log(e_v / 611.2))' },
      { expression: '273.15 + 237.3 * log(e_v / 610.78) / (17.269388197455342 - log(e_v / 610.78))' },
    ],
  },
  inputs: {
    vapourPressure: { symbol: 'e_v', kind: 'absolute pressure', name: 'vapour pressure', sample: [700, 5000] },
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
  evidence: { form: { tag: 'secondary', derived: 'inverse of the saturation pressure' } },
  limits: [{ sort: 'stop', text: 'Only within the span of temperature of the coefficients.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
