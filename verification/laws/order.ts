import { isDeepStrictEqual } from 'node:util';
import type { Time } from '../../src/quantity/index.js';
import { type Designed, planWork, type RepairDesign } from '../../src/repair/index.js';
import type { Demand } from './worse/worsening.js';

/** How a design compares with that of a case that was changed. */

const RANK = { designed: 0, 'needs input': 1, 'not repairable': 2, 'not covered': 2 } as const;

const TWO_HOURS = 7200 as Time;
const A_DAY = 86_400 as Time;

/** When the line is back, once so much is stated for each step that only people can time; never, where a wait is not known. */
function returnOf(design: Designed, preparation: Time): number {
  const hoursFor = (steps: Designed['timeline']['steps']): Record<string, Time> => {
    const open = steps.filter(({ duration }) => !duration.known && duration.atLeast === undefined);
    return Object.fromEntries(open.map(({ id }) => [id, id === 'surface' ? preparation : TWO_HOURS]));
  };
  const durations = hoursFor(design.timeline.steps);
  const planned = planWork(design, { durations });
  // A start at another hour may ask for a step that the design had no need of.
  const { earliestReturn } = planned.earliestReturn.known
    ? planned
    : planWork(design, { durations: { ...hoursFor(planned.steps), ...durations } });
  return earliestReturn.known ? earliestReturn.time : Number.POSITIVE_INFINITY;
}

/** A preparation that takes a day longer never brings the line back earlier. */
export function earlierByLongerPreparation(design: Designed): string | undefined {
  const [was, is] = [returnOf(design, TWO_HOURS), returnOf(design, A_DAY)];
  return is >= was ? undefined : `return: ${was} to ${is}`;
}

/** Limits of the line that the case itself states: they rise with what it states, and are no better for that. */
const STATED = new Set(['design pressure', 'pressure that the leak seal is tightened for']);

/** What may not shrink, each in its unit; what may not grow stands with its sign turned. */
function sizesOf(design: Designed): Readonly<Record<string, number>> {
  const { laminate, extent, line, seal, found } = design;
  return {
    thickness: laminate.thickness.value,
    plies: laminate.plies,
    'laid thickness': laminate.laidThickness,
    overlap: extent.overlap.value,
    length: extent.totalLength,
    return: returnOf(design, TWO_HOURS),
    'pressure that the pipe bears': -(found.strength?.safePressure ?? 0),
    'pressure under which people work':
      line.limitedBy !== undefined && STATED.has(line.limitedBy)
        ? Number.NEGATIVE_INFINITY
        : -(line.highestPressure ?? 0),
    'pressure of the seal': seal === 'none' ? 0 : -seal.highestPressure,
  };
}

// Two sums of the same lengths may differ in their last digits.
const shrinks = (value: number, now: number): boolean => !(now >= value - Math.abs(value) * 1e-9 || now === value);

/** In what a worse case comes out better: the verdict, or each size that shrinks. */
function better(before: RepairDesign, after: RepairDesign): string[] {
  if (RANK[after.verdict] < RANK[before.verdict]) return [`verdict: ${before.verdict} to ${after.verdict}`];
  if (before.verdict !== 'designed' || after.verdict !== 'designed') return [];
  const [was, is] = [sizesOf(before), sizesOf(after)];
  return Object.entries(was).flatMap(([name, value]) => {
    const now = is[name] ?? Number.NaN;
    return shrinks(value, now) ? [`${name}: ${value} to ${now}`] : [];
  });
}

function shorterWaits(before: RepairDesign, after: RepairDesign): string[] {
  if (before.verdict !== 'designed' || after.verdict !== 'designed') return [];
  return before.timeline.steps.flatMap(({ id, takes, duration }) => {
    const now = after.timeline.steps.find((step) => step.id === id)?.duration;
    if (!('cure' in takes) || !duration.known || now?.known !== true || !shrinks(duration.time, now.time)) return [];
    return [`${id}: ${duration.time} to ${now.time}`];
  });
}

/** Parts that differ where nothing but a name was changed. */
function apart(before: RepairDesign, after: RepairDesign): string[] {
  if (before.verdict !== after.verdict) return [`verdict: ${before.verdict} to ${after.verdict}`];
  const parts = ['laminate', 'extent', 'wrap', 'rolls', 'timeline'] as const;
  return parts.flatMap((part) => (isDeepStrictEqual(before[part], after[part]) ? [] : [`another ${part}`]));
}

function unsaid(before: RepairDesign, after: RepairDesign): string[] {
  const known = new Set(before.warnings.map(({ text }) => text));
  if (after.verdict !== 'designed' || after.warnings.some(({ text }) => !known.has(text))) return [];
  return ['no warning says so'];
}

const warnedFields = ({ warnings }: RepairDesign): (string | undefined)[] =>
  warnings.flatMap(({ field }) => (field === undefined ? [] : [field]));

/** What speaks against a changed case, by what is demanded of it. A text stands for the refusal of the door. */
export function against(demand: Demand, before: RepairDesign, after: RepairDesign | string): string[] {
  if (typeof after === 'string') return demand === 'no better' || demand === 'the same' ? [after] : [];
  switch (demand) {
    case 'no better':
      return better(before, after);
    case 'no shorter wait':
      return shorterWaits(before, after);
    case 'the same':
      return apart(before, after);
    case 'not designed':
      return after.verdict === 'designed' ? ['designed'] : [];
    case 'refused':
      return [`the door lets it in: ${after.verdict}`];
    case 'a warning of its field':
      return warnedFields(after).some((field) => !warnedFields(before).includes(field))
        ? []
        : ['no warning of the field'];
    default:
      return unsaid(before, after);
  }
}
