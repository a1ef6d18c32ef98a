import { describe, expect, it } from 'vitest';
import {
  energyFromTests,
  lapPeakOverMean,
  lapShearPeak,
  lapShearStress,
  shearLagLength,
  taperedEndShear,
  thickOverThin,
  wrapEndShear,
} from '../../src/laminate/index.js';
import { squarePlateDeflection, wrappedCylinder } from '../../src/mechanics/index.js';
import { studentQuantile, studentWithin } from '../../src/numeric/index.js';
import type { GaugePressure, Length, Modulus } from '../../src/quantity/index.js';
import { shearBySprings } from './bond.js';

/** The bond against springs in a row; a wrapped pipe against rings; the energy of tests against a search. */

const pipe = { innerModulus: 207e9, innerThickness: 0.007 };
const wrap = { outerModulus: 20e9, outerThickness: 0.008 };
const glue = { bondShearModulus: 1e9, bondThickness: 0.0003 };
const joint = { ...pipe, ...wrap, ...glue };
const of = <T>(formula: (input: never) => T, input: object): T => formula(input as never);
const springs = {
  innerStiffness: pipe.innerModulus * pipe.innerThickness,
  outerStiffness: () => wrap.outerModulus * wrap.outerThickness,
  bondModulus: glue.bondShearModulus,
  bondThickness: glue.bondThickness,
};

describe('a bond that passes a load', () => {
  it.each([
    [0.05, 4e5, 0],
    [0.02, 2e5, 40],
    [0.08, 0, -50],
  ])('over %s m, %s N/m and %s K has the shear of springs in a row', (overlap, lineLoad, temperatureChange) => {
    const input = { ...joint, overlap, lineLoad, innerExpansion: 1.2e-5, outerExpansion: 2e-5, temperatureChange };
    const pieces = 4000;
    const shear = shearBySprings(
      {
        ...springs,
        length: overlap,
        innerFree: 1.2e-5 * temperatureChange,
        outerFree: 2e-5 * temperatureChange,
        innerPull: [lineLoad, 0],
        outerPull: [0, lineLoad],
      },
      pieces,
    );
    const largest = Math.max(...shear.map(Math.abs));
    for (const piece of [0, 500, 1999, 3000, 3999]) {
      const place = (2 * (piece + 0.5)) / pieces - 1;
      const library = of(lapShearStress, { ...input, place });
      expect(Math.abs(library - (shear[piece] as number))).toBeLessThanOrEqual(1e-3 * largest);
    }
    expect(Math.abs(of(lapShearPeak, input) / largest - 1)).toBeLessThanOrEqual(2e-3);
  });

  it('passes all of it, and its peak over its mean is that of layers in balance', () => {
    const even = { ...joint, outerModulus: pipe.innerModulus, outerThickness: pipe.innerThickness };
    const input = { ...even, overlap: 0.05, lineLoad: 1e5, innerExpansion: 0, outerExpansion: 0, temperatureChange: 0 };
    const peak = of(lapShearPeak, input);
    expect(of(lapPeakOverMean, { ...even, overlap: 0.05 }) * (1e5 / 0.05)).toBeCloseTo(peak, 3);
    let passed = 0;
    for (let i = 0; i < 10_000; i++) passed += of(lapShearStress, { ...input, place: (2 * i + 1) / 10_000 - 1 }) * 5e-6;
    expect(passed / 1e5).toBeCloseTo(1, 6);
    // Far from one end the shear falls by e over the length.
    const at = (x: number): number => of(lapShearStress, { ...input, overlap: 1, place: 2 * x - 1 });
    const lag = of(shearLagLength, even);
    expect(at(0.02 + lag) / at(0.02)).toBeCloseTo(1 / Math.E, 6);
  });
});

