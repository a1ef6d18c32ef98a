import { formula, positive, refuse } from '../../formula/index.js';
import type { AbsolutePressure, Temperature } from '../../quantity/index.js';

export interface SaturationAshraeInput {
  readonly temperature: Temperature;
}

/**
 * Pressure of water vapour at saturation, over ice below the triple point and over water above (Hyland and Wexler, in the
 * form of the ASHRAE handbook).
 *
 * $$\ln p_{ws} = \frac{C_1}{T} + C_2 + C_3 T + C_4 T^2 + C_5 T^3 + C_6 T^4 + C_7 \ln T$$
 *
 * @param input.temperature T [K], from -100 to 200 degC
 * @returns vapour pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span
 * @remarks The finer form: it judges the Magnus form, and serves the wet-bulb equation of the same handbook.
 * @see ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6
 */
export function saturationPressureAshrae({ temperature: T }: SaturationAshraeInput): AbsolutePressure {
  positive(T, 'temperature', 'K');
  if (!(T >= 173.15 && T <= 473.15)) {
    refuse({
      code: 'outside-validity',
      parameter: 'temperature',
      value: T,
      unit: 'K',
      constraint: 'must lie from 173.15 to 473.15 K, the span of the equation',
    });
  }
  if (T <= 273.16) {
    return Math.exp(
      -5674.5359 / T +
        6.3925247 -
        9.677843e-3 * T +
        6.2215701e-7 * T * T +
        2.0747825e-9 * T * T * T -
        9.484024e-13 * T * T * T * T +
        4.1635019 * Math.log(T),
    ) as AbsolutePressure;
  }
  return Math.exp(
    -5800.2206 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T * T -
      1.4452093e-8 * T * T * T +
      6.5459673 * Math.log(T),
  ) as AbsolutePressure;
}

export const saturationPressureAshraeFormula = /* @__PURE__ */ formula<SaturationAshraeInput, AbsolutePressure>({
  id: 'site/saturation-pressure-ashrae',
  title: 'Vapour pressure at saturation, ASHRAE form',
  compute: saturationPressureAshrae,
  equation: {
    branches: [
      {
        when: 'T <= 273.16',
        expression:
          'exp(-5674.5359 / T + 6.3925247 - 9.677843e-3 * T + 6.2215701e-7 * T^2 + 2.0747825e-9 * T^3 - 9.484024e-13 * T^4 + 4.1635019 * log(T))',
      },
      {
        expression:
          'exp(-5800.2206 / T + 1.3914993 - 4.8640239e-2 * T + 4.1764768e-5 * T^2 - 1.4452093e-8 * T^3 + 6.5459673 * log(T))',
      },
    ],
  },
  inputs: { temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [233.15, 423.15] } },
  output: { symbol: 'p_ws', kind: 'absolute pressure', name: 'vapour pressure at saturation' },
  sources: [{ key: 'ashrae-fundamentals-2017', locator: 'chapter 1, equations 5 and 6' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [{ sort: 'stop', text: 'Only from -100 to 200 degC.' }],
  inhomogeneous: 'the coefficients are tied to the kelvin and to the pascal',
});
