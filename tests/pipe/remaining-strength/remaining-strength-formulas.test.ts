import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  api579LengthParameter,
  type B31gInput,
  b31g1991AllowableDepth,
  b31g1991AllowableLength,
  b31g1991LengthFactor,
  b31g1991SafePressure,
  b31g1991SafePressureShallow,
  b31gAllowableLength,
  b31gAllowableLengthBelowTables,
  b31gOriginal,
  b31gOriginalShallow,
  criticalThroughWallLength,
  dnvAxialCompression,
  dnvLengthCorrection,
  dnvPartA,
  dnvSingleDefect,
  effectiveArea,
  flowStressMean,
  flowStressMultiple,
  flowStressOffset,
  flowStressOffsetBeyondRange,
  foliasApi579,
  foliasApi579BeyondRange,
  foliasB31g,
  foliasB31gBeyondRange,
  foliasModifiedB31g,
  leakOrRupture,
  localMetalLoss,
  localMetalLossDiscontinuityUnchecked,
  localMetalLossProfile,
  modifiedB31g,
  rectangularDefect,
  throughWallSlot,
} from '../../../src/pipe/index.js';
import { gauge, type Length, length, ratio, stress } from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';

const runs = { seed: 20261125, numRuns: 300 } as const;
const near = (found: number, expected: number, relative = 1e-9): void => {
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(relative * Math.abs(expected));
};

/** A pipe of realistic size, a depth as part of the wall, a length, a flow stress. */
const drawn = fc.record({
  D: real(0.1, 1.2),
  t: real(0.005, 0.03),
  x: real(0.01, 0.79),
  L: real(0.01, 1),
  S: real(2e8, 7e8),
});

const defect = ({ D, t, x, L, S }: { D: number; t: number; x: number; L: number; S: number }): B31gInput => ({
  outsideDiameter: length.m(D),
  wallThickness: length.m(t),
  defectDepth: length.m(x * t),
  defectLength: length.m(L),
  flowStress: stress.Pa(S),
});

/** The DNV capacity on the same record, its tensile strength in the place of the flow stress. */
const dnv = (input: B31gInput): number => dnvSingleDefect({ ...input, tensileStrength: input.flowStress });

const methods = [
  ['original B31G', b31gOriginal, (d: B31gInput) => (2 * d.wallThickness * d.flowStress) / d.outsideDiameter],
  ['modified B31G', modifiedB31g, (d: B31gInput) => (2 * d.wallThickness * d.flowStress) / d.outsideDiameter],
  [
    'a loss of even depth',
    rectangularDefect,
    (d: B31gInput) => (2 * d.wallThickness * d.flowStress) / d.outsideDiameter,
  ],
  ['DNV', dnv, (d: B31gInput) => (2 * d.wallThickness * d.flowStress) / (d.outsideDiameter - d.wallThickness)],
] as const;

describe.each(methods)('the failure pressure by %s', (_, method, sound) => {
  it('is that of the sound pipe where there is no depth', () => {
    fc.assert(
      fc.property(drawn, (values) => {
        const input = { ...defect(values), defectDepth: length.m(0) };
        near(method(input), sound(input), 1e-14);
      }),
      runs,
    );
  });

  it('is that of the sound pipe where there is no length', () => {
    fc.assert(
      fc.property(drawn, (values) => {
        const input = { ...defect(values), defectLength: length.m(1e-9) };
        near(method(input), sound(input), 1e-9);
      }),
      runs,
    );
  });

  it('never rises with a deeper or a longer loss', () => {
    fc.assert(
      fc.property(drawn, real(1, 1.5), (values, more) => {
        const input = defect(values);
        const deeper = { ...input, defectDepth: Math.min(more * input.defectDepth, 0.799 * values.t) as Length };
        const longer = { ...input, defectLength: length.m(more * values.L) };
        const here = method(input) * (1 + 1e-12);
        expect(method(deeper)).toBeLessThanOrEqual(here);
        expect(method(longer)).toBeLessThanOrEqual(here);
      }),
      runs,
    );
  });

  it('does not change with the unit of length', () => {
    fc.assert(
      fc.property(drawn, real(0.01, 100), (values, scale) => {
        const { D, t, L } = values;
        near(method(defect({ ...values, D: D * scale, t: t * scale, L: L * scale })), method(defect(values)), 1e-12);
      }),
      runs,
    );
  });
});

