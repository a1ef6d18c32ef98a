import type { Time } from '../../src/quantity/index.js';
import { type Designed, planWork, type RepairDesign } from '../../src/repair/index.js';

/** How a design compares with that of a worse case. */

const RANK = { designed: 0, 'needs input': 1, 'not repairable': 2, 'not covered': 2 } as const;

const TWO_HOURS = 7200 as Time;

/** When the line is back, once two hours are stated for each step that only people can time; never, where a wait is not known. */
function returnOf(design: Designed): number {
  const open = design.timeline.steps.filter(({ duration }) => !duration.known && duration.atLeast === undefined);
  const durations = Object.fromEntries(open.map(({ id }) => [id, TWO_HOURS]));
  const { earliestReturn } = planWork(design, { durations });
  return earliestReturn.known ? earliestReturn.time : Number.POSITIVE_INFINITY;
}

/** What may not shrink, each in its unit. */
function sizesOf(design: Designed): Readonly<Record<string, number>> {
  const { laminate, extent } = design;
  return {
    thickness: laminate.thickness.value,
    plies: laminate.plies,
    'laid thickness': laminate.laidThickness,
    overlap: extent.overlap.value,
    length: extent.totalLength,
    return: returnOf(design),
  };
}

/** In what a worse case comes out better: the verdict, or each size that shrinks. */
export function better(before: RepairDesign, after: RepairDesign): string[] {
  if (RANK[after.verdict] < RANK[before.verdict]) return [`verdict: ${before.verdict} to ${after.verdict}`];
  if (before.verdict !== 'designed' || after.verdict !== 'designed') return [];
  const [was, is] = [sizesOf(before), sizesOf(after)];
  // Two sums of the same lengths may differ in their last digits.
  const shrinks = (value: number, now: number): boolean => !(now >= value * (1 - 1e-9) || now === value);
  return Object.entries(was).flatMap(([name, value]) => {
    const now = is[name] ?? Number.NaN;
    return shrinks(value, now) ? [`${name}: ${value} to ${now}`] : [];
  });
}
