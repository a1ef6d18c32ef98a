import type { HourlyReading, PlanStep } from '../repair/plan/plan.js';
import { leastOf } from '../repair/timeline/duration.js';
import { smallestUnit } from './plan-amount.js';
import { type UnitSystem, unitText } from './units.js';

const HOUR = 3600;
/** A day where nobody knows how long the step takes; beyond five, a sheet of its own serves better. */
const UNKNOWN = 24;
const MOST = 120;

/** How many hours of a step have a place for their readings. */
export function hoursRead({ duration }: PlanStep): number {
  const hours = Math.ceil(leastOf(duration) / HOUR - 1e-9);
  return Math.min(MOST, duration.known ? hours : Math.max(hours, UNKNOWN));
}

/** What is read each hour, in which unit. */
export function hourlyHead(readings: readonly HourlyReading[], system: UnitSystem): string {
  const named = readings.map(({ name, kind }) => `${name} in ${unitText(smallestUnit(kind, system))}`);
  return `Each hour from the start of this step: ${named.join(', ')}`;
}