describe('original B31G', () => {
  const at = (z: number, x: number): number =>
    b31gOriginal(defect({ D: 0.5, t: 0.01, x, L: Math.sqrt(z * 0.005), S: 4e8 }));

  it('drops where L^2/(D t) passes 20', () => {
    // Parabola with M = sqrt 17 against a slot of any length, both of half the wall.
    near(at(20 - 1e-9, 0.5) / at(20 + 1e-9, 0.5), 2 / 3 / (1 - 1 / (3 * Math.sqrt(17))) / 0.5, 1e-8);
    expect(at(20 + 1e-9, 0.5)).toBeLessThan(0.75 * at(20 - 1e-9, 0.5));
    near(at(20 + 1e-9, 0.5), at(1000, 0.5), 1e-14);
  });

  it('says of losses below a tenth of the wall that it asks for no action, and refuses those over 0.8', () => {
    const input = defect({ D: 0.5, t: 0.01, x: 0.09, L: 0.1, S: 4e8 });
    expect(b31gOriginalShallow(input)).toBe(true);
    expect(b31gOriginalShallow({ ...input, defectDepth: length.mm(1.01) })).toBe(false);
    expect(() => b31gOriginal({ ...input, defectDepth: length.mm(8) })).not.toThrow();
    expect(() => b31gOriginal({ ...input, defectDepth: length.mm(8.01) })).toThrow(/outside|at most 0\.8/u);
    expect(() => b31gOriginal({ ...input, defectDepth: length.mm(10) })).toThrow(/below the wall thickness/u);
  });
});

describe('the bulging factors', () => {
  const pipe = { outsideDiameter: length.m(0.5), wallThickness: length.m(0.01) };
  const atZ = (z: number) => ({ ...pipe, defectLength: length.m(Math.sqrt(z * 0.005)) });

  it('are 1 for a defect of no length', () => {
    const none = { ...pipe, defectLength: length.m(0) };
    expect([foliasB31g(none), foliasModifiedB31g(none), dnvLengthCorrection(none)]).toEqual([1, 1, 1]);
    expect(foliasApi579({ lengthParameter: 0 })).toBe(1.001);
  });

  it('of modified B31G meets itself within 0.2 per cent at L^2/(D t) = 50', () => {
    const [below, above] = [foliasModifiedB31g(atZ(50 - 1e-9)), foliasModifiedB31g(atZ(50 + 1e-9))];
    near(below, Math.sqrt(23.9375), 1e-8);
    near(above, 4.9, 1e-8);
    expect(above / below).toBeLessThan(1.002);
  });

  it('never fall with length', () => {
    fc.assert(
      fc.property(real(0, 1000), real(0, 100), (z, more) => {
        for (const factor of [foliasB31g, foliasModifiedB31g, dnvLengthCorrection])
          expect(factor(atZ(z + more))).toBeGreaterThanOrEqual(factor(atZ(z)) * (1 - 1e-15));
        const lambda = Math.sqrt(z);
        expect(foliasApi579({ lengthParameter: lambda + more })).toBeGreaterThanOrEqual(
          // The polynomial dips by 1e-4 close to 0, where its linear term is negative.
          foliasApi579({ lengthParameter: lambda }) - 2e-4,
        );
      }),
      runs,
    );
  });

  it('of API 579-1 is held above a length parameter of 20', () => {
    expect(foliasApi579({ lengthParameter: 1000 })).toBe(foliasApi579({ lengthParameter: 20 }));
    expect(foliasApi579BeyondRange({ lengthParameter: 20.01 })).toBe(true);
    expect(foliasApi579BeyondRange({ lengthParameter: 20 })).toBe(false);
  });

  it('of original B31G warns of lengths that the method does not use it for', () => {
    expect([foliasB31gBeyondRange(atZ(19.99)), foliasB31gBeyondRange(atZ(20.01))]).toEqual([false, true]);
  });
});

