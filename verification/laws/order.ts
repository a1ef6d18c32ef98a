import type { Designed, RepairDesign } from '../../src/repair/index.js';

/** How a design compares with that of a worse case. */

const RANK = { designed: 0, 'needs input': 1, 'not repairable': 2, 'not covered': 2 } as const;

/** What may not shrink, each in its unit. */
function sizesOf({ laminate, extent, timeline }: Designed): Readonly<Record<string, number>> {
  return {
    thickness: laminate.thickness.value,
    plies: laminate.plies,
    'laid thickness': laminate.laidThickness,
    overlap: extent.overlap.value,
    length: extent.totalLength,
    // A return that nobody knows is later than any that is known.
    return: timeline.earliestReturn.known ? timeline.earliestReturn.time : Number.POSITIVE_INFINITY,
  };
}

/** In what a worse case comes out better; nothing where it does not. */
export function better(before: RepairDesign, after: RepairDesign): string | undefined {
  if (RANK[after.verdict] < RANK[before.verdict]) return `verdict: ${before.verdict} to ${after.verdict}`;
  if (before.verdict !== 'designed' || after.verdict !== 'designed') return undefined;
  const [was, is] = [sizesOf(before), sizesOf(after)];
  for (const [name, value] of Object.entries(was)) {
    const now = is[name] ?? Number.NaN;
    // Two sums of the same lengths may differ in their last digits.
    if (!(now >= value * (1 - 1e-9) || now === value)) return `${name}: ${value} to ${now}`;
  }
  return undefined;
}