describe('the end of a wrap', () => {
  const ends = (outerStiffness: (x: number) => number, length: number): number => {
    const load = 0.0008 * springs.innerStiffness;
    const shear = shearBySprings(
      { ...springs, outerStiffness, length, innerFree: 0, outerFree: 0, innerPull: [load, load], outerPull: [0, 0] },
      40_000,
    );
    return Math.max(...shear.slice(0, 20_000).map(Math.abs));
  };
  const bare = { innerExpansion: 0, outerExpansion: 0, temperatureChange: 0 };

  it("has the shear of springs, blunt or tapered ('laminate/tapered-end-shear')", () => {
    const blunt = of(wrapEndShear, { ...joint, ...bare, wrapLength: 0.4, pipeStrain: 0.0008 });
    expect(Math.abs(blunt / ends(springs.outerStiffness, 0.4) - 1)).toBeLessThanOrEqual(2e-3);
    const taperLength = 0.04;
    const tapered = of(taperedEndShear, { ...joint, tipThickness: 0.0008, taperLength, strainApart: 0.0008 });
    const thickness = (x: number): number => Math.min(0.008, 0.0008 + (0.0072 * Math.min(x, 0.4 - x)) / taperLength);
    expect(Math.abs(tapered / ends((x) => wrap.outerModulus * thickness(x), 0.4) - 1)).toBeLessThanOrEqual(5e-3);
    expect(tapered).toBeLessThan(blunt / 2);
  });

  it('is not relieved by a load that may be absent', () => {
    const warm = { ...joint, innerExpansion: 1.2e-5, outerExpansion: 3e-5, temperatureChange: 50, wrapLength: 0.4 };
    const without = of(wrapEndShear, { ...warm, pipeStrain: 0 });
    expect(of(wrapEndShear, { ...warm, pipeStrain: 0.0005 })).toBe(without);
    expect(of(wrapEndShear, { ...warm, pipeStrain: 0.002 })).toBeGreaterThan(without);
  });
});

