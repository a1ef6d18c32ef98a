import type { Ratio } from '../../quantity/index.js';
import type { Site } from '../case/case.js';

/** The driest air that is read or foreseen: what cures by moisture waits longest in it. */
export function driestAir({ relativeHumidity, forecast = [] }: Site): Ratio {
  let driest: number = relativeHumidity;
  for (const hours of forecast) driest = Math.min(driest, hours.relativeHumidity);
  return driest as Ratio;
}

/** The dampest: it sets soonest in it. */
export function dampestAir({ relativeHumidity, forecast = [] }: Site): Ratio {
  let dampest: number = relativeHumidity;
  for (const hours of forecast) dampest = Math.max(dampest, hours.relativeHumidity);
  return dampest as Ratio;
}
