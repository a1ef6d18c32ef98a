import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as laminate from '../../src/laminate/index.js';
import { byDeterminants, type SlowPly, slowPlate, slowStiffness, throughThickness } from './lamination.js';

/** Classical lamination theory against plies turned as tensors, integrated by points and solved by determinants. */

const seeded = { seed: 20261125, numRuns: 60 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const drawnPly = fc.record({
  thickness: span(1e-4, 2e-3),
  angle: span(-1.57, 1.57),
  alongModulus: span(20e9, 160e9),
  acrossModulus: span(4e9, 12e9),
  shearModulus: span(2e9, 6e9),
  poissonRatio: span(0.05, 0.35),
});
const drawnPlies = fc.array(drawnPly, { minLength: 1, maxLength: 6 });
const growth = {
  alongExpansion: span(-1e-6, 8e-6),
  acrossExpansion: span(1e-5, 5e-5),
  alongSwelling: span(0, 0.05),
  acrossSwelling: span(0.2, 0.6),
};
const drawnGrowing = fc.array(
  fc.tuple(drawnPly, fc.record(growth)).map(([ply, grows]) => ({ ...ply, ...grows })),
  { minLength: 1, maxLength: 6 },
);
const loads = fc.record({
  loadX: span(-1e6, 1e6),
  loadY: span(-1e6, 1e6),
  shearFlow: span(-1e5, 1e5),
  momentX: span(-1e2, 1e2),
  momentY: span(-1e2, 1e2),
  twist: span(-1e2, 1e2),
});

/** The brands are the compiler's affair; here everything is a number. */
const call = (of: unknown, input: object): Record<string, number> =>
  (of as (input: object) => Record<string, number>)(input);
const near = (found: number | undefined, wanted: number | undefined, size: number, part = 1e-9): void =>
  expect(Math.abs((found ?? Number.NaN) - (wanted ?? Number.NaN))).toBeLessThanOrEqual(part * Math.abs(size));
const largest = (values: readonly number[]): number => Math.max(...values.map(Math.abs));
const entry = (matrix: readonly (readonly number[])[], i: number, j: number): number => matrix[i]?.[j] ?? Number.NaN;
const loadsOf = (load: Record<string, number>): number[] =>
  ['loadX', 'loadY', 'shearFlow', 'momentX', 'momentY', 'twist'].map((name) => load[name] as number);

describe('the stiffness of a ply', () => {
  it("is the inverse of its compliance ('laminate/reduced-stiffness') and turns as a tensor ('laminate/turned-stiffness')", () => {
    fc.assert(
      fc.property(drawnPly, (ply) => {
        const own = slowStiffness({ ...ply, angle: 0 });
        const reduced = call(laminate.reducedStiffness, ply);
        near(reduced['q11'], entry(own, 0, 0), entry(own, 0, 0));
        near(reduced['q12'], entry(own, 0, 1), entry(own, 0, 0));
        near(reduced['q22'], entry(own, 1, 1), entry(own, 0, 0));
        near(reduced['q66'], entry(own, 2, 2), entry(own, 0, 0));
        const turned = slowStiffness(ply);
        const library = call(laminate.turnedStiffness, ply);
        for (const [name, i, j] of [
          ['q11', 0, 0],
          ['q12', 0, 1],
          ['q22', 1, 1],
          ['q16', 0, 2],
          ['q26', 1, 2],
          ['q66', 2, 2],
        ] as const)
          near(library[name], entry(turned, i, j), entry(own, 0, 0));
      }),
      seeded,
    );
  });

  it("leaves a stress of the axes what it is in those of the ply ('laminate/turned-stress')", () => {
    fc.assert(
      fc.property(span(-1e8, 1e8), span(-1e8, 1e8), span(-1e8, 1e8), span(-1.57, 1.57), (x, y, xy, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const stress = [
          [x, xy],
          [xy, y],
        ];
        const turn = [
          [c, s],
          [-s, c],
        ];
        const inPly = (i: number, j: number): number =>
          [0, 1].reduce(
            (sum, k) =>
              sum + [0, 1].reduce((part, l) => part + entry(turn, i, k) * entry(turn, j, l) * entry(stress, k, l), 0),
            0,
          );
        const library = call(laminate.turnedStress, { stressX: x, stressY: y, shearStress: xy, angle });
        near(library['along'], inPly(0, 0), 1e8);
        near(library['across'], inPly(1, 1), 1e8);
        near(library['shear'], inPly(0, 1), 1e8);
      }),
      seeded,
    );
  });
});

describe('the stiffness of a laminate', () => {
  it("is that of its plies integrated through the thickness ('laminate/laminate-stiffness')", () => {
    fc.assert(
      fc.property(drawnPlies, (plies) => {
        const plate = slowPlate(plies);
        const library = call(laminate.laminateStiffness, { plies });
        const places = [
          ['11', 0, 0],
          ['12', 0, 1],
          ['22', 1, 1],
          ['16', 0, 2],
          ['26', 1, 2],
          ['66', 2, 2],
        ] as const;
        const size = Math.max(entry(plate, 0, 0), entry(plate, 1, 1));
        const h = plies.reduce((sum, { thickness }) => sum + thickness, 0);
        for (const [name, i, j] of places) {
          near(library[`a${name}`], entry(plate, i, j), size);
          near(library[`b${name}`], entry(plate, i, j + 3), size * h);
          near(library[`d${name}`], entry(plate, i + 3, j + 3), size * h * h);
        }
        near(library['thickness'], h, h);
      }),
      seeded,
    );
  });

  it("gives the strains that determinants give ('laminate/mid-plane-strains')", () => {
    fc.assert(
      fc.property(drawnPlies, loads, (plies, load) => {
        const wanted = byDeterminants(slowPlate(plies), loadsOf(load));
        const library = call(laminate.midPlaneStrains, { plies, ...load });
        const names = ['strainX', 'strainY', 'shearStrain', 'curvatureX', 'curvatureY', 'curvatureXY'];
        names.forEach((name, place) => {
          near(library[name], wanted[place], largest(place < 3 ? wanted.slice(0, 3) : wanted.slice(3)), 1e-7);
        });
      }),
      seeded,
    );
  });

  it("has the moduli of its strains under one pull at a time, held or free to bend ('laminate/effective-constants')", () => {
    fc.assert(
      fc.property(drawnPlies, fc.constantFrom('held' as const, 'free' as const), (plies, bending) => {
        const whole = slowPlate(plies);
        const plate = bending === 'free' ? whole : whole.slice(0, 3).map((row) => row.slice(0, 3));
        const h = plies.reduce((sum, { thickness }) => sum + thickness, 0);
        const under = (place: number): number[] =>
          byDeterminants(
            plate,
            plate.map((_, i) => (i === place ? 1e6 : 0)),
          );
        const [x, y, xy] = [under(0), under(1), under(2)];
        const library = call(laminate.effectiveConstants, { plies, bending });
        near((library['modulusX'] as number) * h * (x[0] as number), 1e6, 1e6, 1e-7);
        near((library['modulusY'] as number) * h * (y[1] as number), 1e6, 1e6, 1e-7);
        near((library['shearModulus'] as number) * h * (xy[2] as number), 1e6, 1e6, 1e-7);
        near(library['poissonXY'], -(x[1] as number) / (x[0] as number), 1, 1e-6);
        near(library['poissonYX'], -(y[0] as number) / (y[1] as number), 1, 1e-6);
      }),
      seeded,
    );
  });

  it('of one ply is that of a ply off its axis: the lamination theory and laminate/off-axis-modulus are one', () => {
    fc.assert(
      fc.property(drawnPly, span(0, 1.57), (ply, angle) => {
        const constants = call(laminate.effectiveConstants, { plies: [{ ...ply, angle }], bending: 'held' });
        const { alongModulus, acrossModulus, shearModulus, poissonRatio } = ply;
        const input = { alongModulus, acrossModulus, shearModulus, poissonRatio, angle };
        const modulus = (laminate.offAxisModulus as unknown as (input: object) => number)(input);
        near(constants['modulusX'], modulus, modulus);
      }),
      seeded,
    );
  });
});

/** Free strain of a ply in x, y and shear: two pulls of a tensor of second order. */
function freeStrain(ply: SlowPly & Record<string, number>, dT: number, dc: number): number[] {
  const grow = [
    (ply['alongExpansion'] as number) * dT + (ply['alongSwelling'] as number) * dc,
    (ply['acrossExpansion'] as number) * dT + (ply['acrossSwelling'] as number) * dc,
  ];
  const turn = [
    [Math.cos(ply.angle), Math.sin(ply.angle)],
    [-Math.sin(ply.angle), Math.cos(ply.angle)],
  ];
  const at = (p: number, q: number): number =>
    [0, 1].reduce((sum, i) => sum + entry(turn, i, p) * entry(turn, i, q) * (grow[i] as number), 0);
  return [at(0, 0), at(1, 1), 2 * at(0, 1)];
}

function heldLoads(plies: readonly SlowPly[], dT: number, dc: number): number[] {
  const held = new Array<number>(6).fill(0);
  throughThickness(plies, (z, weight, ply) => {
    const free = freeStrain(ply as SlowPly & Record<string, number>, dT, dc);
    slowStiffness(ply).forEach((row, i) => {
      const stress = row.reduce((sum, value, j) => sum + value * (free[j] as number), 0);
      held[i] = (held[i] as number) + weight * stress;
      held[i + 3] = (held[i + 3] as number) + weight * stress * z;
    });
  });
  return held;
}

describe('temperature and moisture', () => {
  it("load a laminate by the stresses of plies that are held ('laminate/hygrothermal-resultants')", () => {
    fc.assert(
      fc.property(drawnGrowing, span(-150, 150), span(-0.02, 0.02), (plies, temperatureChange, moistureChange) => {
        const wanted = heldLoads(plies, temperatureChange, moistureChange);
        const library = call(laminate.hygrothermalResultants, { plies, temperatureChange, moistureChange });
        loadsOf(library).forEach((value, place) => {
          near(value, wanted[place], place < 3 ? 1e6 : 1e3, 1e-8);
        });
      }),
      seeded,
    );
  });

  it("expand it to where its plies hold each other in balance ('laminate/laminate-expansion')", () => {
    fc.assert(
      fc.property(drawnGrowing, (plies) => {
        const plate = slowPlate(plies)
          .slice(0, 3)
          .map((row) => row.slice(0, 3));
        const wanted = byDeterminants(plate, heldLoads(plies, 1, 0).slice(0, 3));
        const library = call(laminate.laminateExpansion, { plies });
        near(library['expansionX'], wanted[0], 5e-5, 1e-7);
        near(library['expansionY'], wanted[1], 5e-5, 1e-7);
        near(library['shearing'], wanted[2], 5e-5, 1e-7);
      }),
      seeded,
    );
  });

  it("leave stresses in the plies that carry the loads and no more ('laminate/ply-stresses')", () => {
    fc.assert(
      fc.property(
        drawnGrowing,
        loads,
        span(-150, 150),
        span(-0.02, 0.02),
        (plies, load, temperatureChange, moistureChange) => {
          const { states } = laminate.plyStresses({ plies, ...load, temperatureChange, moistureChange } as never);
          expect(states.length).toBe(2 * plies.length);
          const carried = new Array<number>(6).fill(0);
          let bottom = -plies.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
          plies.forEach((ply, index) => {
            const [c, s] = [Math.cos(ply.angle), Math.sin(ply.angle)];
            const faces = states.slice(2 * index, 2 * index + 2).map((state) => {
              const [a, b, t] = [
                state.alongStress as number,
                state.acrossStress as number,
                state.shearStress as number,
              ];
              return [
                a * c * c + b * s * s - 2 * t * c * s,
                a * s * s + b * c * c + 2 * t * c * s,
                (a - b) * c * s + t * (c * c - s * s),
              ];
            });
            const [low, high] = faces as [number[], number[]];
            const t = ply.thickness;
            for (let i = 0; i < 3; i++) {
              const [from, to] = [low[i] as number, high[i] as number];
              carried[i] = (carried[i] as number) + ((from + to) / 2) * t;
              // The stress runs straight from face to face.
              carried[i + 3] =
                (carried[i + 3] as number) + t * (((from + to) / 2) * (bottom + t / 2) + ((to - from) * t) / 12);
            }
            bottom += t;
          });
          loadsOf(load).forEach((value, place) => {
            near(carried[place], value, place < 3 ? 1e6 : 1e3, 1e-6);
          });
        },
      ),
      seeded,
    );
  });
});

describe('the first ply to fail', () => {
  const strengths = {
    alongTension: span(5e8, 2e9),
    alongCompression: span(3e8, 1e9),
    acrossTension: span(2e7, 6e7),
    acrossCompression: span(8e7, 2e8),
    shearStrength: span(3e7, 8e7),
  };
  const strong = fc.array(
    fc.tuple(drawnPly, fc.record(strengths)).map(([ply, more]) => ({ ...ply, ...more })),
    { minLength: 1, maxLength: 5 },
  );

  it("meets its strain at the load times the ratio, and no other ply passes its own ('laminate/first-ply-failure')", () => {
    fc.assert(
      fc.property(strong, span(-1e6, 1e6), span(1e4, 1e6), span(-1e5, 1e5), (plies, x, y, xy) => {
        const found = call(laminate.firstPlyFailure, { plies, loadX: x, loadY: y, shearFlow: xy });
        const ratio = found['byStrain'] as number;
        const response = byDeterminants(slowPlate(plies), [x * ratio, y * ratio, xy * ratio, 0, 0, 0]);
        near(found['strainX'], response[0], 0.05, 1e-7);
        near(found['strainY'], response[1], 0.05, 1e-7);
        let most = 0;
        let bottom = -plies.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
        plies.forEach((ply, index) => {
          for (const z of [bottom, bottom + ply.thickness]) {
            const e = [0, 1, 2].map((i) => (response[i] as number) + z * (response[i + 3] as number));
            const strain = [
              [e[0], (e[2] as number) / 2],
              [(e[2] as number) / 2, e[1]],
            ] as number[][];
            const turn = [
              [Math.cos(ply.angle), Math.sin(ply.angle)],
              [-Math.sin(ply.angle), Math.cos(ply.angle)],
            ];
            const at = (p: number, q: number): number =>
              [0, 1].reduce(
                (sum, i) =>
                  sum +
                  [0, 1].reduce((part, j) => part + entry(turn, p, i) * entry(turn, q, j) * entry(strain, i, j), 0),
                0,
              );
            const used = Math.max(
              at(0, 0) > 0
                ? (at(0, 0) * ply.alongModulus) / ply.alongTension
                : (-at(0, 0) * ply.alongModulus) / ply.alongCompression,
              at(1, 1) > 0
                ? (at(1, 1) * ply.acrossModulus) / ply.acrossTension
                : (-at(1, 1) * ply.acrossModulus) / ply.acrossCompression,
              (Math.abs(2 * at(0, 1)) * ply.shearModulus) / ply.shearStrength,
            );
            expect(used).toBeLessThanOrEqual(1 + 1e-6);
            if (index + 1 === found['ply']) most = Math.max(most, used);
          }
          bottom += ply.thickness;
        });
        near(most, 1, 1, 1e-6);
      }),
      seeded,
    );
  });
});

describe('a cloth or mat', () => {
  it("has the mean of the fourth power of the cosine over the directions of its fibres ('laminate/orientation-factor')", () => {
    const factor = (angles: readonly number[]): number =>
      laminate.orientationFactor({ directions: angles.map((angle) => ({ angle, share: 2 })) as never });
    const n = 720;
    const plane = Array.from({ length: n }, (_, i) => ((i + 0.5) * Math.PI) / n - Math.PI / 2);
    expect(factor(plane)).toBeCloseTo(3 / 8, 12);
    // In space the share of an angle off the load is its sine.
    const space = plane.map((angle) => ({ angle, share: Math.abs(Math.sin(angle)) }));
    expect(laminate.orientationFactor({ directions: space as never })).toBeCloseTo(1 / 5, 4);
  });
});
