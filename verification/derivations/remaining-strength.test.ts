import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axialFailureStress,
  b31g1991AllowableDepth,
  b31g1991AllowableLength,
  criticalThroughWallLength,
  effectiveArea,
  foliasApi579,
  foliasModifiedB31g,
  leakOrRupture,
  localMetalLossProfile,
  throughWallArcStress,
  throughWallSlotPressure,
} from '../../src/pipe/index.js';
import { gauge, type Length, length, stress } from '../../src/quantity/index.js';
import {
  allowableDepthBySearch,
  allowableLengthBySearch,
  api579BulgingExactly,
  criticalLengthBySearch,
  effectiveAreaByBruteForce,
  gappedRingSummed,
  localMetalLossByBruteForce,
  slotPressureBySearch,
  slotTears,
  threeTermBulging,
  weakestWidthBySearch,
} from './remaining-strength.js';

const runs = { seed: 20261125, numRuns: 300 } as const;
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (found: number, expected: number, relative = 1e-12): void => {
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(relative * Math.abs(expected));
};

/** A profile of 2 to 25 points with uneven spacing, and a pipe that holds it. */
const profiles = fc.record({
  diameter: real(0.1, 1.2),
  wall: real(0.005, 0.03),
  flow: real(200e6, 700e6),
  start: real(-5, 5),
  spans: fc.array(fc.record({ width: real(0.002, 0.3), share: real(0, 0.79) }), { minLength: 2, maxLength: 25 }),
});

type Drawn = typeof profiles extends fc.Arbitrary<infer T> ? T : never;

function pointsOf({ start, spans, wall }: Drawn): { readonly at: number; readonly loss: number }[] {
  let at = start;
  return spans.map(({ width, share }) => {
    at += width;
    return { at, loss: share * wall };
  });
}

