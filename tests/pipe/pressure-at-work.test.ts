import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  damageSafetyFactor,
  metalLossDepth,
  recentPressureLimit,
  throughWallSlot,
  throughWallSlotPressure,
  wallLessReadingError,
} from '../../src/pipe/index.js';
import { gauge, length, stress } from '../../src/quantity/index.js';
import { span as real } from '../properties/spans.js';
import { runs } from './pipes.js';

/** What a damaged pipe may carry while people work beside it. */

describe('the least wall that a reading leaves', () => {
  it('and the error that was taken off make the reading again, down to no wall at all', () => {
    fc.assert(
      fc.property(real(0, 0.03), real(0, 0.03), (reading, error) => {
        const wall = wallLessReadingError({ wallReading: length.m(reading), readingError: length.m(error) });
        expect(wall).toBeGreaterThanOrEqual(0);
        if (error < reading) expect(wall + error).toBeCloseTo(reading, 15);
        else expect(wall).toBe(0);
      }),
      runs,
    );
  });
});

describe('the depth of a metal loss', () => {
  it('and the wall that is left make the nominal wall', () => {
    fc.assert(
      fc.property(real(0.002, 0.05), real(0, 1), (t, share) => {
        const depth = metalLossDepth({ wallThickness: length.m(t), remainingWall: length.m(t * share) });
        expect(depth).toBeGreaterThanOrEqual(0);
        expect(depth + t * share).toBeCloseTo(t, 15);
      }),
      runs,
    );
    expect(metalLossDepth({ wallThickness: length.mm(8), remainingWall: length.mm(8) })).toBe(0);
  });

  it('is refused for more wall than there ever was', () => {
    expect(() => metalLossDepth({ wallThickness: length.mm(8), remainingWall: length.mm(8.1) })).toThrow(
      /at most the nominal wall/u,
    );
  });
});

describe('the safety factor while people work beside the pipe', () => {
  it('is one of its three candidates and below none of them', () => {
    fc.assert(
      fc.property(real(0.2, 1), real(1, 3), real(1, 2), (designFactor, safetyFactor, leastFactor) => {
        const candidates = [1 / designFactor, safetyFactor, leastFactor];
        const found = damageSafetyFactor({ designFactor, safetyFactor, leastFactor });
        expect(candidates).toContain(found);
        for (const candidate of candidates) expect(found).toBeGreaterThanOrEqual(candidate);
      }),
      runs,
    );
  });

  it('is 1.25 where less is stated, or nothing', () => {
    expect([damageSafetyFactor({}), damageSafetyFactor({ safetyFactor: 1, designFactor: 0.9 })]).toEqual([1.25, 1.25]);
    expect(damageSafetyFactor({ designFactor: 0.5, safetyFactor: 1.5 })).toBe(2);
  });

  it.each([
    [{ designFactor: 0 }, 'designFactor'],
    [{ designFactor: 1.01 }, 'designFactor'],
    [{ safetyFactor: 0.99 }, 'safetyFactor'],
    [{ leastFactor: 0.99 }, 'leastFactor'],
  ])('is refused by %j', (input, parameter) => {
    expect(() => damageSafetyFactor(input)).toThrow(new RegExp(`^${parameter} `, 'u'));
  });
});

describe('the limit from the pressure carried lately', () => {
  it('is above neither the share of that pressure nor the failure pressure over its factor, and is one of them', () => {
    fc.assert(
      fc.property(real(0, 20e6), real(0, 30e6), real(0.1, 1), real(1, 2), (recent, failure, share, failureFactor) => {
        const pressures = { recentPressure: gauge.Pa(recent), failurePressure: gauge.Pa(failure) };
        const limit = recentPressureLimit({ ...pressures, share, failureFactor });
        expect(limit).toBeLessThanOrEqual(share * recent);
        expect(limit).toBeLessThanOrEqual(failure / failureFactor);
        expect([share * recent, failure / failureFactor]).toContain(limit);
      }),
      runs,
    );
  });

  it.each([
    [{ share: 0 }, 'share'],
    [{ share: 1.01 }, 'share'],
    [{ failureFactor: 0.99 }, 'failureFactor'],
  ])('is refused by %j', (change, parameter) => {
    const pressures = { recentPressure: gauge.MPa(4), failurePressure: gauge.MPa(9) };
    expect(() => recentPressureLimit({ ...pressures, ...change })).toThrow(new RegExp(`^${parameter} `, 'u'));
  });
});

describe('the pressure at which a thinned length that is cut through stays a leak', () => {
  const slots = fc.record({
    outsideDiameter: real(0.1, 1.2).map(length.m),
    wallThickness: real(0.002, 0.03).map(length.m),
    flowStress: real(200e6, 700e6).map(stress.Pa),
    defectLength: real(0.001, 2).map(length.m),
    safetyFactor: real(1, 3),
  });

  it('puts the hoop stress at that of the torn slot over the factor', () => {
    fc.assert(
      fc.property(slots, (slot) => {
        const hoop = (throughWallSlotPressure(slot) * slot.outsideDiameter) / (2 * slot.wallThickness);
        expect((hoop * slot.safetyFactor) / throughWallSlot(slot)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('never rises with the length, and for a short one is that of the sound wall over the factor', () => {
    fc.assert(
      fc.property(slots, real(1, 5), (slot, longer) => {
        const [short, long] = [slot.defectLength, length.m(slot.defectLength * longer)];
        const at = (defectLength: typeof short): number => throughWallSlotPressure({ ...slot, defectLength });
        expect(at(long)).toBeLessThanOrEqual(at(short) * (1 + 1e-12));
      }),
      runs,
    );
    const short = throughWallSlotPressure({
      outsideDiameter: length.mm(300),
      wallThickness: length.mm(6),
      flowStress: stress.MPa(250),
      defectLength: length.mm(1e-4),
      safetyFactor: 1.25,
    });
    expect(short / 1e6).toBeCloseTo((2 * 250 * 6) / 300 / 1.25, 9);
  });

  it('is refused without a margin', () => {
    const slot = {
      outsideDiameter: length.mm(300),
      wallThickness: length.mm(6),
      flowStress: stress.MPa(250),
      defectLength: length.mm(60),
    };
    expect(() => throughWallSlotPressure({ ...slot, safetyFactor: 0.99 })).toThrow(/^safetyFactor /u);
  });
});
