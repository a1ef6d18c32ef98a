import { type Designed, planWork } from '../../../src/repair/index.js';
import { planText } from '../../../src/report/index.js';

/** Hours and minutes of a text such as `3 h 27 min`, in seconds; to the minute. */
const SPAN = '(?:\\d+ h(?: \\d+ min)?|\\d+ min|[\\d.]+ s)';
const CLOCK = '(?:day \\d+ )?\\d\\d:\\d\\d';

function secondsOf(span: string): number {
  const part = (unit: string): number => Number(new RegExp(`([\\d.]+) ${unit}\\b`, 'u').exec(span)?.[1] ?? 0);
  return 3600 * part('h') + 60 * part('min') + part('s');
}

/** An hour on the clock, or one that counts from the start, in seconds from the start. */
function hourOf(told: string, start: string | undefined): number {
  const [, day = '1', hours, minutes] = /^(?:day (\d+) )?(\d\d):(\d\d)$/u.exec(told) ?? [];
  if (hours === undefined || start === undefined) return secondsOf(told);
  const [startHours = '0', startMinutes = '0'] = start.split(':');
  const from = 3600 * Number(startHours) + 60 * Number(startMinutes);
  return 86_400 * (Number(day) - 1) + 3600 * Number(hours) + 60 * Number(minutes) - from;
}

const near = (told: number, time: number): boolean => Math.abs(told - time) < 61;

const HEAD = new RegExp(
  `^(?:HOLD POINT|work), (?:not before )?(?<from>${CLOCK}|${SPAN} after the start)(?:, (?<takes>${SPAN}), to (?<to>${CLOCK}|${SPAN} after the start))?`,
  'u',
);

/** The plan as text tells when each step begins, how long it takes and when it ends, and when the line is back. */
export function hoursInPlan(design: Designed): string | undefined {
  const plan = planWork(design);
  const text = planText(plan).replace(/\s+/gu, ' ');
  const heads = [...text.matchAll(/(?:HOLD POINT|work), (?:not before )?(?:day \d+ \d|\d).{0,120}/gu)].map(
    ([head]) => HEAD.exec(head)?.groups,
  );
  const told = heads.filter((head) => head !== undefined);
  if (told.length !== plan.steps.length)
    return `the plan tells the hours of ${told.length} steps of ${plan.steps.length}`;
  for (const [index, { id, startsAt, endsAt, duration }] of design.timeline.steps.entries()) {
    const { from = '', takes, to = '' } = told[index] ?? {};
    if (!near(hourOf(from, plan.start), startsAt)) return `the plan begins ${id} at another hour`;
    if (duration.known && duration.time > 0 && takes === undefined)
      return `the plan does not tell how long ${id} takes`;
    if (takes === undefined) continue;
    if (!near(hourOf(to, plan.start), endsAt)) return `the plan ends ${id} at another hour`;
    if (duration.known && !near(secondsOf(takes), duration.time)) return `the plan has another duration of ${id}`;
  }
  return returnIn(design, text) ?? holdIn(design, text);
}

function returnIn({ timeline: { earliestReturn } }: Designed, text: string): string | undefined {
  const time = earliestReturn.known ? earliestReturn.time : (earliestReturn.atLeast ?? 0);
  const [, told = ''] = new RegExp(`Back in service:.{0,60}?(${SPAN}) after the start`, 'u').exec(text) ?? [];
  if (earliestReturn.known === /Back in service: not known/u.test(text)) return 'the plan knows another return';
  return near(secondsOf(told), time) ? undefined : 'the plan has another return';
}

function holdIn({ site: { holdTime } }: Designed, text: string): string | undefined {
  const [, told] = new RegExp(`The forecast keeps all this for (${SPAN})`, 'u').exec(text) ?? [];
  const hold = holdTime.known ? holdTime.time : (holdTime.atLeast ?? 0);
  return told === undefined || near(secondsOf(told), hold)
    ? undefined
    : 'the plan has another time that the climate has to hold';
}