/** Rings of a pipe and of a wrap, each of one displacement, with one axial strain: least energy by the balance of every ring. */
function byRings(
  ends: 'plane strain' | 'open ends' | 'closed ends',
  through: { readonly radial: number; readonly cr: number; readonly ar: number },
  rings: number,
) {
  const radii = { bore: 0.077, meet: 0.084, outside: 0.096 };
  const P = 1e7;
  const wrapped = { hoop: 25e9, axial: 12e9, ca: 0.2, ...through };
  const steel = { hoop: 207e9, axial: 207e9, radial: 207e9, ca: 0.3, cr: 0.3, ar: 0.3 };
  const stiffness = (m: typeof steel): number[][] => {
    const S = [
      [1 / m.radial, -m.cr / m.hoop, -m.ar / m.axial],
      [-m.cr / m.hoop, 1 / m.hoop, -m.ca / m.hoop],
      [-m.ar / m.axial, -m.ca / m.hoop, 1 / m.axial],
    ] as number[][];
    const minor = (i: number, j: number): number => {
      const [a, b] = [0, 1, 2].filter((k) => k !== i) as [number, number];
      const [c, d] = [0, 1, 2].filter((k) => k !== j) as [number, number];
      return (S[a]?.[c] ?? 0) * (S[b]?.[d] ?? 0) - (S[a]?.[d] ?? 0) * (S[b]?.[c] ?? 0);
    };
    const whole = [0, 1, 2].reduce((sum, j) => sum + (j === 1 ? -1 : 1) * (S[0]?.[j] ?? 0) * minor(0, j), 0);
    return [0, 1, 2].map((i) => [0, 1, 2].map((j) => ((i + j) % 2 === 0 ? minor(j, i) : -minor(j, i)) / whole));
  };
  const C = [stiffness(steel), stiffness(wrapped)];
  const layers = [
    [radii.bore, radii.meet],
    [radii.meet, radii.outside],
  ] as const;
  const knots: number[] = [radii.bore];
  const of: number[] = [];
  layers.forEach(([from, to], layer) => {
    for (let i = 1; i <= rings; i++) {
      knots.push(from + ((to - from) * i) / rings);
      of.push(layer);
    }
  });
  const n = knots.length;
  /** Displacements under a pressure and an axial strain, from the balance of each knot, by sweeping. */
  const solve = (pressure: number, along: number): number[] => {
    const [low, main, high, right] = [0, 0, 0, 0].map(() => new Array<number>(n).fill(0)) as [
      number[],
      number[],
      number[],
      number[],
    ];
    for (let e = 0; e < n - 1; e++) {
      const [r1, r2] = [knots[e] as number, knots[e + 1] as number];
      const [dr, r] = [r2 - r1, (r1 + r2) / 2];
      const c = C[of[e] as number] as number[][];
      const at = (i: number, j: number): number => c[i]?.[j] ?? 0;
      // Strain through and round of the two displacements in the middle of the ring.
      const b = [
        [-1 / dr, 1 / dr],
        [1 / (2 * r), 1 / (2 * r)],
      ] as [[number, number], [number, number]];
      const k = (i: 0 | 1, j: 0 | 1): number =>
        [0, 1].reduce(
          (sum, p) => sum + [0, 1].reduce((part, q) => part + (b[p]?.[i] ?? 0) * at(p, q) * (b[q]?.[j] ?? 0), 0),
          0,
        ) *
        r *
        dr;
      const f = (i: 0 | 1): number => -[0, 1].reduce((sum, p) => sum + (b[p]?.[i] ?? 0) * at(p, 2), 0) * along * r * dr;
      main[e] = (main[e] as number) + k(0, 0);
      main[e + 1] = (main[e + 1] as number) + k(1, 1);
      high[e] = (high[e] as number) + k(0, 1);
      low[e + 1] = (low[e + 1] as number) + k(1, 0);
      right[e] = (right[e] as number) + f(0);
      right[e + 1] = (right[e + 1] as number) + f(1);
    }
    right[0] = (right[0] as number) + pressure * radii.bore;
    for (let i = 1; i < n; i++) {
      const factor = (low[i] as number) / (main[i - 1] as number);
      main[i] = (main[i] as number) - factor * (high[i - 1] as number);
      right[i] = (right[i] as number) - factor * (right[i - 1] as number);
    }
    const u = new Array<number>(n).fill(0);
    for (let i = n - 1; i >= 0; i--)
      u[i] = ((right[i] as number) - (high[i] as number) * (u[i + 1] ?? 0)) / (main[i] as number);
    return u;
  };
  const stress = (u: number[], along: number, e: number, which: number): number => {
    const [r1, r2] = [knots[e] as number, knots[e + 1] as number];
    const strains = [
      ((u[e + 1] as number) - (u[e] as number)) / (r2 - r1),
      ((u[e + 1] as number) + (u[e] as number)) / (r1 + r2),
      along,
    ];
    return strains.reduce((sum, strain, j) => sum + (C[of[e] as number]?.[which]?.[j] ?? 0) * strain, 0);
  };
  const axial = (u: number[], along: number): number => {
    let force = 0;
    for (let e = 0; e < n - 1; e++) {
      const [r1, r2] = [knots[e] as number, knots[e + 1] as number];
      force += (stress(u, along, e, 2) * (r2 * r2 - r1 * r1)) / 2;
    }
    return force;
  };
  const wanted = ends === 'closed ends' ? (P * radii.bore * radii.bore) / 2 : 0;
  const still = solve(P, 0);
  const pulled = solve(0, 1e-3);
  const along = ends === 'plane strain' ? 0 : ((wanted - axial(still, 0)) / axial(pulled, 1e-3)) * 1e-3;
  const u = still.map((value, i) => value + ((pulled[i] as number) * along) / 1e-3);
  return {
    boreHoop: stress(u, along, 0, 1),
    wrapHoop: stress(u, along, rings, 1),
    interfacePressure: -stress(u, along, rings, 0),
  };
}

