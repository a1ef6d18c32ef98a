import { describe, expect, it } from 'vitest';
import { corrosionRate, density, gauge, length, stress } from '../../../src/quantity/index.js';
import { designRepair, type NeighbouringLoss, type RepairCase } from '../../../src/repair/index.js';
import { partWall } from '../example-case.js';

// 323.9 x 8.38 mm: losses act as one up to 104.2 mm along the pipe and 163.7 mm round it.
const loss: NeighbouringLoss = {
  cause: 'external corrosion',
  gapAlong: length.m(2),
  gapRound: length.mm(0),
  axialLength: length.mm(60),
  circumferentialWidth: length.mm(30),
  remainingWall: length.mm(2.4),
};

const still = { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0) };

function withApart(neighbours: readonly NeighbouringLoss[], changes: Partial<RepairCase> = {}): RepairCase {
  return {
    ...partWall,
    line: { state: 'under pressure', pressure: gauge.bar(1), writtenProcedure: 'none' },
    ...changes,
    defect: { ...partWall.defect, growth: still, ...changes.defect, neighbours },
  };
}

/** Losses of 60 mm with a gap between each, the first one 2 m from the defect. */
function row(count: number, gap: number): NeighbouringLoss[] {
  return Array.from({ length: count }, (_, index) => ({ ...loss, gapAlong: length.mm(2000 + index * (60 + gap)) }));
}

const judged = (repairCase: RepairCase) => {
  const { verdict, reasons, line } = designRepair(repairCase);
  return { verdict, reasons, line };
};

const bearing = (repairCase: RepairCase) => designRepair(repairCase).line?.highestPressure;

describe('neighbours apart from the defect', () => {
  it('that lie in a row act as one, of their envelope', () => {
    const asOne = judged(withApart([{ ...loss, axialLength: length.mm(10 * 60 + 9 * 5) }]));
    expect(asOne.verdict).toBe('not repairable');
    const inRow = judged(withApart(row(10, 5)));
    expect(inRow.verdict).toBe('not repairable');
    expect(inRow.line?.highestPressure).toBeCloseTo(asOne.line?.highestPressure ?? 0, 3);
    expect(judged(withApart([loss])).verdict).toBe('designed');
  });

  it('act as one on the last millimetre of the spacing, and a millimetre beyond each stands alone', () => {
    const single = bearing(withApart([loss]));
    expect(bearing(withApart(row(3, 105)))).toBe(single);
    expect(bearing(withApart(row(3, 104)))).toBeLessThan(single ?? 0);
  });

  it('are chained in whatever order they are stated', () => {
    const [first, second, third] = row(3, 104) as [NeighbouringLoss, NeighbouringLoss, NeighbouringLoss];
    const orders = [
      [first, second, third],
      [third, first, second],
      [first, third, second],
    ].map((order) => bearing(withApart(order)));
    expect(new Set(orders).size).toBe(1);
  });

  it('far from each other round the pipe do not act as one', () => {
    const [first, second] = row(2, 5) as [NeighbouringLoss, NeighbouringLoss];
    const turned = (gapRound: number) => withApart([first, { ...second, gapRound: length.mm(gapRound) }]);
    // Beyond the 30 mm that the first may reach to that side.
    expect(bearing(turned(30 + 164))).toBe(bearing(withApart([loss])));
    expect(bearing(turned(30 + 163))).toBeLessThan(bearing(withApart([loss])) ?? 0);
  });

  it('grow towards each other within the life of the repair', () => {
    const growing = { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0.2) };
    // 4 mm at each of two edges by the end of twenty years.
    const pair = (gap: number, growth: typeof still) =>
      bearing(withApart(row(2, gap), { defect: { ...partWall.defect, growth } }));
    expect(pair(112, growing)).toBeLessThan(pair(112, still) ?? 0);
    expect(pair(113, growing)).toBe(pair(113, still));
  });

  it('on either side of a defect that is short may act as one across it', () => {
    const short = { ...partWall.defect, axialLength: length.mm(20) };
    const beside = (gap: number): NeighbouringLoss => ({
      ...loss,
      gapAlong: length.mm(gap),
      gapRound: length.mm(200),
      remainingWall: length.mm(5),
    });
    const along = (gap: number) =>
      designRepair(withApart([beside(gap), beside(gap)], { defect: short })).warnings.flatMap(
        ({ text, amounts = [] }) =>
          text.includes('act as one with each other') ? amounts.map(({ value }) => value) : [],
      )[0];
    // 20 mm of defect and 40 mm to either side are within 104.2 mm; 43 mm to either side are not, and the two overlap.
    expect(along(40)).toBeCloseTo(length.mm(60 + 40 + 20 + 40 + 60), 9);
    expect(along(43)).toBeUndefined();
  });

  it('measured the long way round the pipe are near it the other way', () => {
    const near = { ...loss, gapAlong: length.mm(0), remainingWall: length.mm(5) };
    const found = (gapRound: number) =>
      designRepair(withApart([{ ...near, gapRound: length.mm(gapRound) }])).found?.widthAtEndOfLife;
    // 1017.6 mm round: 80 of the defect, 30 of the neighbour, 857.6 the long way and 50 the short one.
    expect(found(857.6)).toBeCloseTo(found(50) ?? 0, 4);
    expect(found(857.6)).toBeGreaterThan(length.mm(150));
  });
});

describe('a neighbour that no laminate keeps round', () => {
  const vacuum = { ...partWall.loads, externalPressure: gauge.bar(1) };
  const buried = {
    ...partWall.loads,
    soil: { cover: length.m(1), density: density.kgPerM3(2000), waterAbove: 'none', traffic: 'none' } as const,
  };
  const wall = (millimetres: number, loads: RepairCase['loads'], designPressure = gauge.bar(2)) =>
    judged(
      withApart([{ ...loss, remainingWall: length.mm(millimetres) }], {
        loads,
        service: { ...partWall.service, designPressure },
        pipe: { ...partWall.pipe, cathodicProtection: { underWrap: 'potentials read each year, report CP-7' } },
      }),
    );

  it('is refused where its own wall does not bear the vacuum three times, and passes where it does', () => {
    // By hand: 2 x 207 GPa / 0.91 x (t/D)^3 with 2 x 241 MPa x t/D by reciprocals, a third of it: 91.5 kPa for 2.8 mm and 101.2 for 2.9.
    const thin = wall(2.8, vacuum);
    expect(thin.verdict).toBe('not repairable');
    const [reason] = thin.reasons;
    expect([reason?.found?.value, reason?.limit?.value]).toEqual([expect.closeTo(91.512e3, -1), gauge.bar(1)]);
    expect(wall(2.9, vacuum).verdict).toBe('designed');
    expect(wall(2.8, partWall.loads).verdict).toBe('designed');
  });

  it('is not covered where soil would bend it beyond yield with nothing at its sides', () => {
    const bent = wall(3, buried, gauge.bar(2));
    expect(bent.verdict).toBe('not covered');
    const [reason] = bent.reasons;
    expect(reason?.limit?.value).toBe(stress.MPa(241));
    expect(wall(5, buried, gauge.bar(2)).verdict).toBe('designed');
  });
});
