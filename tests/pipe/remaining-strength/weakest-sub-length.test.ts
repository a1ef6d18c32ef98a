import { describe, expect, it } from 'vitest';
import { effectiveArea, foliasApi579, localMetalLossProfile } from '../../../src/pipe/index.js';
import { gauge, length, stress } from '../../../src/quantity/index.js';
import { type Random, seeded } from '../../../verification/oracles/random.js';

const PIPE = { outsideDiameter: length.mm(323.9), wallThickness: length.mm(9.53), flowStress: stress.MPa(390) };
const SHELL = { insideDiameter: length.mm(304.84), correctedWall: length.mm(9.53), workingPressure: gauge.bar(40) };
const { outsideDiameter: D, wallThickness: t, flowStress: S } = PIPE;

interface Point {
  readonly position: number;
  /** Part of the wall that is lost. */
  readonly lost: number;
}

/** The least (1 - a)/(1 - a/M) over every pair of points, each by itself. */
function byBruteForce(profile: readonly Point[], bulging: (length: number) => number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, first] of profile.entries()) {
    let area = 0;
    let before = first;
    for (const point of profile.slice(i + 1)) {
      area += ((point.position - before.position) * (before.lost + point.lost)) / 2;
      before = point;
      const length = point.position - first.position;
      const share = area / length;
      least = Math.min(least, (1 - share) / (1 - share / bulging(length)));
    }
  }
  return least;
}

function modifiedB31g(length: number): number {
  const z = length ** 2 / (D * t);
  return z <= 50 ? Math.sqrt(1 + 0.6275 * z - 0.003375 * z ** 2) : 0.032 * z + 3.3;
}

const api579 = (length: number): number =>
  foliasApi579({ lengthParameter: (1.285 * length) / Math.sqrt(SHELL.insideDiameter * SHELL.correctedWall) });

const point = ({ position, lost }: Point) => ({ position: length.m(position), depth: length.m(lost * t) });
const wall = ({ position, lost }: Point) => ({ position: length.m(position), wall: length.m((1 - lost) * t) });

function expectB31g(profile: readonly Point[]): void {
  const { failurePressure } = effectiveArea({ ...PIPE, profile: profile.map(point) });
  const least = byBruteForce(profile, modifiedB31g);
  expect(Math.abs(failurePressure / (((S * 2 * t) / D) * least) - 1)).toBeLessThan(1e-9);
}

function expectApi579(profile: readonly Point[]): void {
  const { remainingStrengthFactor } = localMetalLossProfile({ ...SHELL, profile: profile.map(wall) });
  expect(Math.abs(remainingStrengthFactor / byBruteForce(profile, api579) - 1)).toBeLessThan(1e-9);
}

/** What is lost at the points of a profile, from the start of it (0) to its end (1). */
const SHAPES: Readonly<Record<string, (random: Random, part: number) => number>> = {
  'pits in thin loss': (random) => (random() < 0.1 ? 0.7 : 0.1) * random(),
  'rough all over': (random) => 0.7 * random(),
  'waves nearly alike': (random, part) => 0.4 + 0.2 * Math.sin(40 * part) + 0.02 * random(),
  'a groove within sound wall': (random, part) => (part > 0.3 && part < 0.4 ? 0.6 + 0.05 * random() : 0),
  'deep at its end': (random, part) => (part === 1 ? 0.75 : 0.05 * random()),
  'deep at its start': (random, part) => (part === 0 ? 0.75 : 0.05 * random()),
  'deeper from end to end': (_, part) => 0.7 * part,
  'hardly any loss': (random) => (random() < 0.05 ? 1e-3 * random() : 0),
};

/** Points about so far from each other, on either side of the origin. */
function profileOf(lost: readonly number[], random: Random, step: number): Point[] {
  let position = -step * lost.length * random();
  return lost.map((each) => {
    position += step * (0.1 + 2 * random() ** 2);
    return { position, lost: each };
  });
}

function shapeOf(shape: string, points: number, step = 0.003): Point[] {
  const random = seeded(`${shape} ${points}`);
  const lost = Array.from({ length: points }, (_, index) => SHAPES[shape]?.(random, index / (points - 1)) ?? 0);
  return profileOf(lost, random, step);
}

/** Pits of any depth in sound wall or in an even or uneven loss. */
function pits(random: Random): number[] {
  const size = 2 + Math.floor(80 * random());
  const [around, rough] = [random() < 0.3 ? 0 : 0.5 * random(), random() < 0.5 ? 0 : 0.3];
  const lost = Array.from({ length: size }, () => around * (1 - rough * random()));
  for (let pit = Math.ceil(3 * random()); pit > 0; pit--) {
    const [first, width, depth] = [Math.floor(size * random()), 1 + Math.floor(20 * random() ** 3), 0.75 * random()];
    for (let i = first; i < Math.min(size, first + width); i++) lost[i] = depth * (1 - rough * random());
  }
  return lost;
}

/** On either side of the blocks, which are powers of two. */
const SIZES = [2, 3, 7, 8, 9, 10, 15, 16, 17, 24, 31, 32, 33, 63, 64, 65, 127, 129];

describe('the weakest sub-length', () => {
  it.each(SIZES.map((points) => [points]))('of %d points is that of a search through every pair of them', (points) => {
    for (const shape of Object.keys(SHAPES)) {
      expectB31g(shapeOf(shape, points));
      expectApi579(shapeOf(shape, points));
    }
  });

  it.each([[400], [401], [402]])(
    'of %d points, where some are looked at first, is that of a search through every pair of them',
    (points) => {
      for (const shape of ['waves nearly alike', 'rough all over']) expectB31g(shapeOf(shape, points));
    },
  );

  it.each([[1e-4], [0.002], [0.1], [5], [200]])(
    'of pits %d m from point to point is that of a search through every pair of them',
    (step) => {
      const random = seeded(`pits ${step}`);
      for (let draw = 0; draw < 200; draw++) {
        const profile = profileOf(pits(random), random, step);
        if (draw % 10 === 0) expectApi579(profile);
        else expectB31g(profile);
      }
    },
  );

  it.each([[0.1], [0.2], [0.5], [0.7]])(
    'of an even loss that is %d of the wall deeper at one point is that of a search through every pair of them',
    (more) => {
      for (const step of [0.005, 0.02])
        for (const points of [25, 33])
          for (let deeper = 0; deeper < points; deeper++) {
            const lost = Array.from({ length: points }, (_, index) => (index === deeper ? 0.05 + more : 0.05));
            expectB31g(lost.map((each, index) => ({ position: index * step, lost: each })));
          }
    },
  );

  it.each([
    [20_000, 0, 0],
    [20_000, 0.3, 0],
    [200_000, 0.3, 0.3],
  ])('of %d points lies between those of their least and most loss: %d and %d more', (points, least, more) => {
    const profile = Array.from({ length: points }, (_, index) => ({
      position: length.mm(index),
      depth: length.m(t * (least + more * Math.abs(Math.sin(index ** 2)))),
    }));
    const { failurePressure } = effectiveArea({ ...PIPE, profile });
    const allAlong = (lost: number) =>
      (((S * 2 * t) / D) * (1 - lost)) / (1 - lost / modifiedB31g((points - 1) / 1000));
    expect(failurePressure).toBeGreaterThan(allAlong(least + more) * (1 - 1e-9));
    expect(failurePressure).toBeLessThan(allAlong(least) * (1 + 1e-9));
  });
});
