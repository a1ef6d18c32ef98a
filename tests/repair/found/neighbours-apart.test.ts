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

/** Length, width and wall of each colony that is told of. */
const actingAsOne = (repairCase: RepairCase) =>
  designRepair(repairCase).warnings.flatMap(({ text, amounts = [] }) =>
    text.includes('act as one with each other') ? [amounts.map(({ value }) => value)] : [],
  );

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
    const along = (gap: number) => actingAsOne(withApart([beside(gap), beside(gap)], { defect: short }))[0]?.[0];
    // 20 mm of defect and 40 mm to either side are within 104.2 mm; 43 mm to either side are not, and the two overlap.
    expect(along(40)).toBeCloseTo(length.mm(60 + 40 + 20 + 40 + 60), 9);
    expect(along(43)).toBeUndefined();
  });

  it('of which one lies beside the whole defect may reach past either end of it', () => {
    const abreast = { ...loss, gapRound: length.mm(200), remainingWall: length.mm(5) };
    const [said] = actingAsOne(
      withApart([
        { ...abreast, gapAlong: length.mm(0) },
        { ...abreast, gapAlong: length.mm(10) },
      ]),
    );
    // 10 + 60 mm beyond one end of the 120, 0 + 60 beyond the other.
    expect(said?.[0]).toBeCloseTo(length.mm(70 + 120 + 60), 12);
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

describe('a neighbour apart from those that join the defect', () => {
  it('has the gap that is left to it past them', () => {
    const joining = { ...loss, gapAlong: length.mm(60), remainingWall: length.mm(5) };
    const { warnings } = designRepair(withApart([joining, { ...joining, gapAlong: length.m(2) }]));
    const gaps = warnings.flatMap(({ text, amounts = [] }) =>
      text.includes('needs a case of its own') ? amounts.map(({ value }) => value) : [],
    );
    expect(gaps).toEqual([expect.closeTo(2 - (0.06 + 0.06), 12)]);
  });
});

it('a neighbour apart asks for the factor that it is judged by, and no neighbour asks for none', () => {
  const { assessment: _, ...unjudged } = partWall;
  const asked = (neighbours: RepairCase['defect']['neighbours']) =>
    designRepair({ ...unjudged, defect: { ...partWall.defect, growth: still, neighbours } }).missing.map(
      ({ field }) => field,
    );
  expect([asked([loss]), asked('none')]).toEqual([['assessment.designFactor'], []]);
});

describe('several neighbours apart from each other', () => {
  const [weak, strong] = [
    { ...loss, axialLength: length.mm(300), remainingWall: length.mm(2) },
    { ...loss, gapAlong: length.m(4) },
  ];
  const strongService = { ...partWall.service, designPressure: gauge.MPa(12) };
  const borne = (...neighbours: NeighbouringLoss[]) => bearing(withApart(neighbours, { service: strongService }));

  it('limit the line at work by the weakest of all, in whatever order they are stated', () => {
    const least = borne(weak) ?? Number.NaN;
    expect(least).toBeLessThan(borne(strong) ?? Number.NaN);
    expect([borne(weak, strong), borne(strong, weak)]).toEqual([least, least]);
  });

  it('are each told of, as the colony that they are in or alone, and each as one that needs a repair', () => {
    const apart = (...gaps: number[]) =>
      gaps.map((gap) => ({ ...loss, gapAlong: length.mm(gap), remainingWall: length.mm(5) }));
    // Two colonies of 5 mm and of 10 mm between.
    const colonies = withApart(apart(2000, 2065, 4000, 4070));
    expect(actingAsOne(colonies).map(([along]) => along)).toEqual([
      expect.closeTo(length.mm(60 + 5 + 60), 12),
      expect.closeTo(length.mm(60 + 10 + 60), 12),
    ]);
    const unrepaired = designRepair(colonies).warnings.flatMap(({ text, amounts = [] }) =>
      text.includes('needs a case of its own') ? amounts.map(({ value }) => value) : [],
    );
    expect(unrepaired).toEqual([2, 4]);
    const [one, other] = apart(2000, 4000) as [NeighbouringLoss, NeighbouringLoss];
    expect(actingAsOne(withApart([one, { ...other, axialLength: length.mm(50) }]))).toEqual([]);
  });

  // In eighths of a metre, so that their envelope has the extents of one of them to the last digit.
  const side = { ...loss, gapAlong: length.m(2), gapRound: length.m(0.1875), remainingWall: length.mm(5) };
  const broad = { ...side, axialLength: length.m(0.125), circumferentialWidth: length.m(0.125) };

  it.each<readonly [string, NeighbouringLoss, readonly [number, number, number]]>([
    ['width', { ...broad, gapRound: length.m(0.25) }, [0.125, 0.1875, 0.005]],
    ['wall', { ...broad, axialLength: length.m(0.0625), remainingWall: length.mm(4) }, [0.125, 0.125, 0.004]],
  ])('are told of where nothing but the %s differs from one that is stated', (_, next, extents) => {
    expect(actingAsOne(withApart([broad, next]))).toEqual([extents]);
  });

  it.each([
    ['mechanical damage', 'mechanical damage', false],
    ['mechanical damage', 'external corrosion', true],
    ['external corrosion', 'mechanical damage', true],
  ] as const)('act as one whose growth has to be stated unless all of it is damage: %s with %s', (one, other, asks) => {
    const [first, second] = row(2, 5) as [NeighbouringLoss, NeighbouringLoss];
    const pair = withApart(
      [
        { ...first, cause: one },
        { ...second, cause: other },
      ],
      {
        defect: { ...partWall.defect, growth: 'none' },
      },
    );
    expect(designRepair(pair).missing.some(({ field }) => field === 'defect.growth')).toBe(asks);
  });
});

describe('the spacing itself', () => {
  // 250 x 15.625 mm: the root of their product is a sixteenth of a metre to the last digit, the spacing twice and pi times it.
  const pipe = { ...partWall.pipe, outsideDiameter: length.mm(250), wallThickness: length.mm(15.625) };
  const beyond = 1 + 2 ** -50;

  it.each([
    ['along the pipe', { gapAlong: length.m(1 / 8) }, { gapAlong: length.m(beyond / 8) }],
    ['round it', { gapRound: length.m(Math.PI / 16) }, { gapRound: length.m((Math.PI / 16) * beyond) }],
  ])('is near enough to act as one %s, and the next number is not', (_, near, far) => {
    const isLonger = (gaps: Partial<NeighbouringLoss>) =>
      (designRepair(withApart([{ ...loss, gapAlong: length.mm(10), ...gaps }], { pipe })).found?.lengthAtEndOfLife ??
        0) > partWall.defect.axialLength;
    expect([isLonger(near), isLonger(far)]).toEqual([true, false]);
  });

  it('is near enough across the defect too', () => {
    // An eighth of a metre in all: 1/64 of defect and 7/128 to either side.
    const defect = { ...partWall.defect, axialLength: length.m(1 / 64) };
    const beside = { ...loss, gapAlong: length.m(7 / 128), gapRound: length.mm(200) };
    const [said] = actingAsOne(withApart([beside, beside], { pipe, defect }));
    expect(said?.[0]).toBeCloseTo(1 / 8 + 2 * 0.06, 12);
  });
});

describe('a neighbour that no laminate keeps round', () => {
  const vacuum = { ...partWall.loads, externalPressure: gauge.bar(1) };
  const buried = {
    ...partWall.loads,
    soil: { cover: length.m(1), density: density.kgPerM3(2000), waterAbove: 'none', traffic: 'none' } as const,
  };
  const protectedPipe = {
    ...partWall.pipe,
    cathodicProtection: { underWrap: 'potentials read each year, report CP-7' },
  };
  const thinned = (
    millimetres: number,
    loads: RepairCase['loads'],
    changes: Partial<RepairCase> = {},
    growth: typeof still = still,
  ) =>
    withApart([{ ...loss, remainingWall: length.mm(millimetres) }], {
      loads,
      service: { ...partWall.service, designPressure: gauge.bar(2) },
      pipe: protectedPipe,
      ...changes,
      defect: { ...partWall.defect, growth },
    });
  const wall = (...stated: Parameters<typeof thinned>) => judged(thinned(...stated));

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
    const bent = wall(3, buried);
    expect(bent.verdict).toBe('not covered');
    const [reason] = bent.reasons;
    expect(reason?.limit?.value).toBe(stress.MPa(241));
    expect(wall(5, buried).verdict).toBe('designed');
  });

  it('is held at its limits themselves: collapse, yield under soil, and the safe pressure of its wall', () => {
    const collapse = wall(2.8, vacuum).reasons[0]?.found?.value ?? Number.NaN;
    const under = (pascals: number) => wall(2.8, { ...partWall.loads, externalPressure: gauge.Pa(pascals) }).verdict;
    expect([under(collapse), under(collapse * (1 + 1e-9))]).toEqual(['designed', 'not repairable']);

    const bending = wall(3, buried).reasons[0]?.found?.value ?? Number.NaN;
    const material = (pascals: number) => ({ ...partWall.pipe.material, yieldStrength: stress.Pa(pascals) });
    const ofYield = (pascals: number) =>
      wall(3, buried, {
        pipe: { ...protectedPipe, material: { ...material(pascals), tensileStrength: stress.MPa(600) } },
      }).verdict;
    expect([ofYield(bending), ofYield(bending * (1 - 1e-9))]).toEqual(['designed', 'not covered']);

    const at = (designPressure: number) =>
      withApart([loss], { service: { ...partWall.service, designPressure: gauge.Pa(designPressure) } });
    const bears = (pascals: number) =>
      judged(at(pascals)).reasons.filter(({ text }) => text.includes('neighbouring loss'));
    const safe = bears(12e6)[0]?.found?.value ?? Number.NaN;
    expect([bears(safe), bears(safe * (1 + 1e-9)).length]).toEqual([[], 1]);
  });

  it.each([
    ['a vacuum', vacuum, gauge.bar(1)],
    ['soil', buried, density.kgPerM3(2000) * 9.80665],
  ])('holds nothing where its wall is used up, under %s', (_, loads, pressure) => {
    const gone = wall(1.5, loads, {}, { ...still, depth: corrosionRate.mmPerYear(0.1) });
    expect(gone.verdict).toBe('not repairable');
    expect(gone.reasons.map(({ found, limit }) => [found?.value, limit?.value])).toEqual([
      [0, expect.closeTo(pressure, 6)],
      [0, gauge.bar(2)],
    ]);
  });

  it('holds nothing where less wall is left than counts as one', () => {
    const { verdict, reasons } = wall(0.5, partWall.loads);
    expect(verdict).toBe('not repairable');
    expect(reasons.map(({ found, limit }) => [found?.value, limit?.value])).toEqual([
      [0, gauge.bar(2)],
      // Nor may anybody work beside it.
      [gauge.bar(1), 0],
    ]);
  });
});