describe('flow stress', () => {
  it('as 1.1 yield is the lower choice for every grade under 690 MPa, by 8 per cent at 287 MPa', () => {
    fc.assert(
      fc.property(real(1.5e8, 6.89e8), (yieldPa) => {
        const yieldStrength = stress.Pa(yieldPa);
        expect(flowStressMultiple({ yieldStrength })).toBeLessThan(flowStressOffset({ yieldStrength }));
      }),
      runs,
    );
    const x42 = { yieldStrength: stress.MPa(287) };
    near(flowStressOffset(x42) / flowStressMultiple(x42), 356 / 315.7);
  });

  it('as yield plus 69 MPa warns above X70', () => {
    expect(flowStressOffsetBeyondRange({ yieldStrength: stress.MPa(483) })).toBe(false);
    expect(flowStressOffsetBeyondRange({ yieldStrength: stress.MPa(555) })).toBe(true);
  });

  it('as the mean lies half-way, and needs a tensile strength that is not below yield', () => {
    near(flowStressMean({ yieldStrength: stress.MPa(360), tensileStrength: stress.MPa(460) }), 410e6);
    expect(() => flowStressMean({ yieldStrength: stress.MPa(360), tensileStrength: stress.MPa(350) })).toThrow(
      /at least the yield strength/u,
    );
  });
});

