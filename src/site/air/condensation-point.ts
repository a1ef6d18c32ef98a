import { formula } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';
import { dewPoint } from './dew-point.js';
import { frostPoint } from './frost-point.js';

export interface CondensationPointInput {
  readonly temperature: Temperature;
  readonly humidity: Ratio;
}

export interface CondensationPoint {
  readonly point: Temperature;
  readonly isFrost: boolean;
}

/**
 * Temperature below which a surface becomes wet or white: the dew point, or below 0 degC the frost point.
 *
 * $$t_k = t_d \text{ for } t_d \ge 0, \quad t_f \text{ below}$$
 *
 * @param input.temperature T, of the air [K]; from -45 to 60 degC
 * @param input.humidity    RH, relative humidity over water, above 0 and up to 1
 * @returns the temperature [K], and whether frost forms
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @see WMO-No. 8, Annex 4.B; the ice coefficients as recalled
 */
export function condensationPoint(input: CondensationPointInput): CondensationPoint {
  const dew = dewPoint(input);
  if (dew >= 273.15) return { point: dew, isFrost: false };
  return { point: frostPoint(input), isFrost: true };
}

/** Whether what settles is frost. */
export function condensationPointIsFrost(input: CondensationPointInput): boolean {
  return condensationPoint(input).isFrost;
}

export const condensationPointFormula = /* @__PURE__ */ formula<CondensationPointInput, CondensationPoint>({
  id: 'site/condensation-point',
  title: 'Dew point, or frost point below 0 degC',
  search: ['sweating'],
  compute: condensationPoint,
  equation: {
    where: [
      { symbol: 't', kind: 'number', expression: 'T - 273.15' },
      { symbol: 'g', kind: 'number', expression: 'log(RH) + 17.62 * t / (243.12 + t)' },
    ],
    branches: [
      { when: 'g >= 0', expression: '273.15 + 243.12 * g / (17.62 - g)' },
      { expression: '273.15 + 272.62 * g / (22.46 - g)' },
    ],
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [258.15, 313.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.2, 1] },
  },
  output: {
    point: { symbol: 'T_k', kind: 'temperature', name: 'dew or frost point' },
    isFrost: { symbol: 'frost', kind: 'flag', name: 'frost forms' },
  },
  sources: [{ key: 'wmo-8', locator: 'Annex 4.B' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [{ sort: 'note', text: 'What settles is frost, not dew.', beyond: condensationPointIsFrost }],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
