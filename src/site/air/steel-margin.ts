import { formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature, TemperatureDifference } from '../../quantity/index.js';
import { condensationPoint } from './condensation-point.js';

export interface SteelMarginInput {
  readonly steelTemperature: Temperature;
  readonly airTemperature: Temperature;
  readonly humidity: Ratio;
  readonly requiredMargin?: TemperatureDifference | undefined;
  readonly steelError?: TemperatureDifference | undefined;
  readonly temperatureError?: TemperatureDifference | undefined;
  readonly humidityError?: Ratio | undefined;
}

export interface SteelMargin {
  readonly worstMargin: TemperatureDifference;
  readonly nominalMargin: TemperatureDifference;
  readonly highestPoint: Temperature;
  readonly steelNeeded: Temperature;
  readonly isFrost: boolean;
  readonly isEnough: boolean;
}

/**
 * How far the steel is above the dew point, or below 0 degC the frost point, at the worst edge of the instruments.
 *
 * $$\Delta T = (T_s - \delta T_s) - T_k(T + \delta T,\ RH + \delta RH)$$
 *
 * @param input.steelTemperature T_s, read on the steel; a cold fluid sets it, not the air [K]
 * @param input.airTemperature   T, of the air at the pipe [K]
 * @param input.humidity         RH, above 0 and up to 1
 * @param input.requiredMargin   3 K when absent, >= 0
 * @param input.steelError       dT_s, of the contact thermometer; 0.5 K when absent, >= 0
 * @param input.temperatureError dT, of the air thermometer; 0.5 K when absent, >= 0
 * @param input.humidityError    dRH, of the hygrometer; 3 per cent of humidity when absent, from 0 to 0.5
 * @returns worst margin, margin as read, highest dew or frost point, the reading that the steel must show, whether frost
 *   forms, whether the margin is enough at the worst edge
 * @throws CalculationError `invalid-input`; `outside-validity` outside the span of the coefficients
 * @see ISO 8502-4, as pages that cite it report; US practice has 5 degF, 2.8 K
 */
export function steelMargin(input: SteelMarginInput): SteelMargin {
  const { steelTemperature: Ts, airTemperature: T, humidity: RH } = input;
  const { requiredMargin: needed = 3 as TemperatureDifference } = input;
  const { steelError: dTs = 0.5 as TemperatureDifference, temperatureError: dT = 0.5 as TemperatureDifference } = input;
  const { humidityError: dRH = 0.03 as Ratio } = input;
  positive(Ts, 'steelTemperature', 'K');
  within(Ts, 173.15, 773.15, 'steelTemperature', 'K');
  positive(T, 'airTemperature', 'K');
  positive(RH, 'humidity', '');
  within(RH, 0, 1, 'humidity', '');
  nonNegative(needed, 'requiredMargin', 'K');
  within(needed, 0, 100, 'requiredMargin', 'K');
  within(dTs, 0, 20, 'steelError', 'K');
  within(dT, 0, 20, 'temperatureError', 'K');
  within(dRH, 0, 0.5, 'humidityError', '');
  const read = condensationPoint({ temperature: T, humidity: RH });
  const worst = condensationPoint({
    temperature: (T + dT) as Temperature,
    humidity: Math.min(1, RH + dRH) as Ratio,
  });
  const worstMargin = Ts - dTs - worst.point;
  return {
    worstMargin: worstMargin as TemperatureDifference,
    nominalMargin: (Ts - read.point) as TemperatureDifference,
    highestPoint: worst.point,
    steelNeeded: (worst.point + needed + dTs) as Temperature,
    isFrost: worst.isFrost,
    isEnough: worstMargin >= needed,
  };
}

/** Whether the margin is too small at the worst edge. */
export function steelMarginTooSmall(input: SteelMarginInput): boolean {
  return !steelMargin(input).isEnough;
}

export const steelMarginFormula = /* @__PURE__ */ formula<SteelMarginInput, SteelMargin>({
  id: 'site/steel-margin',
  title: 'Steel above the dew point at the worst edge',
  search: ['condensation', '3 degrees above dew point'],
  compute: steelMargin,
  equation: {
    algorithm:
      'Steel reading less its error, less the dew point (below 0 degC the frost point) of the air with both errors up; humidity ends at saturation.',
  },
  inputs: {
    steelTemperature: { symbol: 'T_s', kind: 'temperature', name: 'steel temperature', sample: [273.15, 313.15] },
    airTemperature: { symbol: 'T', kind: 'temperature', name: 'air temperature', sample: [268.15, 313.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.25, 1] },
    requiredMargin: {
      symbol: 'dT_req',
      kind: 'temperature difference',
      name: 'margin required',
      sample: [2.5, 5],
      default: 3,
    },
    steelError: {
      symbol: 'dT_s',
      kind: 'temperature difference',
      name: 'error of the steel thermometer',
      sample: [0.1, 1],
      usual: [0, 3],
      default: 0.5,
    },
    temperatureError: {
      symbol: 'dT',
      kind: 'temperature difference',
      name: 'error of the air thermometer',
      sample: [0.1, 1],
      usual: [0, 3],
      default: 0.5,
    },
    humidityError: {
      symbol: 'dRH',
      kind: 'ratio',
      name: 'error of the hygrometer',
      sample: [0.01, 0.05],
      usual: [0, 0.1],
      default: 0.03,
    },
  },
  output: {
    worstMargin: { symbol: 'M', kind: 'temperature difference', name: 'margin at the worst edge' },
    nominalMargin: { symbol: 'M_read', kind: 'temperature difference', name: 'margin as read' },
    highestPoint: { symbol: 'T_k_max', kind: 'temperature', name: 'highest dew or frost point' },
    steelNeeded: { symbol: 'T_s_req', kind: 'temperature', name: 'reading that the steel must show' },
    isFrost: { symbol: 'frost', kind: 'flag', name: 'frost forms' },
    isEnough: { symbol: 'enough', kind: 'flag', name: 'margin is enough' },
  },
  sources: [
    { key: 'iso-8502-4', locator: 'as public pages report it' },
    { key: 'wmo-8', locator: 'Annex 4.B' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    dT_req: { tag: 'secondary' },
    dT_s: { tag: 'practice' },
    dT: { tag: 'practice' },
    dRH: { tag: 'practice' },
  },
  limits: [
    {
      sort: 'note',
      text: 'The steel is not far enough above the dew point at the worst edge of the instruments.',
      beyond: steelMarginTooSmall,
    },
  ],
  inhomogeneous: 'the coefficients are tied to degrees Celsius and to the pascal',
});
