import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DepthPoint, effectiveArea, profileAtEndOfLife } from '../../../src/pipe/index.js';
import { corrosionRate, type Length, length, stress, time } from '../../../src/quantity/index.js';

const runs = { seed: 20261125, numRuns: 300 } as const;
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const points = (list: readonly (readonly [position: number, depth: number])[]): DepthPoint[] =>
  list.map(([position, depth]) => ({ position: length.mm(position), depth: length.mm(depth) }));
const inMillimetres = (profile: readonly DepthPoint[]): number[][] =>
  profile.map(({ position, depth }) => [position, depth].map((value) => Number(length.inMm(value).toFixed(9))));

/** A pitted track between two sound ends: gaps and depths in millimetres. */
const track = fc.array(fc.tuple(real(1, 50), real(0, 5)), { minLength: 2, maxLength: 12 }).map((pits) => {
  let position = 0;
  const list: [position: number, depth: number][] = [[0, 0]];
  for (const [gap, depth] of pits) {
    position += gap;
    list.push([position, depth]);
  }
  return points([...list, [position + 10, 0]]);
});

describe('the profile of a metal loss at the end of life', () => {
  it('deepens everywhere between the sound ends, which move outwards', () => {
    const then = profileAtEndOfLife({
      profile: points([
        [0, 0],
        [20, 3],
        [40, 0],
        [60, 4],
        [80, 0],
      ]),
      depthRate: corrosionRate.mmPerYear(0.1),
      lengthRate: corrosionRate.mmPerYear(0.5),
      life: time.year(10),
      greatestDepth: length.mm(5),
    });
    expect(inMillimetres(then.profile)).toEqual([
      [-5, 0],
      [20, 4],
      [40, 1],
      [60, 5],
      [85, 0],
    ]);
    expect(length.inMm(then.length)).toBeCloseTo(90, 9);
  });

  it('deepens at an end that is not sound, and nowhere beyond the depth of the defect', () => {
    const then = profileAtEndOfLife({
      profile: points([
        [0, 1],
        [30, 4],
        [60, 0],
      ]),
      depthRate: corrosionRate.mmPerYear(0.2),
      lengthRate: corrosionRate.mmPerYear(0),
      life: time.year(10),
      greatestDepth: length.mm(5.5),
    });
    expect(inMillimetres(then.profile)).toEqual([
      [0, 3],
      [30, 5.5],
      [60, 0],
    ]);
  });

  it('is the profile of today where nothing grows', () => {
    fc.assert(
      fc.property(track, (profile) => {
        const still = {
          depthRate: corrosionRate.mmPerYear(0),
          lengthRate: corrosionRate.mmPerYear(0),
          life: time.year(20),
          greatestDepth: length.mm(5),
        };
        expect(profileAtEndOfLife({ profile, ...still }).profile).toEqual(profile);
      }),
      runs,
    );
  });

  it('reaches the same by two halves of the life as by the whole', () => {
    fc.assert(
      fc.property(track, real(0, 0.2), real(0, 0.5), real(0, 30), (profile, deeper, longer, years) => {
        const rates = {
          depthRate: corrosionRate.mmPerYear(deeper),
          lengthRate: corrosionRate.mmPerYear(longer),
          greatestDepth: length.mm(8),
        };
        const half = profileAtEndOfLife({ profile, ...rates, life: time.year(years / 2) });
        const twice = profileAtEndOfLife({ profile: half.profile, ...rates, life: time.year(years / 2) });
        const whole = profileAtEndOfLife({ profile, ...rates, life: time.year(years) });
        expect(twice.length).toBeCloseTo(whole.length, 12);
        for (const [i, point] of whole.profile.entries()) {
          expect(twice.profile[i]?.position).toBeCloseTo(point.position, 12);
          expect(twice.profile[i]?.depth).toBeCloseTo(point.depth, 12);
        }
      }),
      runs,
    );
  });

  it('never gives the pipe back any of its strength by deepening', () => {
    const pipe = { outsideDiameter: length.m(0.3239), wallThickness: length.mm(12.7), flowStress: stress.MPa(330) };
    const failure = (profile: readonly DepthPoint[]): number => effectiveArea({ ...pipe, profile }).failurePressure;
    fc.assert(
      fc.property(track, real(0, 0.2), (profile, deeper) => {
        // The ends stand still: a sound end that moves out only takes a point of the search with it.
        const rates = {
          depthRate: corrosionRate.mmPerYear(deeper),
          lengthRate: corrosionRate.mmPerYear(0),
          greatestDepth: length.mm(10),
        };
        const then = profileAtEndOfLife({ profile, ...rates, life: time.year(20) });
        expect(failure(then.profile)).toBeLessThanOrEqual(failure(profile) * (1 + 1e-12));
      }),
      runs,
    );
  });

  it('is refused for points out of order, one point alone, and what cannot be', () => {
    const input = {
      profile: points([
        [0, 0],
        [10, 2],
      ]),
      depthRate: corrosionRate.mmPerYear(0.1),
      lengthRate: corrosionRate.mmPerYear(0.1),
      life: time.year(10),
      greatestDepth: length.mm(5),
    };
    expect(() => profileAtEndOfLife({ ...input, profile: [...input.profile].reverse() })).toThrow(/beyond the point/u);
    expect(() => profileAtEndOfLife({ ...input, profile: input.profile.slice(1) })).toThrow(/at least 2 points/u);
    expect(() => profileAtEndOfLife({ ...input, depthRate: corrosionRate.mmPerYear(-0.1) })).toThrow(/depthRate/u);
    expect(() => profileAtEndOfLife({ ...input, greatestDepth: 0 as Length })).toThrow(/greatestDepth/u);
  });
});
