import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { b31gOriginal, modifiedB31g } from '../../src/pipe/index.js';
import { corrosionRate, gauge, length, stress, time } from '../../src/quantity/index.js';
import { type SurveyRow, screenRow, screenSurvey, WorstRows } from '../../src/survey/index.js';

const ROW: SurveyRow = {
  outsideDiameter: length.mm(323.9),
  wallThickness: length.mm(9.53),
  yieldStrength: stress.MPa(359),
  designPressure: gauge.bar(100),
  defectDepth: length.mm(3.1),
  defectLength: length.mm(60),
  depthRate: corrosionRate.mmPerYear(0.2),
  lengthRate: corrosionRate.mmPerYear(0),
};
const OPTIONS = { safetyFactor: 1.39, life: time.year(10) } as const;

const rows = fc.record({
  defectDepth: fc.oneof(fc.constant(0), fc.double({ min: 0.05, max: 9.5, noNaN: true })).map((mm) => length.mm(mm)),
  defectLength: fc.double({ min: 1, max: 1000, noNaN: true }).map((mm) => length.mm(mm)),
  depthRate: fc.double({ min: 0, max: 1, noNaN: true }).map((mm) => corrosionRate.mmPerYear(mm)),
  lengthRate: fc.double({ min: 0, max: 5, noNaN: true }).map((mm) => corrosionRate.mmPerYear(mm)),
});

