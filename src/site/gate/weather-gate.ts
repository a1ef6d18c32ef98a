import { nonNegative, refuse } from '../../formula/index.js';
import { exactly, joinLines, type Line, line, roundedDown, roundedUp, type Time } from '../../quantity/index.js';
import { type GateDecision, type GateReason, hardest } from './gate-reason.js';
import {
  checkHour,
  checkWeatherLimits,
  type HourCheck,
  type WeatherHour,
  type WeatherLimits,
} from './weather-check.js';

export interface WeatherGateInput extends WeatherLimits {
  /** Measured now, then forecast; in order of time. */
  readonly forecast: readonly WeatherHour[];
  /** How long the climate must hold from the start: to the end of the cure that moisture can harm. */
  readonly holdTime: Time;
}

export interface WeatherGate {
  readonly decision: GateDecision;
  /** The earliest start within the forecast from which every check holds; absent where there is none. */
  readonly earliestStart?: Time;
  readonly reasons: readonly GateReason[];
}

/**
 * Whether the weather lets work start, judged over the hours that it must hold: go now, wait for a known hour or a longer
 * forecast, or stop because no hour of the forecast will do.
 *
 * Between two hours of the forecast both must pass. A single reading cannot say stop: it has no later hour to judge.
 *
 * @throws CalculationError `invalid-input` for an empty forecast or hours out of order; `outside-validity` for a climate
 *   beyond the dew-point equation
 */
export function weatherGate(input: WeatherGateInput): WeatherGate {
  const { forecast, holdTime } = input;
  checkForecast(forecast);
  nonNegative(holdTime, 'holdTime', 's');
  checkWeatherLimits(input);
  const checked: HourCheck[][] = [];
  const checksAt = (index: number): HourCheck[] => {
    const hour = forecast[index];
    if (hour === undefined) return [];
    const before = forecast[index - 1];
    const earlier = before !== undefined && isSameClimate(before, hour) ? checked[index - 1] : undefined;
    checked[index] ??= earlier ?? checkHour(hour, input);
    return checked[index];
  };
  const end = forecast[forecast.length - 1]?.time ?? 0;
  const starts = forecast.filter(({ time }) => time + holdTime <= end);
  const earliest = firstToHold(forecast, starts.length, holdTime, checksAt);
  const now = forecast[0]?.time ?? 0;

  const failing: GateDecision =
    earliest !== undefined || forecast.length === 1 || starts.length === 0 ? 'wait' : 'stop';
  const window = forecast
    .slice(0, closing(forecast, 0, now + holdTime) + 1)
    .map(({ time }, index) => ({ time, checks: checksAt(index) }));
  const reasons = worstChecks(window).map(({ worst, time }) => asReason(worst, time, failing, earliest?.time));
  if (starts.length === 0) reasons.push(tooShort(end - now, holdTime));
  const decision = hardest(reasons.map((reason) => reason.decision));
  return earliest === undefined ? { decision, reasons } : { decision, earliestStart: earliest.time, reasons };
}

/** A stretch of the forecast is looked at where it begins and where it ends. */
function isSameClimate(a: WeatherHour, b: WeatherHour): boolean {
  return (
    a.airTemperature === b.airTemperature && a.humidity === b.humidity && a.steelTemperature === b.steelTemperature
  );
}

interface JudgedHour {
  readonly time: number;
  readonly checks: readonly HourCheck[];
}

/** The hour that closes a span: the first that is no earlier than its end, looked for from there on, or the last there is. */
function closing(forecast: readonly WeatherHour[], from: number, end: number): number {
  let index = from;
  while (index < forecast.length - 1 && (forecast[index]?.time ?? end) < end) index += 1;
  return index;
}

/**
 * The first hour from which every check holds over the span. A span that holds a failing hour is left for the hour behind
 * that one, and both ends of the span only move on, so that a forecast is gone through once.
 */
function firstToHold(
  forecast: readonly WeatherHour[],
  starts: number,
  holdTime: number,
  checksAt: (index: number) => readonly HourCheck[],
): WeatherHour | undefined {
  let start = 0;
  let last = 0;
  for (let index = 0; start < starts; index++) {
    if (checksAt(index).some(({ excess }) => !(excess <= 0))) start = index + 1;
    const first = forecast[start];
    if (first === undefined) return undefined;
    last = closing(forecast, Math.max(last, start), first.time + holdTime);
    if (start <= index && index >= last && start < starts) return first;
  }
  return undefined;
}

/** For each check the hour at which it comes nearest to failing, or fails by most. */
function worstChecks(window: readonly JudgedHour[]): { readonly worst: HourCheck; readonly time: number }[] {
  const count = window[0]?.checks.length ?? 0;
  return Array.from({ length: count }, (_, index) => {
    let found: { worst: HourCheck; time: number } | undefined;
    for (const { checks, time } of window) {
      const check = checks[index];
      if (check !== undefined && (found === undefined || check.excess > found.worst.excess)) {
        found = { worst: check, time };
      }
    }
    return found;
  }).filter((entry) => entry !== undefined);
}

function fromNow(time: number): Line {
  return time === 0 ? { text: 'now' } : line('in {0}', exactly('time from now', 'time', time));
}

function orLater(earliest: number): Line {
  if (earliest === 0) return { text: 'or start now, when every check holds' };
  return line('or start in {0}, when every check holds', roundedUp('time from now', 'time', earliest));
}

function asReason(worst: HourCheck, time: number, failing: GateDecision, earliest: number | undefined): GateReason {
  const { because, change } = worst.words();
  const { check, value, limit, kind } = worst;
  const passes = worst.excess <= 0;
  return {
    check,
    value,
    limit,
    kind,
    because: joinLines([fromNow(time), because], ': '),
    change: passes || earliest === undefined ? change : joinLines([change, orLater(earliest)], '; '),
    decision: passes ? 'go' : failing,
  };
}

function tooShort(length: number, holdTime: number): GateReason {
  return {
    check: 'forecast long enough',
    decision: 'wait',
    value: length,
    limit: holdTime,
    kind: 'time',
    because: line(
      'the forecast covers {0}; the climate must hold for {1}',
      roundedDown('time that the forecast covers', 'time', length),
      roundedUp('time that the climate has to hold', 'time', holdTime),
    ),
    change: { text: 'a forecast that reaches to the end of that time' },
  };
}

function checkForecast(forecast: readonly WeatherHour[]): void {
  if (!Array.isArray(forecast) || forecast.length === 0) {
    refuse({
      code: 'invalid-input',
      parameter: 'forecast',
      value: Array.isArray(forecast) ? 'empty' : forecast,
      unit: '',
      constraint: 'must hold at least the reading of now',
    });
  }
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < forecast.length; i++) {
    const { time } = forecast[i] as WeatherHour;
    // Names are made only for an hour that is refused: this runs for every hour of a long forecast.
    if (!(Number.isFinite(time) && time >= 0 && time > before)) refuseHour(time, before, `forecast[${i}].time`);
    before = time;
  }
}

function refuseHour(value: number, limit: number, parameter: string): never {
  nonNegative(value, parameter, 's');
  const constraint = 'must be later than that of the hour in front of it, {limit}';
  return refuse({ code: 'invalid-input', parameter, value, unit: 's', constraint, limit });
}
