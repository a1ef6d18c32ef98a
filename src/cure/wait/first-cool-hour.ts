import { formula, listOfRows, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Temperature, Time } from '../../quantity/index.js';

/** A stretch of a forecast: how long, and the temperatures of steel and air over it. */
export interface ForecastTemperatures {
  /** How long the stretch lasts [s]. */
  readonly duration: Time;
  /** Temperature of the steel [K]. */
  readonly pipeTemperature: Temperature;
  /** Temperature of the air [K]. */
  readonly airTemperature: Temperature;
}

export interface FirstCoolHourInput {
  readonly forecast: readonly ForecastTemperatures[];
  readonly limit: Temperature;
}

/**
 * The first hour of a forecast at which steel and air are both no warmer than a limit.
 *
 * $$t = \sum_{i < k} \Delta t_i, \qquad k = \min\{i : \max(T_{p,i}, T_{a,i}) \le T\}$$
 *
 * @param input.forecast stretches of constant temperature from the start on, in order
 * @param input.limit    T, the warmest that will do [K], > 0
 * @returns time from the start of the forecast to the start of that stretch [s]
 * @throws CalculationError `invalid-input`; `no-solution` when no stretch is that cool
 * @remarks It says nothing of how long that stretch lasts.
 */
export function firstCoolHour(input: FirstCoolHourInput): Time {
  const { forecast, limit } = input;
  positive(limit, 'limit', 'K');
  listOfRows(forecast, 'forecast');
  if (forecast.length === 0) nothingForecast();
  let [from, first, coolest] = [0, -1, Number.POSITIVE_INFINITY];
  for (let i = 0; i < forecast.length; i++) {
    const { duration, pipeTemperature, airTemperature } = forecast[i] as ForecastTemperatures;
    nonNegative(duration, `forecast[${i}].duration`, 's');
    positive(pipeTemperature, `forecast[${i}].pipeTemperature`, 'K');
    positive(airTemperature, `forecast[${i}].airTemperature`, 'K');
    const warmer = Math.max(pipeTemperature, airTemperature);
    if (first < 0 && warmer <= limit) first = from;
    coolest = Math.min(coolest, warmer);
    from += duration;
  }
  if (first < 0) neverCool(limit, coolest);
  return first as Time;
}

function nothingForecast(): never {
  refuse({
    code: 'no-solution',
    parameter: 'forecast',
    value: 'empty',
    unit: '',
    constraint: 'must hold at least one stretch of { duration, pipeTemperature, airTemperature }',
  });
}

function neverCool(limit: number, coolest: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'limit',
    value: limit,
    unit: 'K',
    constraint: 'must be at least {limit}, the coolest hour of the forecast',
    limit: coolest,
  });
}

export const firstCoolHourFormula = /* @__PURE__ */ formula<FirstCoolHourInput, Time>({
  id: 'cure/first-cool-hour',
  title: 'First hour that is cool enough',
  search: ['hot weather', 'shade', 'start time'],
  compute: firstCoolHour,
  equation: {
    algorithm: 'Sum the durations of the forecast up to the first stretch in which neither steel nor air is above T.',
  },
  inputs: {
    forecast: {
      symbol: 'forecast',
      kind: 'list',
      name: 'temperatures of steel and air by the hour',
      columns: { duration: 'time', pipeTemperature: 'temperature', airTemperature: 'temperature' },
    },
    limit: { symbol: 'T', kind: 'temperature', name: 'warmest that will do', sample: [290, 318] },
  },
  output: { symbol: 't', kind: 'time', name: 'first cool hour, from the start of the forecast' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'each hour asked in turn' } },
  limits: [],
});
