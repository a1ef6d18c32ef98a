import { formula, positive, refuse } from '../../formula/index.js';
import type { Density, Temperature } from '../../quantity/index.js';

export interface WaterDensityInput {
  readonly temperature: Temperature;
}

/** Error of the ratio of two densities, each from 35 to 100 degF, against the formula of the CIPM (Tanaka, 2001) [1]. */
export const waterDensityRatioError = 3e-6;

/** Coldest and warmest water whose error is stated [K]: 35 and 100 degF. */
const [coldest, warmest] = [274.81666666666666, 310.92777777777775];

/**
 * Density of fresh water without air in it, at one atmosphere.
 *
 * $$\rho = \frac{a_0 + a_1 t + a_2 t^2 + a_3 t^3 + a_4 t^4 + a_5 t^5}{1 + b\,t}, \qquad t = T - 273.15$$
 *
 * @param input.temperature T, temperature of the water [K], 35 to 100 degF
 * @returns density [kg/m3]
 * @throws CalculationError `invalid-input`; `outside-validity` where its error is not stated
 * @remarks The ratio of two densities lies within 3e-6 of that by the formula of the CIPM. Salt, glycol or oil in the water
 *   change it by far more: fresh water only. Densest at 4 degC: colder water swells again.
 * @see Kell 1975, J. Chem. Eng. Data 20, 97
 */
export function waterDensity(input: WaterDensityInput): Density {
  const { temperature: T } = input;
  positive(T, 'temperature', 'K');
  // Slack of a billionth: 35 degF in kelvin may round to just below 35 when it is read back.
  if (T < coldest - 1e-9 || T > warmest + 1e-9) {
    refuse({
      code: 'outside-validity',
      parameter: 'temperature',
      value: T,
      unit: 'K',
      constraint: 'must be from 35 degF (274.8 K) to 100 degF (310.9 K), where the error of the density is stated',
      source: 'Kell 1975',
    });
  }
  const t = T - 273.15;
  const swollen =
    999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return (swollen / (1 + 16.87985e-3 * t)) as Density;
}

export const waterDensityFormula = /* @__PURE__ */ formula<WaterDensityInput, Density>({
  id: 'acceptance/water-density',
  title: 'Density of fresh water',
  search: ['hydrotest'],
  compute: waterDensity,
  equation: {
    where: [{ symbol: 't', kind: 'number', expression: 'T - 273.15' }],
    expression:
      '(999.83952 + 16.945176 * t - 0.0079870401 * t^2 - 0.000046170461 * t^3 + 0.00000010556302 * t^4 - 0.00000000028054253 * t^5) / (1 + 0.01687985 * t)',
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the water', sample: [275, 310.5] },
  },
  output: { symbol: 'rho', kind: 'density', name: 'density of the water' },
  sources: [{ key: 'kell-1975', locator: 'p. 97, density at one atmosphere' }],
  evidence: { form: { tag: 'recalled', derived: 'formula of the CIPM (Tanaka, 2001), within 3e-6 in ratios' } },
  limits: [{ sort: 'stop', text: 'Fresh water from 35 to 100 degF, where its error is stated.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to kilograms in a cubic metre',
});
