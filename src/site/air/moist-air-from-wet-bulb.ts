import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { AbsolutePressure, Ratio, Temperature } from '../../quantity/index.js';
import { saturationPressureAshrae } from './saturation-pressure-ashrae.js';

export interface MoistAirFromWetBulbInput {
  readonly dryBulb: Temperature;
  readonly wetBulb: Temperature;
  readonly pressure?: AbsolutePressure | undefined;
}

export interface MoistAir {
  readonly humidityRatio: Ratio;
  readonly vapourPressure: AbsolutePressure;
  readonly relativeHumidity: Ratio;
}

/**
 * State of the air from its thermodynamic wet bulb (ASHRAE).
 *
 * $$W = \frac{(2501 - 2.326\,t_w) W_s - 1.006\,(t - t_w)}{2501 + 1.86\,t - 4.186\,t_w}, \qquad
 *   W_s = \frac{0.621945\,p_{ws}(t_w)}{p - p_{ws}(t_w)}$$
 *
 * @param input.dryBulb  T [K]; t in degC, up to 200
 * @param input.wetBulb  T_w [K]; t_w in degC, above 0, at most t
 * @param input.pressure p, of the air; 101325 Pa when absent
 * @returns vapour per dry air by mass, vapour pressure [Pa], relative humidity over water
 * @throws CalculationError `invalid-input`; `outside-validity` with ice on the bulb, or for a pair of readings that no
 *   air has
 * @see ASHRAE Handbook Fundamentals 2017, chapter 1, equations 20, 22 and 33
 */
export function moistAirFromWetBulb(input: MoistAirFromWetBulbInput): MoistAir {
  const { dryBulb, wetBulb, pressure: p = 101325 as AbsolutePressure } = input;
  positive(p, 'pressure', 'Pa');
  const pws = saturationPressureAshrae({ temperature: wetBulb });
  const pds = saturationPressureAshrae({ temperature: dryBulb });
  atMost(wetBulb, dryBulb, 'the dry bulb', 'wetBulb', 'K');
  const [t, tw] = [dryBulb - 273.15, wetBulb - 273.15];
  if (tw < 0.01) unusable(wetBulb, 'must be above the triple point: the equation is for water on the bulb, not ice');
  if (!(pws < p)) unusable(wetBulb, 'water must not boil at this temperature and pressure');
  const Ws = (0.621945 * pws) / (p - pws);
  const W = ((2501 - 2.326 * tw) * Ws - 1.006 * (t - tw)) / (2501 + 1.86 * t - 4.186 * tw);
  if (!(W > 0)) unusable(wetBulb, 'no air is this dry at this dry bulb and pressure; read again with the wick wet');
  const e = (p * W) / (0.621945 + W);
  return {
    humidityRatio: W as Ratio,
    vapourPressure: e as AbsolutePressure,
    relativeHumidity: (e / pds) as Ratio,
  };
}

function unusable(wetBulb: number, constraint: string): never {
  refuse({ code: 'outside-validity', parameter: 'wetBulb', value: wetBulb, unit: 'K', constraint });
}

export const moistAirFromWetBulbFormula = /* @__PURE__ */ formula<MoistAirFromWetBulbInput, MoistAir>({
  id: 'site/moist-air-from-wet-bulb',
  title: 'State of the air from wet and dry bulb, ASHRAE form',
  search: ['psychrometer', 'sling', 'wet bulb'],
  compute: moistAirFromWetBulb,
  equation: {
    where: [
      { symbol: 't', kind: 'number', expression: 'T - 273.15' },
      { symbol: 't_w', kind: 'number', expression: 'T_w - 273.15' },
      {
        symbol: 'p_w',
        kind: 'number',
        expression:
          'exp(-5800.2206 / T_w + 1.3914993 - 4.8640239e-2 * T_w + 4.1764768e-5 * T_w^2 - 1.4452093e-8 * T_w^3 + 6.5459673 * log(T_w))',
      },
      { symbol: 'W_s', kind: 'number', expression: '0.621945 * p_w / (p - p_w)' },
    ],
    expression: '((2501 - 2.326 * t_w) * W_s - 1.006 * (t - t_w)) / (2501 + 1.86 * t - 4.186 * t_w)',
  },
  inputs: {
    dryBulb: { symbol: 'T', kind: 'temperature', name: 'dry bulb', sample: [293.15, 313.15] },
    wetBulb: { symbol: 'T_w', kind: 'temperature', name: 'wet bulb', sample: [285.15, 300.15] },
    pressure: {
      symbol: 'p',
      kind: 'absolute pressure',
      name: 'pressure of the air',
      sample: [80000, 105000],
      default: 101325,
    },
  },
  output: {
    humidityRatio: { symbol: 'W', kind: 'ratio', name: 'vapour per dry air by mass' },
    vapourPressure: { symbol: 'e_v', kind: 'absolute pressure', name: 'vapour pressure' },
    relativeHumidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity' },
  },
  sources: [{ key: 'ashrae-fundamentals-2017', locator: 'chapter 1, equations 20, 22 and 33' }],
  evidence: { form: { tag: 'secondary' }, pressure: { tag: 'secondary', note: 'standard atmosphere' } },
  limits: [{ sort: 'stop', text: 'Only with water on the wet bulb, not ice.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