describe('a pipe in a wrap', () => {
  it.each(['plane strain', 'open ends', 'closed ends'] as const)(
    "with %s has the stresses of rings in balance ('mechanics/wrapped-cylinder')",
    (ends) => {
      for (const radialModulus of [6e9, 25e9]) {
        const found = byRings(ends, { radial: radialModulus, cr: 0.25, ar: 0.3 }, 4000);
        const library = of(wrappedCylinder, {
          pressure: 1e7,
          innerRadius: 0.077,
          interfaceRadius: 0.084,
          outerRadius: 0.096,
          pipeModulus: 207e9,
          pipePoisson: 0.3,
          hoopModulus: 25e9,
          axialModulus: 12e9,
          radialModulus,
          hoopToAxial: 0.2,
          hoopToRadial: 0.25,
          axialToRadial: 0.3,
          ends,
        });
        expect(Math.abs(library.boreHoop / found.boreHoop - 1)).toBeLessThanOrEqual(1e-3);
        expect(Math.abs(library.wrapHoop / found.wrapHoop - 1)).toBeLessThanOrEqual(1e-3);
        expect(Math.abs(library.interfacePressure / found.interfacePressure - 1)).toBeLessThanOrEqual(5e-3);
      }
    },
  );

  it("of closed ends is stressed more than thin walls say, by the shares of 'laminate/thick-over-thin'", () => {
    for (const throughPoisson of [0, 0.3]) {
      const found = byRings('closed ends', { radial: 12e9, cr: throughPoisson, ar: throughPoisson }, 4000);
      const strain = (1e7 * 0.084) / (207e9 * 0.007 + 25e9 * 0.012);
      const library = thickOverThin({
        pressure: 1e7 as GaugePressure,
        outsideDiameter: 0.168 as Length,
        remainingWall: 0.007 as Length,
        laminateThickness: 0.012 as Length,
        substrateModulus: 207e9 as Modulus,
        substratePoisson: 0.3,
        hoopModulus: 25e9 as Modulus,
        axialModulus: 12e9 as Modulus,
        poissonRatio: 0.2,
        throughPoisson,
      });
      expect(library.pipe).toBeCloseTo(found.boreHoop / (207e9 * strain) - 1, 3);
      expect(library.laminate).toBeCloseTo(found.wrapHoop / (25e9 * strain) - 1, 3);
    }
  });
});

describe("Student's t", () => {
  it('is that of the printed tables, two-sided', () => {
    const table = [
      [0.95, 1, 12.706],
      [0.95, 2, 4.303],
      [0.95, 5, 2.571],
      [0.95, 7, 2.365],
      [0.95, 10, 2.228],
      [0.95, 30, 2.042],
      [0.95, 120, 1.98],
      [0.99, 7, 3.499],
      [0.99, 10, 3.169],
      [0.9, 7, 1.895],
      [0.9, 20, 1.725],
    ] as const;
    for (const [chance, degrees, t] of table)
      expect(Math.abs((studentQuantile(chance, degrees) ?? 0) - t)).toBeLessThanOrEqual(0.0005);
  });

  it('encloses the area under its density, added up in strips', () => {
    for (const degrees of [1, 2, 5, 8, 13]) {
      const strips = (to: number, n: number): number => {
        let sum = 0;
        for (let i = 0; i < n; i++) sum += (1 + (((i + 0.5) * to) / n) ** 2 / degrees) ** (-(degrees + 1) / 2);
        return (sum * to) / n;
      };
      // The whole area by t = tan, so that the strips reach to the end.
      let whole = 0;
      for (let i = 0; i < 200_000; i++) {
        const a = ((i + 0.5) * Math.PI) / 400_000;
        whole += ((1 + Math.tan(a) ** 2 / degrees) ** (-(degrees + 1) / 2) / Math.cos(a) ** 2) * (Math.PI / 400_000);
      }
      expect(studentWithin(1.7, degrees)).toBeCloseTo(strips(1.7, 20_000) / whole, 5);
    }
  });
});

