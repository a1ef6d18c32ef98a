import { describe, expect, it } from 'vitest';
import { corrosionRate, length } from '../../../src/quantity/index.js';
import { designRepair, type NeighbouringLoss, type RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../example-case.js';

// 323.9 x 8.38 mm: losses act as one up to 104.2 mm along the pipe and 163.7 mm round it.
const beside: NeighbouringLoss = {
  cause: 'external corrosion',
  gapAlong: length.mm(60),
  gapRound: length.mm(0),
  axialLength: length.mm(40),
  circumferentialWidth: length.mm(30),
  remainingWall: length.mm(4.6),
};

function withNeighbours(...neighbours: NeighbouringLoss[]): RepairCase {
  return { ...partWall, defect: { ...partWall.defect, neighbours } };
}

/** The defect that a case is designed for, as one stated so. */
function asOne(changes: Partial<RepairCase['defect']>): RepairCase {
  return { ...partWall, defect: { ...partWall.defect, ...changes } };
}

const sizes = (repairCase: RepairCase) => {
  const { verdict, found, laminate, extent, wrap } = designRepair(repairCase);
  return { verdict, found, laminate, extent, wrap };
};

describe('a neighbour of the defect', () => {
  it('that acts with it is designed for as one defect, of the envelope and the least wall of both', () => {
    expect(sizes(withNeighbours(beside))).toEqual(
      sizes(
        asOne({
          axialLength: length.m(0.12 + 0.06 + 0.04),
          circumferentialWidth: length.m(0.08 + 0.03),
          remainingWall: length.mm(4.6),
        }),
      ),
    );
  });

  it('that acts with it is told of as that one defect, and not again as one apart', () => {
    const told = (repairCase: RepairCase) =>
      designRepair(repairCase).warnings.flatMap(({ text, amounts = [] }) =>
        text.includes('act as one') ? [[text.split(':')[0], ...amounts.map(({ value }) => value)]] : [],
      );
    const extents = [0.12 + 0.06 + 0.04, 0.08 + 0.03, 0.0046].map((each) => expect.closeTo(each, 12));
    expect(told(withNeighbours(beside))).toEqual([['Neighbouring losses act as one with the defect', ...extents]]);
    expect(told(partWall)).toEqual([]);
  });

  it('on the last millimetre of the spacing acts with it, and a millimetre beyond does not', () => {
    const joins = (gapAlong: number) =>
      (sizes(withNeighbours({ ...beside, gapAlong: length.mm(gapAlong) })).found?.lengthAtEndOfLife ?? 0) >
      length.mm(121);
    expect([joins(104), joins(105)]).toEqual([true, false]);
  });

  it('far round the pipe does not act with it, and lies under the laminate: that is said, and not designed for', () => {
    const design = designRepair(withNeighbours({ ...beside, gapRound: length.mm(164) }));
    expect([design.verdict, design.reasons.map(({ clause: _, ...reason }) => reason.found?.value)]).toEqual([
      'not covered',
      [beside.gapAlong],
    ]);
  });

  it('that grows towards it joins within the life of the repair', () => {
    const far = { ...beside, gapAlong: length.mm(110) };
    const growing = {
      ...partWall.defect,
      neighbours: [far],
      growth: { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0.2) },
    };
    // 4 mm at each of four edges by the end of twenty years: 110 - 8 is within 104.2.
    const found = designRepair({ ...partWall, defect: growing }).found;
    expect(found?.lengthAtEndOfLife).toBeCloseTo(length.mm(120 + 110 + 40 + 8), 9);
  });

  it('brings the next one within reach, on whichever side that lies', () => {
    const next = { ...beside, gapAlong: length.mm(190) };
    expect(sizes(withNeighbours(next)).found?.lengthAtEndOfLife).toBe(length.mm(120));
    const both = sizes(withNeighbours(next, beside)).found?.lengthAtEndOfLife ?? 0;
    expect(both).toBeCloseTo(length.mm(120 + (60 + 40) + (190 + 40)), 9);
  });

  it('of another cause leaves the cause unknown, so that growth has to be stated', () => {
    const { verdict, missing } = designRepair(withNeighbours({ ...beside, cause: 'internal corrosion' }));
    expect([verdict, missing.map(({ field }) => field).includes('defect.growth')]).toEqual(['needs input', true]);
  });

  it('takes its reach off the way to what stands nearest', () => {
    const near = (nearest: number) =>
      designRepair(asOne({ nearestAttachment: length.mm(nearest), neighbours: [beside] })).verdict;
    const alone = (nearest: number) => designRepair(asOne({ nearestAttachment: length.mm(nearest) })).verdict;
    expect([alone(430), near(430), near(500)]).toEqual(['designed', 'not covered', 'designed']);
  });

  it('stays in the case as it was stated, and every number of the decision has its step', () => {
    const stated = withNeighbours(beside);
    const design = designRepair(stated, { record: true });
    expect(design.case.defect).toEqual(stated.defect);
    const steps = (design.record ?? []).flatMap((entry) => (entry.sort === 'step' ? [entry.formula] : []));
    for (const id of ['neighbour-spacing-along', 'neighbour-spacing-round', 'gap-at-end-of-life', 'joined-extent'])
      expect(steps).toContain(`pipe/${id}`);
  });

  it('that is not stated, and not stated to be none, keeps the numbers and takes the verdict', () => {
    const { verdict, missing, laminate } = designRepair(asOne({ neighbours: undefined }));
    expect([verdict, missing.map(({ field }) => field)]).toEqual(['needs input', ['defect.neighbours']]);
    expect(laminate).toEqual(designRepair(partWall).laminate);
  });
});
