import type { AbsolutePressure } from './absolute-pressure.js';
import type { GaugePressure } from './gauge-pressure.js';
import type { Temperature } from './temperature.js';
import type { TemperatureDifference } from './temperature-difference.js';

/**
 * Absolute pressure from a gauge reading; the atmosphere is never assumed.
 *
 * @param pressure above the atmosphere
 * @param atmosphere pressure of the air at the gauge
 */
export function toAbsolute(pressure: GaugePressure, atmosphere: AbsolutePressure): AbsolutePressure {
  return (pressure + atmosphere) as AbsolutePressure;
}

/**
 * Gauge pressure from an absolute one; the atmosphere is never assumed.
 *
 * @param pressure above vacuum
 * @param atmosphere pressure of the air at the gauge
 */
export function toGauge(pressure: AbsolutePressure, atmosphere: AbsolutePressure): GaugePressure {
  return (pressure - atmosphere) as GaugePressure;
}

/**
 * `a` minus `b`. Two temperatures have a difference, never a sum.
 *
 * @param a the temperature that counts up
 * @param b the one that is taken off
 */
export function difference(a: Temperature, b: Temperature): TemperatureDifference {
  return (a - b) as TemperatureDifference;
}

/**
 * A temperature moved by a difference.
 *
 * @param temperature where it starts
 * @param by up, or down where it is below 0
 */
export function shift(temperature: Temperature, by: TemperatureDifference): Temperature {
  return (temperature + by) as Temperature;
}