describe("'pipe/axial-failure-stress' against a search of every narrower width", () => {
  it('finds the same least stress', () => {
    fc.assert(
      fc.property(real(0.1, 1.2), real(12, 90), real(0, 0.99), real(0.001, 1), (diameter, slenderness, x, share) => {
        const wall = diameter / slenderness;
        const expected = weakestWidthBySearch(1 - x, share * Math.PI);
        const { failureStress } = axialFailureStress({
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          defectDepth: length.m(x * wall),
          defectWidth: length.m(share * Math.PI * diameter),
          flowStress: stress.MPa(300),
        });
        // The search stands on 20 000 angles, so it may lie above the least by a little, never below.
        expect(failureStress / 300e6).toBeLessThanOrEqual(expected * (1 + 1e-12));
        near(failureStress / 300e6, expected, 1e-6);
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });
});

describe("'pipe/through-wall-arc-stress' against a ring in small pieces", () => {
  it('is the pull at which the ring with the gap is plastic and does not turn', () => {
    for (const [beta, flow] of [
      [0.05, 300],
      [0.4, 350],
      [1, 300],
      [1.6, 280],
      [2.2, 400],
    ] as const) {
      const found = throughWallArcStress({
        outsideDiameter: length.mm(200),
        cutWidth: length.mm(200 * beta),
        flowStress: stress.MPa(flow),
      });
      expect(Math.abs(found / (flow * 1e6) - gappedRingSummed(beta))).toBeLessThan(2e-5);
    }
  });
});

describe("'pipe/effective-area' against a search of every sub-length", () => {
  it('finds the same failure pressure, and a sub-length that gives it', () => {
    fc.assert(
      fc.property(profiles, (drawn) => {
        const points = pointsOf(drawn);
        const { diameter, wall, flow } = drawn;
        const expected = effectiveAreaByBruteForce({ diameter, wall, flow }, points);
        const found = effectiveArea({
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          flowStress: stress.Pa(flow),
          profile: points.map(({ at, loss }) => ({ position: length.m(at), depth: length.m(loss) })),
        });
        near(found.failurePressure, expected.pressure);
        near(found.length, found.to - found.from, 1e-15);
        const piece = points.filter(({ at }) => at >= found.from && at <= found.to);
        const again = effectiveAreaByBruteForce({ diameter, wall, flow }, piece);
        near(again.pressure, found.failurePressure);
        near(found.area, again.area, 1e-9);
      }),
      runs,
    );
  });

  it('finds the sub-lengths of the two anchors', () => {
    const first = effectiveAreaByBruteForce(
      { diameter: 30, wall: 0.375, flow: 62000 },
      [0, 0.05, 0.1, 0.15, 0.2, 0.15, 0.1, 0.05, 0].map((loss, at) => ({ at, loss })),
    );
    near(first.pressure, 1280.951, 5e-7);
    expect([first.from, first.to]).toEqual([1, 7]);
    const second = effectiveAreaByBruteForce(
      { diameter: 508, wall: 9.53, flow: 428 },
      [0, 1, 3, 2, 2, 6, 6, 3, 1, 1, 0].map((loss, k) => ({ at: 25 * k, loss })),
    );
    near(second.pressure, 12.478595, 5e-8);
    expect([second.from, second.to, second.area]).toEqual([25, 200, 575]);
  });
});

describe("'pipe/local-metal-loss-profile' against a search of every sub-length", () => {
  it('finds the same remaining strength factor, and a sub-length that gives it', () => {
    fc.assert(
      fc.property(profiles, (drawn) => {
        const points = pointsOf(drawn);
        const { diameter, wall } = drawn;
        const expected = localMetalLossByBruteForce({ bore: diameter, wall }, points);
        const found = localMetalLossProfile({
          insideDiameter: length.m(diameter),
          correctedWall: length.m(wall),
          workingPressure: gauge.MPa(1),
          leastWall: length.m(0),
          profile: points.map(({ at, loss }) => ({ position: length.m(at), wall: length.m(wall - loss) })),
        });
        // The exact route takes lambda to 9 decimals.
        near(found.remainingStrengthFactor, expected.share, 1e-8);
        const piece = points.filter(({ at }) => at >= found.from && at <= found.to);
        near(localMetalLossByBruteForce({ bore: diameter, wall }, piece).share, expected.share, 1e-8);
      }),
      runs,
    );
  });
});

describe('the bulging factors', () => {
  it('of API 579-1 is the printed polynomial in whole-number arithmetic', () => {
    for (let k = 0; k <= 200; k++) {
      const lambda = k / 8;
      near(foliasApi579({ lengthParameter: lambda }), api579BulgingExactly(lambda), 4e-16);
    }
  });

  it('of modified B31G is the same in half length and radius', () => {
    fc.assert(
      fc.property(real(0.1, 1.2), real(0.005, 0.03), real(0, 1.2), (D, t, L) => {
        const found = foliasModifiedB31g({
          outsideDiameter: length.m(D),
          wallThickness: length.m(t),
          defectLength: length.m(L),
        });
        near(found, threeTermBulging(D, t, L));
      }),
      runs,
    );
  });
});

const manual = fc.record({
  design: real(4e6, 15e6),
  part: real(0.4, 1),
  diameter: real(0.1, 1.2),
  wall: real(0.005, 0.03),
});

describe("'pipe/b31g-1991-allowable-length' and the allowable depth against a search", () => {
  it('give the longest loss that keeps the operating pressure', () => {
    const seen = { unlimited: 0, capped: 0, inside: 0 };
    fc.assert(
      fc.property(manual, real(0, 0.8), ({ design, part, diameter, wall }, x) => {
        const job = { design, operating: part * design, diameter, wall };
        const expected = allowableLengthBySearch(job, x * wall);
        const found = b31g1991AllowableLength({
          designPressure: gauge.Pa(design),
          operatingPressure: gauge.Pa(job.operating),
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          defectDepth: length.m(x * wall),
        });
        if (found === 'unlimited') {
          seen.unlimited++;
          expect(expected).toBe(Number.POSITIVE_INFINITY);
          return;
        }
        if (found > 3.999 * Math.sqrt(diameter * wall) * (1 / 0.893)) seen.capped++;
        else seen.inside++;
        near(found, expected, 1e-9);
      }),
      runs,
    );
    expect(Math.min(seen.unlimited, seen.capped, seen.inside)).toBeGreaterThan(5);
  });

  it('give the deepest loss that keeps the operating pressure', () => {
    fc.assert(
      fc.property(manual, real(0, 8), ({ design, part, wall }, A) => {
        const job = { design, operating: part * design, wall };
        const found = b31g1991AllowableDepth({
          designPressure: gauge.Pa(design),
          operatingPressure: gauge.Pa(job.operating),
          wallThickness: length.m(wall),
          lengthFactor: A,
        });
        near(found, allowableDepthBySearch(job, A), 1e-9);
      }),
      runs,
    );
  });
});

const slots = fc.record({
  diameter: real(0.1, 1.2),
  wall: real(0.005, 0.03),
  flow: real(200e6, 700e6),
  pressure: real(0.5e6, 10e6),
});

describe("'pipe/leak-or-rupture' and the critical length against a search", () => {
  it('say of a slot what its bulged stress says', () => {
    const seen = { leak: 0, rupture: 0 };
    fc.assert(
      fc.property(slots, real(0.01, 1.2), ({ diameter, wall, flow, pressure }, slotLength) => {
        const found = leakOrRupture({
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          flowStress: stress.Pa(flow),
          pressure: gauge.Pa(pressure),
          defectLength: length.m(slotLength),
        });
        seen[found]++;
        expect(found).toBe(slotTears({ diameter, wall, flow, pressure }, slotLength) ? 'rupture' : 'leak');
      }),
      runs,
    );
    expect(Math.min(seen.leak, seen.rupture)).toBeGreaterThan(20);
  });

  it('find the same longest slot that stays a leak', () => {
    fc.assert(
      fc.property(slots, ({ diameter, wall, flow, pressure }) => {
        fc.pre(2 * wall * flow > 1.001 * pressure * diameter);
        const found: Length = criticalThroughWallLength({
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          flowStress: stress.Pa(flow),
          pressure: gauge.Pa(pressure),
        });
        near(found, criticalLengthBySearch({ diameter, wall, flow, pressure }), 1e-9);
      }),
      runs,
    );
  });
});

describe("'pipe/through-wall-slot-pressure' against a search", () => {
  it('finds the pressure at which the slot would tear, over the factor', () => {
    const seen = { short: 0, long: 0 };
    fc.assert(
      fc.property(slots, real(0.01, 1.2), real(1, 3), ({ diameter, wall, flow }, slotLength, safetyFactor) => {
        const found = throughWallSlotPressure({
          outsideDiameter: length.m(diameter),
          wallThickness: length.m(wall),
          flowStress: stress.Pa(flow),
          defectLength: length.m(slotLength),
          safetyFactor,
        });
        seen[slotLength ** 2 > 50 * diameter * wall ? 'long' : 'short']++;
        near(found, slotPressureBySearch({ diameter, wall, flow }, slotLength) / safetyFactor);
      }),
      runs,
    );
    expect(Math.min(seen.short, seen.long)).toBeGreaterThan(20);
  });
});
