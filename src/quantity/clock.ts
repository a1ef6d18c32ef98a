import type { Time } from './time.js';

const MINUTE = 60;
const HOUR = 3600;
const DAY = 86_400;
const CLOCK = /^(?:(?<day>[1-9]\d?) )?(?<hours>[01]?\d|2[0-3]):(?<minutes>[0-5]\d)$/u;

/** A clock time in seconds after midnight of the first day, and whether it names its day. */
export interface ClockTime {
  /** After midnight of the first day. */
  readonly seconds: number;
  /** Whether the text names the day. */
  readonly namesDay: boolean;
}

/** Reads `07:30`, or `2 07:30` on the second day; nothing for any other text. */
export function readClock(text: string): ClockTime | undefined {
  const groups = CLOCK.exec(text.trim())?.groups;
  if (groups === undefined) return undefined;
  const day = groups['day'] === undefined ? 0 : Number(groups['day']) - 1;
  const seconds = day * DAY + Number(groups['hours']) * HOUR + Number(groups['minutes']) * MINUTE;
  return { seconds, namesDay: groups['day'] !== undefined };
}

/**
 * A clock time as a time from a start. One without its day is the one nearest to what was planned.
 *
 * @param start   seconds after midnight of the first day
 * @param planned when it was due, from the start
 */
export function sinceStart({ seconds, namesDay }: ClockTime, start: ClockTime, planned: Time): Time {
  const since = seconds - start.seconds;
  if (namesDay) return since as Time;
  return (since + Math.round((planned - since) / DAY) * DAY) as Time;
}

/** How much later one clock time is than another; below zero where it is earlier. One without its day is of the first. */
export function laterThan(planned: ClockTime, later: ClockTime): Time {
  return (later.seconds - planned.seconds) as Time;
}

/** A time from a start on the clock, to the minute above: `09:10`, and `day 2 09:10` after midnight. */
export function onClock(start: ClockTime, time: Time): string {
  // Rounding of a sum of seconds is no reason to go one minute further.
  const minutes = Math.ceil((start.seconds + time) / MINUTE - 1e-6);
  const day = Math.floor(minutes / 1440);
  const inDay = minutes - day * 1440;
  const clock = `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
  return day === 0 ? clock : `day ${day + 1} ${clock}`;
}

/** Whether a time of the job is earlier than another on a clock, which has no seconds. */
export function isEarlierOnClock(time: Time, other: Time): boolean {
  return time < other - MINUTE;
}

const CALENDAR = /^\d{4}-\d{2}-\d{2}$/u;

const midnight = (day: string): number => Date.parse(`${day}T00:00Z`);

/** Whether a text is a day of the calendar, written as 2026-03-01; in this form days are in order as texts are. */
export function isDay(text: string): boolean {
  if (!CALENDAR.test(text)) return false;
  const at = midnight(text);
  // The 30th of February is read as the 2nd of March.
  return Number.isFinite(at) && new Date(at).toISOString().startsWith(text);
}

/** Time from one day to another; nothing where either is none. */
export function fromDayToDay(from: string, to: string | undefined): Time | undefined {
  if (to === undefined || !isDay(from) || !isDay(to)) return undefined;
  return ((midnight(to) - midnight(from)) / 1000) as Time;
}

/** A time that counts from a later start, counted from the first. */
export function fromFirstStart(start: Time, time: Time): Time {
  return (start + time) as Time;
}

/** The day of the calendar on which a time from the beginning of another day ends, as 2026-03-01. */
export function dayAfter(day: string, time: Time): string {
  return new Date(midnight(day) + time * 1000).toISOString().slice(0, 10);
}