describe('a row of a survey', () => {
  it('has the lower failure pressure of both methods over the factor, today and at the end of life', () => {
    const found = screenRow(ROW, OPTIONS);
    const flowStress = stress.MPa(359 * 1.1);
    const lowest = (depth: number) => {
      const loss = { ...ROW, flowStress, defectDepth: length.mm(depth) };
      return Math.min(b31gOriginal(loss), modifiedB31g(loss));
    };
    expect(found.status).toBe('sound');
    expect(found.safePressure).toBeCloseTo(lowest(3.1) / 1.39, 3);
    expect(found.safePressureAtEndOfLife).toBeCloseTo(lowest(5.1) / 1.39, 3);
    expect(found.timeLeft).toBe(OPTIONS.life);
  });

  it('holds for the time left and no longer, and never says more than the life', () => {
    fc.assert(
      fc.property(rows, (drawn) => {
        const row = { ...ROW, ...drawn };
        const { status, timeLeft = 0, safePressure = 0 } = screenRow(row, OPTIONS);
        expect(timeLeft).toBeLessThanOrEqual(OPTIONS.life);
        expect(status === 'sound').toBe(timeLeft === OPTIONS.life);
        if (timeLeft > 0) {
          const until = screenRow(row, { ...OPTIONS, life: timeLeft as never });
          expect(until.status).toBe('sound');
        } else expect(safePressure < row.designPressure).toBe(true);
        if (timeLeft > 0 && timeLeft < OPTIONS.life)
          expect(screenRow(row, { ...OPTIONS, life: (timeLeft + 2) as never }).status).not.toBe('sound');
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('is no better with a deeper loss, a faster growth or a longer life', () => {
    fc.assert(
      fc.property(rows, (drawn) => {
        const row = { ...ROW, ...drawn };
        const worse = {
          ...row,
          depthRate: (row.depthRate * 1.1) as never,
          defectDepth: (row.defectDepth * 1.05) as never,
        };
        expect(screenRow(worse, OPTIONS).timeLeft ?? 0).toBeLessThanOrEqual(screenRow(row, OPTIONS).timeLeft ?? 0);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('deeper than 0.8 of the wall has no pressure, just where the methods refuse it, and a leak is too deep', () => {
    const at = (share: number) =>
      screenRow({ ...ROW, defectDepth: length.mm(9.53 * share) }, { ...OPTIONS, life: time.s(1) });
    expect(at(0.7999).status).not.toBe('too deep');
    const thin = {
      ...ROW,
      outsideDiameter: length.mm(60.3),
      wallThickness: length.mm(3.91),
      designPressure: gauge.bar(5),
    };
    const left = (mm: number) =>
      screenRow({ ...thin, defectDepth: length.mm(3.91 - mm) }, { ...OPTIONS, life: time.s(1) });
    expect([left(1.31).status, left(1.29).status]).toEqual(['sound', 'too deep']);
    for (const share of [0.8001, 1, 1.2]) expect(at(share)).toMatchObject({ status: 'too deep', timeLeft: 0 });
    expect(at(0.8001)).not.toHaveProperty('safePressure');
    const loss = { ...ROW, flowStress: stress.MPa(400), defectDepth: length.mm(9.53 * 0.8001) };
    expect(() => modifiedB31g(loss)).toThrow();
    expect(() => b31gOriginal(loss)).toThrow();
  });

  it('that cannot be is refused with its reason', () => {
    expect(screenRow({ ...ROW, defectLength: length.mm(0) }, OPTIONS)).toMatchObject({
      status: 'refused',
      because: expect.stringContaining('defectLength'),
    });
    expect(screenRow({ ...ROW, depthRate: Number.NaN as never }, OPTIONS).status).toBe('refused');
    expect(screenRow({ ...ROW, designPressure: gauge.bar(0) }, OPTIONS).status).toBe('refused');
    for (const rate of ['depthRate', 'lengthRate'])
      expect(screenRow({ ...ROW, [rate]: -1e-12 }, OPTIONS)).toMatchObject({
        status: 'refused',
        because: expect.stringContaining('0 or above'),
      });
    expect(screenRow({ ...ROW, designPressure: gauge.bar(212) }, { ...OPTIONS, safetyFactor: 1 })).toMatchObject({
      status: 'refused',
      because: expect.stringContaining('above its yield strength'),
    });
    expect(() => screenRow(ROW, { ...OPTIONS, safetyFactor: 0.9 })).toThrow(/safetyFactor is 0.9/);
  });
});

describe('a row with a value outside its usual span', () => {
  const slips: readonly (readonly [keyof SurveyRow, number])[] = [
    ['outsideDiameter', 161.95e-3],
    ['outsideDiameter', 12.75e-3],
    ['wallThickness', 95.3e-3],
    ['yieldStrength', 3590e6],
    ['defectDepth', 0.004e-3],
    ['defectLength', 0.06e-3],
  ];

  it.each(slips)('of %s (%s in SI) is never sound, and says which value it is', (name, value) => {
    const row = { ...ROW, [name]: value } as SurveyRow;
    const found = screenRow(row, OPTIONS);
    expect(found.status).not.toBe('sound');
    expect(found.unusual?.map(({ amounts = [] }) => amounts[0])).toMatchObject([{ name, value }]);
    expect(screenRow(row, { ...OPTIONS, strict: true }).status).toBe('refused');
  });

  it('keeps a worse status, and is told of in columns', () => {
    const soft = { ...ROW, yieldStrength: stress.MPa(52), designPressure: gauge.bar(28) };
    expect(screenRow(soft, OPTIONS).status).toBe('repair');
    const yieldStrength = Float64Array.from([359e6, 52e6]);
    const found = screenSurvey({ ...ROW, yieldStrength }, OPTIONS);
    expect([...found.unusual.keys()]).toEqual([1]);
    expect(found.unusual.get(1)?.[0]?.text).toContain('perhaps MPa for ksi');
  });

  it('is none where there is no loss, or where each value is that of a real pipe', () => {
    for (const row of [ROW, { ...ROW, defectDepth: length.mm(0) }, { ...ROW, outsideDiameter: length.mm(1620) }])
      expect(screenRow(row, OPTIONS)).not.toHaveProperty('unusual');
  });

  it('ranks before every row that has a pressure, since nobody knows its own', () => {
    const yieldStrength = Float64Array.from([359e6, 3590e6, 200e6]);
    const found = screenSurvey({ ...ROW, yieldStrength }, OPTIONS);
    expect(found.status).toEqual(['sound', 'to check', 'repair']);
    expect([...found.ranking]).toEqual([1, 2, 0]);
  });
});

describe('the options of a screening', () => {
  it('say what makes the answer larger than the choices made unasked', () => {
    const said = (more: object) => screenSurvey({ ...ROW, defectDepth: new Float64Array(1) }, { ...OPTIONS, ...more });
    expect(said({}).lessConservative).toEqual([]);
    expect(said({ safetyFactor: 1.25, method: 'lowest', flowStress: '1.1 SMYS' }).lessConservative).toEqual([]);
    expect(said({ safetyFactor: 1.24 }).lessConservative).toEqual([expect.stringMatching(/below the 1\.25/u)]);
    const chosen = { method: 'modified B31G', flowStress: 'SMYS + 69 MPa' };
    expect(said(chosen).lessConservative).toHaveLength(2);
  });
});

describe('a survey in columns', () => {
  const depths = [3.1, 5.9, 8.1, Number.NaN, 4.5];
  const columns = {
    ...ROW,
    defectDepth: Float64Array.from(depths, (depth) => length.mm(depth)),
    defectLength: Float64Array.from([60, 200, 60, 60, 300], (mm) => length.mm(mm)),
  };
  const found = screenSurvey(columns, OPTIONS);

  it('is its rows one by one, bit for bit, and none of them ends the run', () => {
    depths.forEach((depth, index) => {
      const row = { ...ROW, defectDepth: length.mm(depth), defectLength: columns.defectLength[index] as never };
      const alone = screenRow(row, OPTIONS);
      expect(found.status[index]).toBe(alone.status);
      expect(found.safePressure[index]).toBe(alone.safePressure ?? Number.NaN);
      expect(found.timeLeft[index]).toBe(alone.timeLeft ?? Number.NaN);
      expect(found.because.get(index)).toBe(alone.because);
    });
    expect([...found.status]).toEqual(['sound', 'too deep', 'too deep', 'refused', 'repair']);
  });

  it('ranks what nobody knows and what is too deep first, then by pressure over design pressure', () => {
    expect([...found.ranking].slice(-2)).toEqual([4, 0]);
    expect(new Set(found.ranking).size).toBe(depths.length);
  });

  it('refuses columns that do not fit together', () => {
    expect(() => screenSurvey({ ...columns, defectLength: new Float64Array(3) }, OPTIONS)).toThrow(
      /defectLength is 3; must have as many rows/,
    );
    expect(() => screenSurvey(ROW, OPTIONS)).toThrow(/at least one column/);
    expect(() => screenSurvey({ ...columns, depth: 1 } as never, OPTIONS)).toThrow(/depth .*is no column/);
    expect(() => screenSurvey({ ...columns, defectLength: [1, 2, 3, 4, 5] } as never, OPTIONS)).toThrow(/Float64Array/);
  });
});

describe('the worst rows', () => {
  it('are those that a full sort puts first, the earlier of equal ones', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 3 })), { maxLength: 60 }),
        fc.integer({ min: 1, max: 12 }),
        (ranks, most) => {
          const worst = new WorstRows<number>(most);
          for (const [index, rank] of ranks.entries()) worst.add(rank, index);
          const sorted = ranks
            .map((rank, index) => ({ rank, index }))
            .sort((a, b) => a.rank[0] - b.rank[0] || a.rank[1] - b.rank[1] || a.index - b.index);
          expect(worst.inOrder()).toEqual(sorted.slice(0, most).map(({ index }) => index));
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
