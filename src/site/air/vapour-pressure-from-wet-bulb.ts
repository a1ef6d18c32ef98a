import { atMost, formula, positive, refuse } from '../../formula/index.js';
import type { AbsolutePressure, Temperature } from '../../quantity/index.js';
import { celsiusWithin, magnusSet, saturation } from './magnus-set.js';

export interface VapourPressureFromWetBulbInput {
  readonly dryBulb: Temperature;
  readonly wetBulb: Temperature;
  readonly pressure: AbsolutePressure;
}

/**
 * Pressure of the vapour in the air from a ventilated psychrometer (whirling hygrometer).
 *
 * $$e = e_s(t_w) - 6.53\times 10^{-4}\,(1 + 0.000944\,t_w)\,p\,(t - t_w)$$
 *
 * @param input.dryBulb  T [K]; t in degC, up to 60
 * @param input.wetBulb  T_w [K]; t_w in degC, at or above 0, at most t
 * @param input.pressure p, of the air [Pa], > 0
 * @returns vapour pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` with ice on the bulb, or for a pair of readings that no
 *   air has
 * @remarks A ventilated wet bulb reads a little above that of adiabatic saturation, and the form leaves out the factor for water
 *   under air: its dew point lies 0.1 to 0.6 K below that of `moistAirFromWetBulb`, which is the safe one before a coating.
 * @see WMO-No. 8, Annex 4.B
 */
export function vapourPressureFromWetBulb(input: VapourPressureFromWetBulbInput): AbsolutePressure {
  const { dryBulb, wetBulb, pressure: p } = input;
  const water = magnusSet('sonntag');
  const t = celsiusWithin(water, dryBulb, 'dryBulb');
  const tw = celsiusWithin(water, wetBulb, 'wetBulb');
  atMost(wetBulb, dryBulb, 'the dry bulb', 'wetBulb', 'K');
  positive(p, 'pressure', 'Pa');
  const e = saturation(water, tw) - 6.53e-4 * (1 + 0.000944 * tw) * p * (t - tw);
  if (tw < 0) iceOnBulb(wetBulb);
  if (!(e > 0)) noSuchAir(wetBulb);
  return e as AbsolutePressure;
}

function iceOnBulb(wetBulb: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'wetBulb',
    value: wetBulb,
    unit: 'K',
    constraint: 'must be at least 273.15 K: the coefficient is for water on the bulb, not ice',
  });
}

function noSuchAir(wetBulb: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'wetBulb',
    value: wetBulb,
    unit: 'K',
    constraint: 'no air is this dry at this dry bulb and pressure; read again with the wick wet and the fan running',
  });
}

export const vapourPressureFromWetBulbFormula = /* @__PURE__ */ formula<
  VapourPressureFromWetBulbInput,
  AbsolutePressure
>({
  id: 'site/vapour-pressure-from-wet-bulb',
  title: 'Vapour pressure from wet and dry bulb',
  search: ['psychrometer', 'sling', 'wet bulb'],
  compute: vapourPressureFromWetBulb,
  equation: {
    where: [
      { symbol: 't', kind: 'number', expression: 'T - 273.15' },
      { symbol: 't_w', kind: 'number', expression: 'T_w - 273.15' },
    ],
    expression: '611.2 * exp(17.62 * t_w / (243.12 + t_w)) - 6.53e-4 * (1 + 0.000944 * t_w) * p * (t - t_w)',
  },
  inputs: {
    dryBulb: { symbol: 'T', kind: 'temperature', name: 'dry bulb', sample: [288.15, 308.15] },
    wetBulb: { symbol: 'T_w', kind: 'temperature', name: 'wet bulb', sample: [283.15, 298.15] },
    pressure: { symbol: 'p', kind: 'absolute pressure', name: 'pressure of the air', sample: [80000, 105000] },
  },
  output: { symbol: 'e_v', kind: 'absolute pressure', name: 'vapour pressure' },
  sources: [{ key: 'wmo-8', locator: 'Annex 4.B' }],
  evidence: { form: { tag: 'recalled', derived: 'psychrometer tables of 1899 within 0.6 degF' } },
  limits: [{ sort: 'stop', text: 'Only with water on the wet bulb, not ice.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
