import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveConstants,
  firstPlyFailure,
  laminateExpansion,
  laminateStiffness,
  maximumStrainRatio,
  maximumStressRatio,
  tsaiHillRatio,
  tsaiWuRatio,
  turnedStiffness,
} from '../../../src/laminate/index.js';
import { angle, length, modulus, stress, thermalExpansion } from '../../../src/quantity/index.js';

const seeded = { seed: 20261125, numRuns: 200 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ply = (degrees: number) => ({
  thickness: length.mm(0.5),
  angle: angle.deg(degrees),
  alongModulus: modulus.GPa(40),
  acrossModulus: modulus.GPa(9),
  shearModulus: modulus.GPa(3.5),
  poissonRatio: 0.28,
});
const grows = {
  alongExpansion: thermalExpansion.microPerK(7),
  acrossExpansion: thermalExpansion.microPerK(27),
  alongSwelling: 0.01,
  acrossSwelling: 0.4,
};
const stack = (...degrees: number[]) => degrees.map(ply);

describe('a laminate', () => {
  it('turned by any angle keeps the two invariants of its stiffness', () => {
    const invariants = (degrees: number): [number, number] => {
      const q = turnedStiffness({ ...ply(degrees), angle: angle.deg(degrees) });
      return [q.q11 + q.q22 + 2 * q.q12, q.q66 - q.q12];
    };
    const [first, second] = invariants(0);
    for (const degrees of [-80, -30, 17, 45, 60, 90]) {
      expect(invariants(degrees)[0] / first).toBeCloseTo(1, 12);
      expect(invariants(degrees)[1] / second).toBeCloseTo(1, 12);
    }
  });

  it('that is symmetric does not bend as it is pulled, and turned over bends the other way', () => {
    const symmetric = laminateStiffness({ plies: stack(0, 45, -45, 90, 90, -45, 45, 0) });
    expect(Math.abs(symmetric.b11 / symmetric.a11)).toBeLessThan(1e-15);
    expect(Math.abs(symmetric.a16 / symmetric.a11)).toBeLessThan(1e-15);
    const [up, down] = [laminateStiffness({ plies: stack(0, 30, 90) }), laminateStiffness({ plies: stack(90, 30, 0) })];
    expect(up.b11).toBeLessThan(0);
    expect(down.b11 / up.b11).toBeCloseTo(-1, 12);
    expect(down.d11 / up.d11).toBeCloseTo(1, 12);
  });

  it('of four directions alike has one modulus in its plane, that of a mat between the best and the worst', () => {
    const { modulusX, modulusY, shearModulus, poissonXY } = effectiveConstants({
      plies: stack(0, 45, -45, 90, 90, -45, 45, 0),
      bending: 'held',
    });
    expect(modulusX / modulusY).toBeCloseTo(1, 12);
    expect(shearModulus / (modulusX / (2 * (1 + poissonXY)))).toBeCloseTo(1, 12);
    expect(modulus.inGPa(modulusX)).toBeGreaterThan(9);
    expect(modulus.inGPa(modulusX)).toBeLessThan(40);
  });

  it('that may bend is never stiffer than one that is held round a pipe', () => {
    fc.assert(
      fc.property(fc.array(span(-90, 90), { minLength: 1, maxLength: 6 }), (degrees) => {
        const of = (bending: 'held' | 'free') => effectiveConstants({ plies: stack(...degrees), bending });
        expect(of('free').modulusX).toBeLessThanOrEqual(of('held').modulusX * (1 + 1e-9));
        expect(of('free').modulusY).toBeLessThanOrEqual(of('held').modulusY * (1 + 1e-9));
      }),
      seeded,
    );
  });

  it('of one direction grows as its ply does, and a balanced one shears by no warmth', () => {
    const one = laminateExpansion({ plies: stack(0, 0).map((each) => ({ ...each, ...grows })) });
    expect(thermalExpansion.inMicroPerK(one.expansionX)).toBeCloseTo(7, 10);
    expect(thermalExpansion.inMicroPerK(one.expansionY)).toBeCloseTo(27, 10);
    const balanced = laminateExpansion({ plies: stack(30, -30).map((each) => ({ ...each, ...grows })) });
    expect(Math.abs(balanced.shearing)).toBeLessThan(1e-18);
  });

  it("is refused empty, with a ply of no thickness, and with a Poisson's ratio that its moduli do not allow", () => {
    expect(() => laminateStiffness({ plies: [] })).toThrow(/at least one ply/u);
    expect(() => laminateStiffness({ plies: [{ ...ply(0), thickness: length.mm(0) }] })).toThrow(
      /plies\[0\]\.thickness/u,
    );
    expect(() =>
      laminateStiffness({ plies: [{ ...ply(0), alongModulus: modulus.GPa(4), poissonRatio: 0.7 }] }),
    ).toThrow(/plies\[0\]\.poissonRatio.*moduli/u);
  });
});

describe('the strength ratio of a ply', () => {
  const strengths = {
    alongTension: stress.MPa(1000),
    alongCompression: stress.MPa(600),
    acrossTension: stress.MPa(35),
    acrossCompression: stress.MPa(120),
    shearStrength: stress.MPa(60),
  };
  const of = (along: number, across: number, shear: number) => ({
    alongStress: stress.MPa(along),
    acrossStress: stress.MPa(across),
    shearStress: stress.MPa(shear),
    ...strengths,
  });
  const constants = {
    alongModulus: modulus.GPa(40),
    acrossModulus: modulus.GPa(9),
    shearModulus: modulus.GPa(3.5),
    poissonRatio: 0.28,
  };

  it('under one stress alone is its strength over it, by every criterion', () => {
    for (const [given, ratio] of [
      [of(500, 0, 0), 2],
      [of(-300, 0, 0), 2],
      [of(0, 7, 0), 5],
      [of(0, -60, 0), 2],
      [of(0, 0, -20), 3],
    ] as const) {
      expect(maximumStressRatio(given)).toBeCloseTo(ratio, 12);
      expect(tsaiWuRatio(given)).toBeCloseTo(ratio, 12);
      expect(tsaiHillRatio({ ...given, strengths: 'by sign' })).toBeCloseTo(ratio, 12);
    }
    expect(maximumStrainRatio({ ...of(0, 0, 20), ...constants })).toBeCloseTo(3, 12);
    // 7 MPa across contract the fibres by what 1.96 MPa along would, far from their limit.
    expect(maximumStrainRatio({ ...of(0, 7, 0), ...constants })).toBeCloseTo(5, 12);
  });

  it('falls to one when the stress is multiplied by it', () => {
    const far = fc
      .tuple(span(-900, 900), span(-100, 30), span(-50, 50))
      .filter((each) => each.some((value) => Math.abs(value) > 1));
    fc.assert(
      fc.property(far, ([along, across, shear]) => {
        const given = of(along, across, shear);
        const times = (r: number) => of(along * r, across * r, shear * r);
        const strain = maximumStrainRatio({ ...given, ...constants });
        expect(maximumStrainRatio({ ...times(strain), ...constants })).toBeCloseTo(1, 9);
        expect(tsaiWuRatio(times(tsaiWuRatio(given)))).toBeCloseTo(1, 9);
        for (const taken of ['tension throughout', 'by sign'] as const) {
          const ratio = tsaiHillRatio({ ...given, strengths: taken });
          expect(tsaiHillRatio({ ...times(ratio), strengths: taken })).toBeCloseTo(1, 9);
        }
        expect(maximumStressRatio(times(maximumStressRatio(given)))).toBeCloseTo(1, 9);
      }),
      seeded,
    );
  });

  it('has none without stress', () => {
    expect(() => tsaiWuRatio(of(0, 0, 0))).toThrow(/no strength ratio/u);
    const plies = [{ ...ply(0), ...strengths }];
    expect(() => firstPlyFailure({ plies, loadX: 0 as never, loadY: 0 as never, shearFlow: 0 as never })).toThrow(
      /must not be 0/u,
    );
  });
});