describe('the energy of a bond from tests of holes', () => {
  it("is where the squares of what is left are least, less its scatter ('laminate/energy-from-tests')", () => {
    const moduli = { hoopModulus: 24e9, axialModulus: 14e9, poissonRatio: 0.12, shearModulus: 3e9 };
    const tests = [10, 10, 10, 15, 15, 15, 25, 25, 25, 25].map((d, i) => ({
      holeDiameter: d / 1000,
      laminateThickness: 0.006,
      pressure: ([29, 27, 31, 21, 20, 22.5, 12.6, 13.4, 11.8, 12.9][i] as number) * 1e6,
    }));
    // Three terms of energy for each pressure squared, by hand for the plate, the half space and the shear.
    const plate = Math.sqrt(24e9 * 14e9) / (1 - (0.12 * 0.12 * 14) / 24);
    const perSquare = (d: number, t: number): number =>
      (3 * d ** 4) / (512 * t ** 3 * plate) + d / (Math.PI * plate) + (3 * d * d) / (64 * 3e9 * t);
    const off = (root: number): number =>
      tests.reduce(
        (sum, each) =>
          sum + (each.pressure - root / Math.sqrt(perSquare(each.holeDiameter, each.laminateThickness))) ** 2,
        0,
      );
    let [low, high] = [1, 60];
    for (let i = 0; i < 200; i++) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
      if (off(a) < off(b)) high = b;
      else low = a;
    }
    const found = of(energyFromTests, { tests, ...moduli });
    expect(Math.sqrt(found.mean) / low).toBeCloseTo(1, 6);
    // The curvature of the sum of squares is twice that of the pressures for a unit.
    const bend = (off(low + 0.01) - 2 * off(low) + off(low - 0.01)) / (2 * 0.01 * 0.01);
    const error = Math.sqrt(off(low) / 8 / bend);
    expect(found.scatter / Math.sqrt(off(low) / 8)).toBeCloseTo(1, 6);
    expect(Math.sqrt(found.lowerLimit) / (low - 2.306 * error)).toBeCloseTo(1, 4);
  });

  it('is refused with two sizes of hole, and where the tests scatter too far', () => {
    const moduli = { hoopModulus: 24e9, axialModulus: 14e9, poissonRatio: 0.12, shearModulus: 3e9 };
    const tests = (sizes: readonly number[], spread: number) =>
      Array.from({ length: 9 }, (_, i) => ({
        holeDiameter: sizes[i % sizes.length],
        laminateThickness: 0.006,
        pressure: 2e7 * (i < 1 ? 1 : spread),
      }));
    expect(() => of(energyFromTests, { tests: tests([0.015, 0.0155, 0.025], 1), ...moduli })).toThrow(
      /sizes of hole.*at least/u,
    );
    // A tenth above 15 mm is 16.5 mm.
    expect(() => of(energyFromTests, { tests: tests([0.015, 0.0164999, 0.025], 1), ...moduli })).toThrow(
      /sizes of hole/u,
    );
    expect(of(energyFromTests, { tests: tests([0.015, 0.0165001, 0.025], 0.9), ...moduli }).lowerLimit).toBeGreaterThan(
      0,
    );
    expect(() => of(energyFromTests, { tests: tests([0.01, 0.015, 0.025], 1e-3), ...moduli })).toThrow(
      /nothing is left/u,
    );
  });
});

describe('a clamped square plate', () => {
  it('deflects as the least energy of a double row of cosines says', () => {
    // Each term (1 - cos 2 m pi x)(1 - cos 2 n pi y) is flat and still at the edge; side, pressure and stiffness are 1.
    const most = 7;
    const terms = Array.from({ length: most * most }, (_, i) => [1 + (i % most), 1 + Math.floor(i / most)] as const);
    const square = (m: number, p: number): number => (m === p ? 1.5 : 1);
    const slope = (m: number, p: number): number => (m === p ? (2 * m * Math.PI) ** 2 / 2 : 0);
    const bend = (m: number, p: number): number => (m === p ? (2 * m * Math.PI) ** 4 / 2 : 0);
    const rows = terms.map(([m, n]) => [
      ...terms.map(([p, q]) => bend(m, p) * square(n, q) + 2 * slope(m, p) * slope(n, q) + square(m, p) * bend(n, q)),
      1,
    ]);
    const count = rows.length;
    for (let c = 0; c < count; c++)
      for (let i = 0; i < count; i++) {
        if (i === c) continue;
        const factor = (rows[i]?.[c] ?? 0) / (rows[c]?.[c] ?? 0);
        rows[i] = (rows[i] as number[]).map((value, j) => value - factor * (rows[c]?.[j] ?? 0));
      }
    const coefficient = terms.reduce(
      (sum, [m, n], i) =>
        sum +
        ((rows[i]?.[count] ?? 0) / (rows[i]?.[i] ?? 0)) * (1 - Math.cos(m * Math.PI)) * (1 - Math.cos(n * Math.PI)),
      0,
    );
    const input = { pressure: 1e5, side: 1, thickness: 0.02, modulus: 200e9, poissonRatio: 0.3 };
    const D = (200e9 * 0.02 ** 3) / (12 * (1 - 0.09));
    expect(Math.abs(coefficient / (of(squarePlateDeflection, input) * (D / 1e5)) - 1)).toBeLessThanOrEqual(0.005);
  });
});
