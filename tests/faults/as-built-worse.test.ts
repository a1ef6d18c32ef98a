import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AsBuiltRecord, type AsBuiltVerdict, compareAsBuilt, type Designed } from '../../src/repair/index.js';
import { run } from '../properties/spans.js';
import { madeOf } from './answers.js';
import { leak, loss, withPaths } from './cases.js';
import { goodRecord } from './records.js';

/** A worse record never does better: no point, no verdict, no rating. */

const rank: Readonly<Record<AsBuiltVerdict, number>> = { meets: 0, 'not shown': 1, 'does not meet': 2 };

/** What may be seen: from the best to the worst, each worse than the one before it. */
interface Ladder {
  readonly path: string;
  readonly rungs: (design: Designed, good: AsBuiltRecord) => readonly unknown[];
}

const shares = (least: number) => [1.1, 1, 0.97, 0.8, 0.5].map((share) => share * least);
/** A seal that nobody designed is best not made. */
function sealed({ seal }: Designed): (boolean | undefined)[] {
  return seal === 'none' ? [undefined, true, false] : [true, undefined, false];
}

const ladders: readonly Ladder[] = [
  { path: 'survey.leastWall', rungs: ({ case: { defect } }) => shares(defect.remainingWall) },
  {
    path: 'survey.axialLength',
    rungs: ({ case: { defect } }) => [1, 1.001, 1.2, 5].map((k) => k * defect.axialLength),
  },
  {
    path: 'survey.circumferentialWidth',
    rungs: ({ case: { defect } }) => [1, 1.001, 1.2, 5].map((k) => k * defect.circumferentialWidth),
  },
  {
    path: 'survey.hole',
    rungs: ({
      case: {
        defect: { holeDiameter },
      },
    }) => (holeDiameter === undefined ? [undefined, 0, 0.001, 0.01] : [0.9, 1, 1.1, 2].map((k) => k * holeDiameter)),
  },
  { path: 'seal.heldDry', rungs: sealed },
  { path: 'seal.puttyWasFirm', rungs: sealed },
  { path: 'seal.bandsWereRemoved', rungs: sealed },
  { path: 'fillerWasFirm', rungs: () => [true, undefined, false] },
  { path: 'steel.grade', rungs: () => ['Sa 3', 'Sa 2 1/2', 'Sa 2', 'St 2'] },
  { path: 'steel.isFreeOfOil', rungs: () => [true, false] },
  { path: 'steel.hasRustBloom', rungs: () => [false, true] },
  { path: 'steel.sincePreparation', rungs: () => [1, 3, 5, 9].map((hours) => hours * 3600) },
  { path: 'climate.0.relativeHumidity', rungs: () => [0.5, 0.6, 0.86, 0.95] },
  { path: 'climate.0.steelTemperature', rungs: () => [298.15, 316.15, 330, 360] },
  // From what is planned: a layer more asks for more overlap, and does not meet on this one.
  { path: 'layers', rungs: ({ laminate: { plies } }) => [plies, Math.max(1, plies - 1), 1] },
  { path: 'thickness', rungs: ({ laminate }) => shares(laminate.laidThickness) },
  { path: 'length', rungs: ({ extent }) => shares(extent.totalLength) },
  { path: 'leastOverlap', rungs: ({ extent }) => shares(extent.overlap.value) },
  { path: 'hardness.readings', rungs: () => [84, 80, 71, 60].map((each) => [each, each, each, each, each]) },
  { path: 'inspection.findings', rungs: () => [[], [{ feature: 'dry fibre' }]] },
  { path: 'inspection.bondMethods', rungs: () => [['tap test', 'ultrasonic'], ['tap test'], []] },
  {
    path: 'pressureTest.highestPressure',
    rungs: ({ acceptance: { pressureTest } }) => [1, 1.04, 1.06, 3].map((k) => k * pressureTest.pressure),
  },
  { path: 'pressureTest.hold', rungs: () => [3600, 1800, 0] },
  { path: 'pressureTest.leak', rungs: () => ['none', 'elsewhere', 'at the repair'] },
  { path: 'pressureTest.fall', rungs: () => ['none', 'undecided', 'leak'] },
  { path: 'cure.0.duration', rungs: () => [60, 30, 10, 1].map((hours) => hours * 3600) },
  { path: 'batches.0.usedWithin', rungs: () => [5, 8, 60, 300].map((minutes) => minutes * 60) },
  { path: 'signed.2.by', rungs: () => ['A. Inspector', ''] },
  { path: 'signed', rungs: (_, { signed }) => [signed, undefined] },
];

const designs: readonly (readonly [string, Designed])[] = [
  ['wall loss', madeOf(loss)],
  ['leak', madeOf(leak)],
];

/** For each ladder the rung of the better record, how much worse the other is, and whether it is touched at all. */
const picks = fc.array(fc.tuple(fc.nat(3), fc.nat(3), fc.nat(3)), {
  minLength: ladders.length,
  maxLength: ladders.length,
});

describe('a worse record', () => {
  it.each(designs)('never does better: %s', (_, design) => {
    const good = goodRecord(design);
    let [moved, rated] = [0, 0];
    run(
      fc.property(picks, (pick) => {
        const [better, worse]: [Record<string, unknown>, Record<string, unknown>] = [{}, {}];
        for (const [index, { path, rungs }] of ladders.entries()) {
          const [start, more, touched] = pick[index] ?? [0, 0, 1];
          const all = rungs(design, good);
          const at = (rung: number) => all[Math.min(rung, all.length - 1)];
          // Most ladders stay on their best rungs, or no rating would ever be reached.
          const from = touched === 0 ? start : Math.min(1, path === 'thickness' ? 3 : 0);
          better[path] = at(from);
          worse[path] = at(from + (touched < 2 ? more : 0));
        }
        const [one, other] = [better, worse].map((change) => compareAsBuilt(design, withPaths(good, change)));
        if (one === undefined || other === undefined) throw new Error('not compared');
        expect(rank[other.verdict]).toBeGreaterThanOrEqual(rank[one.verdict]);
        for (const { point, verdict } of one.points) {
          // A thinner laminate may be tapped alone; its thickness then speaks against it.
          if (point === 'bond' && better['thickness'] !== worse['thickness']) continue;
          const now = other.points.find((each) => each.point === point);
          expect(now, point).toBeDefined();
          if (now !== undefined) expect(rank[now.verdict], point).toBeGreaterThanOrEqual(rank[verdict]);
          if (now !== undefined && rank[now.verdict] > rank[verdict]) moved += 1;
        }
        const [before, after] = [one, other].map(({ goodFor, verdict }) =>
          verdict === 'meets' ? Number.POSITIVE_INFINITY : (goodFor?.pressure ?? 0),
        );
        expect(after).toBeLessThanOrEqual((before ?? 0) * (1 + 1e-12));
        if (before !== undefined && before > 0) rated += 1;
      }),
    );
    expect(moved).toBeGreaterThan(0);
    expect(rated).toBeGreaterThan(0);
  });

  it.each(designs)('is found out by each of its points alone: %s', (_, design) => {
    const good = goodRecord(design);
    expect(compareAsBuilt(design, good).verdict).toBe('meets');
    for (const { path, rungs } of ladders) {
      const all = rungs(design, good);
      const verdicts = all.map((value) => rank[compareAsBuilt(design, withPaths(good, { [path]: value })).verdict]);
      expect(verdicts, path).toEqual([...verdicts].sort((a, b) => a - b));
      expect(verdicts.at(-1), path).toBeGreaterThan(0);
    }
  });
});
