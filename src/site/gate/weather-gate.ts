import { nonNegative, refuse } from '../../formula/index.js';
import { exactly, joinLines, type Line, line, roundedDown, roundedUp, type Time } from '../../quantity/index.js';
import { type GateDecision, type GateReason, hardest } from './gate-reason.js';
import { type JudgedClimate, type JudgedClimates, judgedOnce } from './judged-climates.js';
import {
  checkHour,
  checkWeatherLimits,
  type HourCheck,
  type WeatherHour,
  type WeatherLimits,
} from './weather-check.js';
import type { Look } from './weather-hours.js';

/** The climate as read and forecast, and what it is judged by. */
export interface WeatherGateInput extends WeatherLimits {
  /** Measured now, then forecast; in order of time. */
  readonly forecast: readonly WeatherHour[];
  /** How long the climate must hold from the start: to the end of the cure that moisture can harm. */
  readonly holdTime: Time;
}

/** Whether the weather lets work start, with every check. */
export interface WeatherGate {
  /** The hardest of all checks. */
  readonly decision: GateDecision;
  /** The earliest start within the forecast from which every check holds; absent where there is none. */
  readonly earliestStart?: Time;
  /** Each check at the worst hour of the span that it has to hold. */
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
  const looks = forecast.map((hour) => ({ time: hour.time, climate: hour }));
  return gateOver(looks, holdTime, input, (climate) => checkHour(climate, input), new Map());
}

/**
 * The gate over hours of which many share a climate: each climate is judged once.
 *
 * @internal
 */
export function gateOver<C extends object>(
  looks: readonly Look<C>[],
  holdTime: Time,
  limits: WeatherLimits,
  judge: (climate: C) => readonly HourCheck[],
  judged: JudgedClimates,
): WeatherGate {
  checkHours(looks);
  nonNegative(holdTime, 'holdTime', 's');
  checkWeatherLimits(limits);
  const foundAt = ({ climate }: Look<C>): JudgedClimate => judgedOnce(judged, climate, judge);
  const end = looks.at(-1)?.time ?? 0;
  const starts = startsIn(looks, holdTime, end);
  const earliest = firstToHold(looks, starts, holdTime, (look) => foundAt(look).holds);
  const now = looks[0]?.time ?? 0;

  const failing: GateDecision = earliest !== undefined || looks.length === 1 || starts === 0 ? 'wait' : 'stop';
  const window = looks
    .slice(0, closing(looks, 0, now + holdTime) + 1)
    .map((look) => ({ time: look.time, checks: foundAt(look).checks }));
  const reasons = worstChecks(window).map(({ worst, time }) => asReason(worst, time, failing, earliest));
  if (starts === 0) reasons.push(tooShort(end - now, holdTime));
  const decision = hardest(reasons.map((reason) => reason.decision));
  return earliest === undefined ? { decision, reasons } : { decision, earliestStart: earliest, reasons };
}

interface Hour {
  readonly time: Time;
}

interface JudgedHour extends Hour {
  readonly checks: readonly HourCheck[];
}

/** From how many hours, in order, the forecast reaches over the whole span. */
function startsIn(hours: readonly Hour[], holdTime: number, end: number): number {
  let starts = 0;
  while (starts < hours.length && (hours[starts] as Hour).time + holdTime <= end) starts++;
  return starts;
}

/** The hour that closes a span: the first that is no earlier than its end, looked for from there on, or the last there is. */
function closing(hours: readonly Hour[], from: number, end: number): number {
  let index = from;
  while (index < hours.length - 1 && (hours[index] as Hour).time < end) index += 1;
  return index;
}

/**
 * The first hour from which every check holds over the span. A span that holds a failing hour is left for the hour behind
 * that one, and both ends of the span only move on, so that a forecast is gone through once.
 */
function firstToHold<H extends Hour>(
  hours: readonly H[],
  starts: number,
  holdTime: number,
  holds: (hour: H) => boolean,
): Time | undefined {
  let start = 0;
  let last = 0;
  for (let index = 0; start < starts; index++) {
    if (!holds(hours[index] as H)) start = index + 1;
    const first = hours[start];
    if (first === undefined) return undefined;
    last = closing(hours, Math.max(last, start), first.time + holdTime);
    if (index >= last) return first.time;
  }
  return undefined;
}

/** For each check the hour at which it comes nearest to failing, or fails by most. */
function worstChecks(window: readonly JudgedHour[]): readonly { readonly worst: HourCheck; readonly time: number }[] {
  const found: { worst: HourCheck; time: number }[] = [];
  for (const { checks, time } of window) {
    for (const [index, check] of checks.entries()) {
      const before = found[index];
      if (before === undefined || check.excess > before.worst.excess) found[index] = { worst: check, time };
    }
  }
  return found;
}

function fromNow(time: number): Line {
  return time === 0 ? { text: 'now' } : line('in {0}', exactly('time from now', 'time', time));
}

function orLater(earliest: number): Line {
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
}

function checkHours(hours: readonly Hour[]): void {
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < hours.length; i++) {
    const { time } = hours[i] as Hour;
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
