import { lengthOf, stretchesFrom } from '../../numeric/stretches.js';
import type { Time } from '../../quantity/index.js';
import type { WeatherHour } from './weather-check.js';

/** A stretch of a forecast over which one climate holds. */
export interface WeatherStretch extends Omit<WeatherHour, 'time'> {
  /** How long it lasts. */
  readonly duration: Time;
}

/**
 * An hour at which a gate looks, and what it finds there: hours of one stretch share it.
 *
 * @internal
 */
export interface Look<C> {
  readonly time: Time;
  readonly climate: C;
}

/**
 * The hours at which a gate looks at a forecast given in stretches: the hour of the gate itself, then each stretch at its
 * start and a second before its end, so that what holds over a stretch is judged at both of its ends. The reading of now
 * holds for the first stretch; a gate that stands later sees the forecast alone, and one beyond its end sees nothing.
 *
 * @param now       what is read at the pipe
 * @param stretches one after the other from now on
 * @param from      hour of the gate, from now [s]
 */
export function weatherHours(
  now: Omit<WeatherHour, 'time'>,
  stretches: readonly WeatherStretch[],
  from = 0 as Time,
): WeatherHour[] {
  return looksAt<Omit<WeatherHour, 'time'>, WeatherStretch>(now, stretches, from).map(({ time, climate }) => {
    const { airTemperature, humidity, steelTemperature } = climate;
    return { time, airTemperature, humidity, steelTemperature };
  });
}

/**
 * The same hours over whatever holds in each stretch.
 *
 * @internal
 */
export function looksAt<C, S extends C & { readonly duration: Time }>(
  now: C,
  stretches: readonly S[],
  from: Time,
): Look<C>[] {
  const left = stretchesFrom(stretches, from);
  const [first] = left;
  if (first === undefined && stretches.length > 0) return [];
  const isRead = first === undefined || from < lengthOf(stretches.slice(0, 1));
  const looks: Look<C>[] = [{ time: from, climate: isRead ? now : first }];
  let start: number = from;
  for (const stretch of left) {
    if (start > from) looks.push({ time: start as Time, climate: stretch });
    // A stretch of less than two seconds is looked at in its middle: its end belongs to the next one.
    const late = start + Math.max(stretch.duration - 1, stretch.duration / 2);
    looks.push({ time: late as Time, climate: stretch });
    start += stretch.duration;
  }
  return looks;
}
