import { lengthOf, stretchesFrom } from '../../numeric/stretches.js';
import type { Time } from '../../quantity/index.js';
import type { WeatherHour } from './weather-check.js';

/** The climate at the pipe, whenever it holds. */
export type Climate = Omit<WeatherHour, 'time'>;

/** A climate that is foreseen to hold so long. */
export interface ClimateStretch extends Climate {
  readonly duration: Time;
}

/**
 * The hours that a gate looks at: from the hour at which it stands, its own climate first, then what the forecast says. The
 * reading of now holds for the first stretch of the forecast; a gate that stands later sees the forecast alone, and one that
 * stands behind its end sees nothing. A stretch stands at its start and a second before its end.
 *
 * @param now      as it is read at the start of the job
 * @param forecast in a row from the start of the job; may be empty
 * @param from     hour at which the gate stands, from the start of the job [s]
 */
export function weatherHours(now: Climate, forecast: readonly ClimateStretch[], from: Time): WeatherHour[] {
  const left = stretchesFrom(forecast, from);
  const [first] = left;
  if (first === undefined && forecast.length > 0) return [];
  const isRead = from < lengthOf(forecast.slice(0, 1)) || first === undefined;
  const hours = [hourAt(from, isRead ? now : first)];
  let start: number = from;
  for (const each of left) {
    const { duration } = each;
    if (start > from) hours.push(hourAt(start, each));
    hours.push(hourAt(start + Math.max(duration - 1, duration / 2), each));
    start += duration;
  }
  return hours;
}

function hourAt(time: number, { airTemperature, humidity, steelTemperature }: Climate): WeatherHour {
  return { time: time as Time, airTemperature, humidity, steelTemperature };
}