describe('the layout of the 1991 manual', () => {
  const job = fc.record({
    P: real(4e6, 15e6),
    part: real(0.5, 1),
    t: real(0.005, 0.03),
    x: real(0.01, 0.79),
    A: real(0, 8),
  });
  const given = ({ P, t, A }: { P: number; t: number; A: number }) => ({
    designPressure: gauge.Pa(P),
    wallThickness: length.m(t),
    lengthFactor: A,
  });

  it('never allows more than the pressure of the sound pipe', () => {
    fc.assert(
      fc.property(job, (values) => {
        const safe = b31g1991SafePressure({ ...given(values), defectDepth: length.m(values.x * values.t) });
        expect(safe).toBeLessThanOrEqual(values.P);
        expect(safe).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  it('comes back from the allowable depth to the operating pressure', () => {
    fc.assert(
      fc.property(job, (values) => {
        const operatingPressure = gauge.Pa(values.P * values.part);
        const depth = b31g1991AllowableDepth({ ...given(values), operatingPressure });
        const safe = b31g1991SafePressure({ ...given(values), defectDepth: depth });
        if (depth < 0.8 * values.t) near(safe, operatingPressure);
        else expect(safe).toBeGreaterThanOrEqual(operatingPressure * (1 - 1e-12));
      }),
      runs,
    );
  });

  it('comes back from the allowable length to the operating pressure', () => {
    fc.assert(
      fc.property(job, real(0.1, 1.2), (values, D) => {
        const pipe = { outsideDiameter: length.m(D), wallThickness: length.m(values.t) };
        const operatingPressure = gauge.Pa(values.P * values.part);
        const defectDepth = length.m(values.x * values.t);
        const { designPressure } = given(values);
        const axialLength = b31g1991AllowableLength({ ...pipe, designPressure, operatingPressure, defectDepth });
        const defectLength = axialLength === 'unlimited' ? length.m(1e6) : ((axialLength * (1 - 1e-12)) as Length);
        const lengthFactor = b31g1991LengthFactor({ ...pipe, defectLength });
        const safe = b31g1991SafePressure({ ...pipe, designPressure, defectDepth, lengthFactor });
        expect(safe).toBeGreaterThanOrEqual(operatingPressure * (1 - 1e-9));
        if (axialLength !== 'unlimited' && lengthFactor < 3.999) near(safe, operatingPressure);
      }),
      runs,
    );
  });

  it('says of losses below a tenth of the wall that it asks for no action', () => {
    const at = (depth: Length) => ({ ...given({ P: 5e6, t: 0.01, A: 2 }), defectDepth: depth });
    expect([b31g1991SafePressureShallow(at(length.mm(0.9))), b31g1991SafePressureShallow(at(length.mm(1.1)))]).toEqual([
      true,
      false,
    ]);
  });
});

describe('the tables of allowable length', () => {
  const pipe = { outsideDiameter: length.m(0.5), wallThickness: length.m(0.01) };

  it('hold a loss to the length at which the 1991 safe pressure is that of the sound pipe', () => {
    // 1.1 (1 - 2x/3)/(1 - 2x/(3 M)) = 1 gives M = x/(1.1 x - 0.15); 1.12 stands for 1/0.893.
    fc.assert(
      fc.property(real(0.2, 0.79), (x) => {
        const designPressure = gauge.MPa(5);
        const defectDepth = length.m(x * 0.01);
        const exact = b31g1991AllowableLength({
          ...pipe,
          designPressure,
          operatingPressure: designPressure,
          defectDepth,
        });
        near(b31gAllowableLength({ ...pipe, defectDepth }), Number(exact) * 1.12 * 0.893);
      }),
      runs,
    );
  });

  it('never allow a deeper loss to be longer, and stop at 4.48 sqrt(D t)', () => {
    fc.assert(
      fc.property(real(0, 0.79), real(0, 0.79), (x, y) => {
        const at = (share: number): number => b31gAllowableLength({ ...pipe, defectDepth: length.m(share * 0.01) });
        expect(at(Math.max(x, y))).toBeLessThanOrEqual(at(Math.min(x, y)));
        expect(at(x)).toBeLessThanOrEqual(4.48 * Math.sqrt(0.005) * (1 + 1e-15));
      }),
      runs,
    );
    expect(b31gAllowableLengthBelowTables({ ...pipe, defectDepth: length.mm(0.99) })).toBe(true);
    expect(b31gAllowableLengthBelowTables({ ...pipe, defectDepth: length.mm(1.01) })).toBe(false);
  });
});

/** A profile of uneven points whose depths are parts of the wall. */
const points = fc.array(fc.record({ width: real(0.005, 0.1), x: real(0, 0.78) }), { minLength: 3, maxLength: 15 });

function profileOf(spans: readonly { width: number; x: number }[], t: number): { position: Length; depth: Length }[] {
  let position = 0;
  return spans.map(({ width, x }) => {
    position += width;
    return { position: length.m(position), depth: length.m(x * t) };
  });
}

describe('the effective area of a profile', () => {
  const pipe = { outsideDiameter: length.m(0.5), wallThickness: length.m(0.01), flowStress: stress.MPa(400) };

  it('of even depth is the formula for a loss of even depth', () => {
    fc.assert(
      fc.property(real(0.01, 0.79), real(0.05, 1), fc.integer({ min: 2, max: 30 }), (x, L, n) => {
        const defectDepth = length.m(x * 0.01);
        const profile = Array.from({ length: n }, (_, k) => ({
          position: length.m((L * k) / (n - 1)),
          depth: defectDepth,
        }));
        const found = effectiveArea({ ...pipe, profile });
        near(found.failurePressure, rectangularDefect({ ...pipe, defectDepth, defectLength: length.m(L) }), 1e-12);
        near(found.length, L, 1e-12);
        near(found.area / (found.length * 0.01), x, 1e-12);
      }),
      runs,
    );
  });

  it('never gives more than the whole length, with its whole area, does', () => {
    fc.assert(
      fc.property(points, (spans) => {
        const profile = profileOf(spans, 0.01);
        const [first, last] = [profile[0], profile.at(-1)];
        const axialLength = (last?.position ?? 0) - (first?.position ?? 0);
        let area = 0;
        profile.forEach(({ position, depth }, k) => {
          const next = profile[k + 1];
          if (next !== undefined) area += ((next.position - position) * (next.depth + depth)) / 2;
        });
        const whole = { ...pipe, defectDepth: length.m(area / axialLength), defectLength: length.m(axialLength) };
        expect(effectiveArea({ ...pipe, profile }).failurePressure).toBeLessThanOrEqual(
          rectangularDefect(whole) * (1 + 1e-12),
        );
      }),
      runs,
    );
  });

  it('never rises when a point is deeper', () => {
    fc.assert(
      fc.property(points, fc.nat(14), real(0, 1), (spans, which, more) => {
        const deeper = spans.map(({ width, x }, k) => ({
          width,
          x: k === which % spans.length ? x + more * (0.79 - x) : x,
        }));
        const before = effectiveArea({ ...pipe, profile: profileOf(spans, 0.01) }).failurePressure;
        const after = effectiveArea({ ...pipe, profile: profileOf(deeper, 0.01) }).failurePressure;
        expect(after).toBeLessThanOrEqual(before * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('does not change with the direction or the start of the positions', () => {
    fc.assert(
      fc.property(points, real(-10, 10), (spans, start) => {
        const profile = profileOf(spans, 0.01);
        const turned = [...profile]
          .reverse()
          .map(({ position, depth }) => ({ position: length.m(start - position), depth }));
        near(
          effectiveArea({ ...pipe, profile: turned }).failurePressure,
          effectiveArea({ ...pipe, profile }).failurePressure,
          1e-9,
        );
      }),
      runs,
    );
  });

  it('of no loss at all is the sound pipe', () => {
    const profile = [0, 1, 2].map((k) => ({ position: length.m(k), depth: length.m(0) }));
    near(effectiveArea({ ...pipe, profile }).failurePressure, (2 * 0.01 * 400e6) / 0.5, 1e-15);
  });
});

describe('DNV-RP-F101', () => {
  const base = {
    outsideDiameter: length.mm(812.8),
    wallThickness: length.mm(19.1),
    defectLength: length.mm(200),
    tensileStrength: stress.MPa(500),
  };

  it('carries the factor of the edition straight through', () => {
    const input = { ...base, defectDepth: length.mm(8) };
    near(dnvSingleDefect({ ...input, editionFactor: 1.05 }), 1.05 * dnvSingleDefect(input), 1e-14);
  });

  it('Part A with all factors 1 and no scatter is Part B', () => {
    fc.assert(
      fc.property(real(0, 0.84), (x) => {
        const partA = dnvPartA({
          ...base,
          relativeDepth: ratio.fraction(x),
          depthDeviation: ratio.fraction(0),
          fractile: 0,
          resistanceFactor: 1,
          depthFactor: 1,
        });
        near(partA, dnvSingleDefect({ ...base, defectDepth: length.m(x * 0.0191) }), 1e-12);
      }),
      runs,
    );
  });

  it('Part A permits nothing where the factored depth reaches through the wall, and refuses a measured one over 0.85', () => {
    const factors = { depthDeviation: ratio.fraction(0.08), fractile: 1, resistanceFactor: 0.85, depthFactor: 1.28 };
    const at = (x: number) => dnvPartA({ ...base, ...factors, relativeDepth: ratio.fraction(x) });
    expect(at(0.75)).toBe(0);
    expect(at(0.69)).toBeGreaterThan(0);
    expect(() => at(0.86)).toThrow(/at most 0\.85/u);
  });

  describe('under axial compression', () => {
    const input = { ...base, defectDepth: length.mm(8), defectWidth: length.mm(500) };
    const at = (axialStress: number) => dnvAxialCompression({ ...input, axialStress: stress.MPa(axialStress) });

    it('is not reduced by tension or by little compression', () => {
      expect([at(100), at(0), at(-100)]).toEqual([1, 1, 1]);
    });

    it('is reduced without a jump, and more by more compression or a wider loss', () => {
      let last = 1;
      for (let sigma = -200; sigma >= -380; sigma -= 1) {
        const found = at(sigma);
        expect(found).toBeLessThanOrEqual(last);
        expect(last - found).toBeLessThan(0.01);
        last = found;
      }
      expect(last).toBeLessThan(0.5);
      const wider = dnvAxialCompression({ ...input, defectWidth: length.mm(1500), axialStress: stress.MPa(-300) });
      expect(wider).toBeLessThan(at(-300));
    });

    it('has no solution where the compression uses up the section', () => {
      expect(() => at(-499)).toThrow(/uses up the section/u);
    });
  });
});

describe('a local metal loss by API 579-1', () => {
  const shell = { insideDiameter: length.m(0.48), correctedWall: length.m(0.01), workingPressure: gauge.MPa(5) };

  it('is the same on both levels where the depth is even', () => {
    fc.assert(
      fc.property(real(0.2, 1), real(0.05, 1.5), fc.integer({ min: 2, max: 20 }), (Rt, s, n) => {
        fc.pre(Rt * 0.01 > 0.0021);
        const measuredMinimum = length.m(Rt * 0.01);
        const one = localMetalLoss({ ...shell, measuredMinimum, defectLength: length.m(s) });
        const profile = Array.from({ length: n }, (_, k) => ({
          position: length.m((s * k) / (n - 1)),
          wall: measuredMinimum,
        }));
        const two = localMetalLossProfile({ ...shell, profile });
        // Close to no length the polynomial dips below 1.001 and the shortest piece may be the weakest, by 1e-4.
        expect(two.remainingStrengthFactor).toBeLessThanOrEqual(one.remainingStrengthFactor * (1 + 1e-12));
        near(two.remainingStrengthFactor, one.remainingStrengthFactor, 1e-3);
        expect(two.reducedPressure).toBeLessThanOrEqual(5e6);
      }),
      runs,
    );
  });

  it('is accepted just where the pressure need not be reduced', () => {
    fc.assert(
      fc.property(real(0.0021, 0.01), real(0.01, 1.5), (wall, s) => {
        const found = localMetalLoss({ ...shell, measuredMinimum: length.m(wall), defectLength: length.m(s) });
        expect(found.accepted).toBe(found.reducedPressure === 5e6);
        near(found.lengthParameter, api579LengthParameter({ ...shell, defectLength: length.m(s) }), 1e-15);
        if (!found.accepted) near(found.reducedPressure, (5e6 * found.remainingStrengthFactor) / 0.9);
      }),
      runs,
    );
  });

  it('counts the loss still to come, and no wall above the corrected one', () => {
    const both = { ...shell, defectLength: length.m(0.2) };
    const later = localMetalLoss({ ...both, measuredMinimum: length.mm(7), futureAllowance: length.mm(1) });
    near(
      later.remainingStrengthFactor,
      localMetalLoss({ ...both, measuredMinimum: length.mm(6) }).remainingStrengthFactor,
      1e-14,
    );
    const thick = [12, 6, 12].map((wall, k) => ({ position: length.m(0.1 * k), wall: length.mm(wall) }));
    const level = [10, 6, 10].map((wall, k) => ({ position: length.m(0.1 * k), wall: length.mm(wall) }));
    const factor = (profile: typeof thick) => localMetalLossProfile({ ...shell, profile }).remainingStrengthFactor;
    expect(factor(thick)).toBe(factor(level));
    expect(() => localMetalLoss({ ...both, measuredMinimum: length.mm(10.1) })).toThrow(/corrected wall plus/u);
  });

  it('is refused where too little is left or a discontinuity is near', () => {
    const at = (more: object) => () =>
      localMetalLoss({ ...shell, measuredMinimum: length.mm(6), defectLength: length.m(0.1), ...more });
    expect(at({ measuredMinimum: length.mm(1.9) })).toThrow(/at least 0\.2 of the corrected wall/u);
    expect(at({ measuredMinimum: length.mm(2.1), leastWall: length.mm(2.5) })).toThrow(/at least 0\.0025 m of wall/u);
    expect(at({ distanceToDiscontinuity: length.m(0.12) })).toThrow(/1\.8 sqrt/u);
    expect(at({ distanceToDiscontinuity: length.m(0.13) })).not.toThrow();
    expect(localMetalLossDiscontinuityUnchecked(shell)).toBe(true);
    expect(localMetalLossDiscontinuityUnchecked({ ...shell, distanceToDiscontinuity: length.m(1) })).toBe(false);
  });
});

describe('a slot through the wall', () => {
  const pipe = { outsideDiameter: length.m(0.5), wallThickness: length.m(0.01), flowStress: stress.MPa(400) };

  it('fails at the flow stress where it has no length, and at less the longer it is', () => {
    near(throughWallSlot({ ...pipe, defectLength: length.m(1e-9) }), 400e6, 1e-9);
    fc.assert(
      fc.property(real(0.01, 2), real(1, 3), (L, more) => {
        const at = (axialLength: number): number => throughWallSlot({ ...pipe, defectLength: length.m(axialLength) });
        expect(at(L * more)).toBeLessThanOrEqual(at(L));
      }),
      runs,
    );
  });

  it('of the critical length fails at the hoop stress, and is a leak below and a rupture above it', () => {
    fc.assert(
      fc.property(real(0.5e6, 15e6), (P) => {
        const pressure = gauge.Pa(P);
        const axialLength = criticalThroughWallLength({ ...pipe, pressure });
        const M = 16e6 / P;
        const found = throughWallSlot({ ...pipe, defectLength: axialLength });
        if (M < 4.8925 || M > 4.9001) near(found, (P * 0.5) / 0.02);
        const shorter = (axialLength * (1 - 1e-6)) as Length;
        const longer = (axialLength * (1 + 1e-6)) as Length;
        expect(leakOrRupture({ ...pipe, pressure, defectLength: shorter })).toBe('leak');
        expect(leakOrRupture({ ...pipe, pressure, defectLength: longer })).toBe('rupture');
      }),
      runs,
    );
  });

  it('has no critical length at a pressure that tears the sound pipe', () => {
    expect(() => criticalThroughWallLength({ ...pipe, pressure: gauge.MPa(16) })).toThrow(/hoop stress reaches/u);
    // Where the bulging factor jumps, the last length before the jump is returned.
    near(criticalThroughWallLength({ ...pipe, pressure: gauge.Pa(16e6 / 4.896) }), Math.sqrt(50 * 0.005), 1e-12);
  });
});
