import { formula, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';
import { celsiusWithin, iceSet, magnusSet, saturatedAt } from './magnus-set.js';

export interface FrostPointInput {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
}

/**
 * Temperature at which the moisture of the air settles as frost (Sonntag: humidity over water, deposit as ice).
 *
 * $$t_f = \frac{272.62\,g}{22.46 - g}, \qquad g = \ln RH + \frac{17.62\,t}{243.12 + t}$$
 *
 * @param input.temperature T, of the air [K]; t in degC, from -45 to 60
 * @param input.humidity    RH, relative humidity over water, above 0 and up to 1
 * @returns frost point [K], at most 0.01 degC
 * @throws CalculationError `invalid-input`; `outside-validity` when the air is so damp that dew forms, not frost
 * @remarks Between 0 and 1 K above the dew point over water at the same air, so it is the stricter of the two.
 * @see WMO-No. 8, Annex 4.B, as recalled
 */
export function frostPoint({ temperature, humidity: RH }: FrostPointInput): Temperature {
  const water = magnusSet('sonntag');
  positive(RH, 'humidity', '');
  within(RH, 0, 1, 'humidity', '');
  const t = celsiusWithin(water, temperature, 'temperature');
  // Both forms have the same e_0, so that it drops out.
  return saturatedAt(iceSet, Math.log(RH) + (water.b * t) / (water.c + t), 'humidity');
}

export const frostPointFormula = /* @__PURE__ */ formula<FrostPointInput, Temperature>({
  id: 'site/frost-point',
  title: 'Frost point',
  search: ['ice', 'freezing'],
  compute: frostPoint,
  equation: {
    where: [
      { symbol: 't', kind: 'number', expression: 'T - 273.15' },
      { symbol: 'g', kind: 'number', expression: 'log(RH) + 17.62 * t / (243.12 + t)' },
    ],
    expression: '273.15 + 272.62 * g / (22.46 - g)',
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [253.15, 283.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.2, 1] },
  },
  output: { symbol: 'T_f', kind: 'temperature', name: 'frost point' },
  sources: [{ key: 'wmo-8', locator: 'Annex 4.B' }],
  evidence: { form: { tag: 'recalled', derived: 'frost points of a published table within 0.24 K' } },
  limits: [{ sort: 'stop', text: 'Only where frost forms: a frost point of at most 0.01 degC.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
