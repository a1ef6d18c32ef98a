import { refuse } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

const DAY = 86_400;
const CLOCK = /^(?:(?<day>[1-9]\d?) )?(?<hours>[01]?\d|2[0-3]):(?<minutes>[0-5]\d)$/u;

/** A clock time in seconds after midnight of the first day, and whether it names its day. */
export interface ClockReading {
  readonly seconds: number;
  readonly namesDay: boolean;
}

/**
 * Reads `07:30`, or `2 07:30` on the second day.
 *
 * @throws CalculationError `invalid-input`
 */
export function readClock(text: string, parameter: string): ClockReading {
  const groups = CLOCK.exec(text.trim())?.groups;
  if (groups === undefined) {
    refuse({
      code: 'invalid-input',
      parameter,
      value: text,
      unit: '',
      constraint: 'must be a clock time such as 07:30, or 2 07:30 on the second day',
    });
  }
  const day = groups['day'] === undefined ? 0 : Number(groups['day']) - 1;
  const seconds = day * DAY + Number(groups['hours']) * 3600 + Number(groups['minutes']) * 60;
  return { seconds, namesDay: groups['day'] !== undefined };
}

/**
 * When a step began, from the start of the job. A time without its day is the one nearest to what was planned.
 *
 * @param start   start of the job, seconds after midnight
 * @param planned when the step was due, from the start of the job
 */
export function sinceStart({ seconds, namesDay }: ClockReading, start: number, planned: number): Time {
  if (namesDay) return (seconds - start) as Time;
  const days = Math.round((start + planned - seconds) / DAY);
  return (seconds + days * DAY - start) as Time;
}

/** A time of the job on the clock, to the minute above: `09:10`, and `day 2 09:10` after midnight. */
export function onClock(start: string, time: Time): string {
  const minutes = Math.ceil((readClock(start, 'start').seconds + time) / 60 - 1e-6);
  const day = Math.floor(minutes / 1440);
  const inDay = minutes - day * 1440;
  const clock = `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
  return day === 0 ? clock : `day ${day + 1} ${clock}`;
}
