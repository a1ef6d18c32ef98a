import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  circumferentialExtentLimit,
  defectDepthAtEndOfLife,
  defectLengthAtEndOfLife,
  governingWallLossRate,
  inspectionInterval,
  remainingLife,
  safePressure,
  throughWallAtEndOfLife,
  wallAtEndOfLife,
  wallLossRate,
} from '../../../src/pipe/index.js';
import { corrosionRate, gauge, length, time } from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';

const runs = { seed: 20261125, numRuns: 300 } as const;

describe('the rate of wall loss', () => {
  it('carried on for the time between the measurements leads from one to the other', () => {
    fc.assert(
      fc.property(real(0.005, 0.03), real(0.01, 0.99), real(1, 40), (earlier, share, years) => {
        const laterWall = length.m(earlier * share);
        const rate = wallLossRate({ earlierWall: length.m(earlier), laterWall, elapsed: time.year(years) });
        expect(wallAtEndOfLife({ presentWall: length.m(earlier), rate, life: time.year(years) })).toBeCloseTo(
          laterWall,
          15,
        );
      }),
      runs,
    );
  });

  it('is the larger of the long-term and the short-term one', () => {
    const wall = {
      originalWall: length.mm(10),
      presentWall: length.mm(7),
      service: time.year(20),
      sincePrevious: time.year(2),
    };
    const fast = governingWallLossRate({ ...wall, previousWall: length.mm(8) });
    expect(
      [fast.rate, fast.longTerm, fast.shortTerm].map(corrosionRate.inMmPerYear).map((rate) => Number(rate.toFixed(12))),
    ).toEqual([0.5, 0.15, 0.5]);
    const slow = governingWallLossRate({ ...wall, previousWall: length.mm(7.1) });
    expect(slow.rate).toBe(slow.longTerm);
    // Two readings that scatter: the previous one below the present.
    const scatter = governingWallLossRate({ ...wall, previousWall: length.mm(6.9) });
    expect(scatter.shortTerm).toBeLessThan(0);
    expect(scatter.rate).toBe(scatter.longTerm);
  });

  it('is refused for a wall that has grown', () => {
    expect(() => wallLossRate({ earlierWall: length.mm(7), laterWall: length.mm(7.1), elapsed: time.year(1) })).toThrow(
      /at most the earlier/u,
    );
  });
});

describe('the end of life', () => {
  it('leaves 0 of a wall that is lost before it', () => {
    expect(
      wallAtEndOfLife({ presentWall: length.mm(3), rate: corrosionRate.mmPerYear(0.4), life: time.year(20) }),
    ).toBe(0);
    expect(wallAtEndOfLife({ presentWall: length.mm(3), rate: corrosionRate.mmPerYear(0), life: time.year(20) })).toBe(
      length.mm(3),
    );
  });

  it('adds the loss of the wall to the depth of the defect', () => {
    fc.assert(
      fc.property(real(0.005, 0.03), real(0.1, 0.8), real(0, 0.05), real(0, 10), (t, x, r, n) => {
        const [rate, life] = [corrosionRate.mmPerYear(r), time.year(n)];
        const left = wallAtEndOfLife({ presentWall: length.m(t * (1 - x)), rate, life });
        const depth = defectDepthAtEndOfLife({ defectDepth: length.m(t * x), rate, life });
        expect(left + depth).toBeCloseTo(left > 0 ? t : depth, 15);
      }),
      runs,
    );
  });

  it('lengthens a defect at both ends', () => {
    const laterLength = defectLengthAtEndOfLife({
      defectLength: length.mm(50),
      rate: corrosionRate.mmPerYear(0.5),
      life: time.year(10),
    });
    expect(laterLength).toBeCloseTo(0.06, 15);
  });

  it('comes when the required wall is reached, and inspection at half of that or sooner', () => {
    const rate = corrosionRate.mmPerYear(0.25);
    const life = remainingLife({ presentWall: length.mm(8), requiredWall: length.mm(5), rate });
    expect(time.inYear(life)).toBeCloseTo(12, 10);
    expect(wallAtEndOfLife({ presentWall: length.mm(8), rate, life })).toBeCloseTo(0.005, 15);
    expect(time.inYear(inspectionInterval({ remainingLife: life, classLimit: time.year(10) }))).toBeCloseTo(6, 10);
    expect(inspectionInterval({ remainingLife: life, classLimit: time.year(5) })).toBe(time.year(5));
    expect(() => remainingLife({ presentWall: length.mm(4), requiredWall: length.mm(5), rate })).toThrow(
      /no life is left/u,
    );
  });

  it('counts less than 1 mm as through-wall, or less than what the case says', () => {
    expect(throughWallAtEndOfLife({ wallAtEndOfLife: length.mm(0.999) })).toBe(true);
    expect(throughWallAtEndOfLife({ wallAtEndOfLife: length.mm(1) })).toBe(false);
    expect(throughWallAtEndOfLife({ wallAtEndOfLife: length.mm(1.4), leastWall: length.mm(1.5) })).toBe(true);
  });
});

describe('the safe pressure', () => {
  it('is the failure pressure over the factor, and never above that of the sound pipe', () => {
    const at = (P: number, SF: number): number =>
      safePressure({ failurePressure: gauge.MPa(P), safetyFactor: SF, maximumPressure: gauge.MPa(7) });
    expect(at(10, 2)).toBe(5e6);
    expect(at(20, 2)).toBe(7e6);
    expect(() => at(10, 0.99)).toThrow(/1 or above/u);
  });
});

describe('the widest loss that the hoop check covers', () => {
  it('is twice its length where both joints are full, and less for a weaker longitudinal one', () => {
    expect(circumferentialExtentLimit({ defectLength: length.mm(100) })).toBeCloseTo(0.2, 15);
    expect(circumferentialExtentLimit({ defectLength: length.mm(100), longitudinalJointFactor: 0.85 })).toBeCloseTo(
      0.17,
      15,
    );
  });
});
