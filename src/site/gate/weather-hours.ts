import type { Time } from '../../quantity/index.js';
import type { WeatherHour } from './weather-check.js';

/** A stretch of a forecast over which one climate holds. */
export interface WeatherStretch extends Omit<WeatherHour, 'time'> {
  readonly duration: Time;
}

/**
 * The hours at which a gate looks at a forecast given in stretches: the reading of now, then each stretch at its start and
 * a second before its end, so that what holds over a stretch is judged at both of its ends.
 *
 * @param now       what is read at the pipe
 * @param stretches one after the other from now on
 */
export function weatherHours(now: Omit<WeatherHour, 'time'>, stretches: readonly WeatherStretch[]): WeatherHour[] {
  const hours: WeatherHour[] = [hourAt(0, now)];
  let start = 0;
  for (const stretch of stretches) {
    if (start > 0) hours.push(hourAt(start, stretch));
    // A stretch of less than two seconds is looked at in its middle: its end belongs to the next one.
    hours.push(hourAt(start + Math.max(stretch.duration - 1, stretch.duration / 2), stretch));
    start += stretch.duration;
  }
  return hours;
}

function hourAt(time: number, { airTemperature, humidity, steelTemperature }: Omit<WeatherHour, 'time'>): WeatherHour {
  return { time: time as Time, airTemperature, humidity, steelTemperature };
}
