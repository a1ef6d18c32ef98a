import { nonNegative, positive, refuse } from '../../formula/index.js';
import { integrate } from '../../numeric/index.js';
import type { Temperature, TemperatureDifference, Time } from '../../quantity/index.js';

/** A temperature that swings once a day about its mean, coldest at one hour and hottest half a day later. */
export interface DailySwing {
  readonly meanTemperature: Temperature;
  /** Highest minus lowest. */
  readonly swing: TemperatureDifference;
  /** Time from the coldest hour to the start. */
  readonly sinceColdest: Time;
  /** One day when absent. */
  readonly period?: Time | undefined;
}

/** Refuses a swing that cannot be. */
export function checkSwing({ meanTemperature, swing, sinceColdest, period = 86400 as Time }: DailySwing): void {
  positive(meanTemperature, 'meanTemperature', 'K');
  nonNegative(swing, 'swing', 'K');
  nonNegative(sinceColdest, 'sinceColdest', 's');
  positive(period, 'period', 's');
  if (!(swing / 2 < meanTemperature)) {
    refuse({
      code: 'invalid-input',
      parameter: 'swing',
      value: swing,
      unit: 'K',
      constraint: 'must be less than twice the mean temperature, {limit}: nothing is colder than absolute zero',
      limit: 2 * meanTemperature,
    });
  }
}

/** The lowest and the highest temperature of a swing. */
export function spanOfSwing({ meanTemperature, swing }: DailySwing): readonly [lowest: number, highest: number] {
  return [meanTemperature - swing / 2, meanTemperature + swing / 2];
}

/** What a swing gives up to a clock time: the integral of the factor, and the clock time that counted. */
export interface SwingCredit {
  readonly equivalent: number;
  readonly credited: number;
}

/**
 * The credit of a swing as a function of the clock time since the start. `factor` is the shift at a temperature; hours
 * below `minimumTemperature` count nothing.
 *
 * Panels of an eighth of a period, split where the temperature crosses the minimum: an adaptive rule that starts on whole
 * periods would see the same temperature at every point.
 */
export function swingCredit(
  input: DailySwing,
  minimumTemperature: number,
  factor: (temperature: number) => number,
): (clock: number) => SwingCredit {
  const { meanTemperature, swing, sinceColdest, period = 86400 } = input;
  const half = swing / 2;
  const temperatureAt = (phase: number): number => meanTemperature - half * Math.cos(2 * Math.PI * phase);
  const tolerance = 1e-13 * factor(meanTemperature + half);
  const crossing =
    half > 0 ? Math.acos(Math.max(-1, Math.min(1, (meanTemperature - minimumTemperature) / half))) / (2 * Math.PI) : 0;
  const marks = [0, 1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8, crossing, 1 - crossing].sort((a, b) => a - b);

  const start = (sinceColdest / period) % 1;
  const inside = [...marks, ...marks.map((mark) => 1 + mark)].filter((mark) => mark > start && mark < start + 1);
  const ends = [start, ...inside, start + 1];
  const panel = (from: number, to: number): SwingCredit => {
    if (temperatureAt((from + to) / 2) < minimumTemperature) return { equivalent: 0, credited: 0 };
    return {
      equivalent: integrate((phase) => factor(temperatureAt(phase)), from, to, tolerance),
      credited: to - from,
    };
  };
  // Credit up to each end, so that a clock time costs one part of a panel only.
  const upTo: SwingCredit[] = [{ equivalent: 0, credited: 0 }];
  ends.slice(1).forEach((to, index) => {
    upTo.push(sum(upTo[index] as SwingCredit, panel(ends[index] ?? start, to)));
  });
  const day = upTo[upTo.length - 1] as SwingCredit;

  return (clock) => {
    const periods = clock / period;
    const whole = Math.floor(periods);
    const phase = start + (periods - whole);
    const last = ends.findLastIndex((end) => end <= phase);
    const rest = sum(upTo[last] as SwingCredit, panel(ends[last] ?? start, phase));
    return {
      equivalent: (whole * day.equivalent + rest.equivalent) * period,
      credited: (whole * day.credited + rest.credited) * period,
    };
  };
}

function sum(a: SwingCredit, b: SwingCredit): SwingCredit {
  return { equivalent: a.equivalent + b.equivalent, credited: a.credited + b.credited };
}
