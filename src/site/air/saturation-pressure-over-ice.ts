import { formula } from '../../formula/index.js';
import type { AbsolutePressure, Temperature } from '../../quantity/index.js';
import { celsiusWithin, iceSet, saturation } from './magnus-set.js';

export interface SaturationPressureOverIceInput {
  readonly temperature: Temperature;
}

/**
 * Pressure of water vapour at saturation over ice (Magnus form, Sonntag).
 *
 * $$e_i = 611.2 \exp\frac{22.46\,t}{272.62 + t}$$
 *
 * @param input.temperature T [K]; t in degC, from -65 to 0.01
 * @returns vapour pressure [Pa]
 * @throws CalculationError `invalid-input`; `outside-validity` above the triple point or below -65 degC
 * @see WMO-No. 8, Annex 4.B, as recalled
 */
export function saturationPressureOverIce({ temperature }: SaturationPressureOverIceInput): AbsolutePressure {
  return saturation(iceSet, celsiusWithin(iceSet, temperature, 'temperature')) as AbsolutePressure;
}

export const saturationPressureOverIceFormula = /* @__PURE__ */ formula<
  SaturationPressureOverIceInput,
  AbsolutePressure
>({
  id: 'site/saturation-pressure-over-ice',
  title: 'Vapour pressure at saturation over ice',
  compute: saturationPressureOverIce,
  equation: {
    where: [{ symbol: 't', kind: 'number', expression: 'T - 273.15' }],
    expression: '611.2 * exp(22.46 * t / (272.62 + t))',
  },
  inputs: { temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [213.15, 273.15] } },
  output: { symbol: 'e_i', kind: 'absolute pressure', name: 'vapour pressure at saturation over ice' },
  sources: [{ key: 'wmo-8', locator: 'Annex 4.B' }],
  evidence: { form: { tag: 'recalled', derived: 'frost points of a published table within 0.24 K' } },
  limits: [{ sort: 'stop', text: 'Only from -65 degC to the triple point.' }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
