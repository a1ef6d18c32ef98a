import { describe, expect, it } from 'vitest';
import { energyAtRim, holeResistance, ringResistance } from '../../src/laminate/index.js';
import type { EnergyReleaseRate, Length, Modulus } from '../../src/quantity/index.js';
import { type Blister, blisterOver, type Patch, releaseByVolume, releaseOfHalfCrack } from './patch-blister.js';
import { releaseByMoment, releaseOfArc } from './ring-blister.js';

type Material = Pick<Patch, 'hoopModulus' | 'axialModulus' | 'poissonRatio' | 'shearModulus'>;

const alike: Material = { hoopModulus: 24e9, axialModulus: 24e9, poissonRatio: 0.3, shearModulus: 24e9 / 2.6 };
const woven: Material = { hoopModulus: 24e9, axialModulus: 24e9, poissonRatio: 0.12, shearModulus: 3e9 };
const glass: Material = { hoopModulus: 24e9, axialModulus: 14e9, poissonRatio: 0.12, shearModulus: 3e9 };
const carbon: Material = { hoopModulus: 60e9, axialModulus: 12e9, poissonRatio: 0.2, shearModulus: 4e9 };

/** Outside diameter, thickness, diameter of the circle that is bonded to nothing: millimetres. */
type Size = readonly [outsideDiameter: number, thickness: number, circle: number];

const circle = ([D, t, d]: Size, material: Material): Patch => ({
  radius: D / 2000,
  thickness: t / 1000,
  along: d / 2000,
  round: d / 2000,
  hoopModulus: material.hoopModulus,
  axialModulus: material.axialModulus,
  poissonRatio: material.poissonRatio,
  shearModulus: material.shearModulus,
});

/**
 * As the library takes it: the lower of plate and ring, without its factors; over a seal the plate counts with what of the
 * energy holds at the worst place of the rim.
 */
function byLibrary(patch: Patch, overSeal = false): { readonly release: number; readonly isRing: boolean } {
  const shared = {
    laminateThickness: patch.thickness as Length,
    hoopModulus: patch.hoopModulus as Modulus,
    energyReleaseRate: 1 as EnergyReleaseRate,
    serviceFactor: 1,
  };
  const d = (2 * patch.along) as Length;
  const ply = {
    hoopModulus: patch.hoopModulus as Modulus,
    axialModulus: patch.axialModulus as Modulus,
    poissonRatio: patch.poissonRatio,
    shearModulus: patch.shearModulus as Modulus,
  };
  const energyReleaseRate = overSeal
    ? energyAtRim({ ...ply, energyReleaseRate: 1 as EnergyReleaseRate })
    : shared.energyReleaseRate;
  const plate = holeResistance({ ...shared, ...ply, energyReleaseRate, holeDiameter: d });
  const ring = ringResistance({ ...shared, outsideDiameter: (2 * patch.radius) as Length, unbondedLength: d });
  return { release: Math.max(plate, ring) ** -2, isRing: ring > plate };
}

/** No circle reaches round more than half the pipe, where the ring alone counts; no laminate is thicker than D/12. */
const sizes: readonly Size[] = [60, 219, 600].flatMap((D) =>
  [2, 6].flatMap((t) =>
    [15, 30, 54, 90, 200].flatMap((d): Size[] => (d > (Math.PI * D) / 2 || t > D / 12 ? [] : [[D, t, d]])),
  ),
);

const DEGREE = 6;

/** Release of the patch, its half crack with it, over that of the library. */
function ratios(material: Material): { size: Size; isRing: boolean; mean: number; most: number; curved: number }[] {
  return sizes.map((size) => {
    const patch = circle(size, material);
    const { release, isRing } = byLibrary(patch);
    const crack = releaseOfHalfCrack(patch);
    const blister = blisterOver(patch, DEGREE);
    const flat = blisterOver({ ...patch, radius: 1e4 }, 3);
    return {
      size,
      isRing,
      mean: (blister.mean + crack) / release,
      most: (blister.most + crack) / release,
      curved: blister.mean / flat.mean,
    };
  });
}

const highest = (values: readonly number[]): number => Math.max(...values);

describe('a blister over a patch of a pipe', () => {
  it.each<Size>([
    [200, 4, 100],
    [60, 2, 94],
    [600, 2, 30],
  ])('has come to rest at the degree it is read at: D %d, t %d, d %d mm', (...size) => {
    const [rough, fine] = [DEGREE, DEGREE + 3].map((degree) => blisterOver(circle(size, glass), degree)) as [
      Blister,
      Blister,
    ];
    expect(Math.abs(rough.volume / fine.volume - 1)).toBeLessThan(1e-5);
    expect(Math.abs(rough.mean / fine.mean - 1)).toBeLessThan(1e-3);
    expect(Math.abs(rough.most / fine.most - 1)).toBeLessThan(5e-3);
    expect(Math.abs(releaseByVolume(circle(size, glass), DEGREE) / rough.mean - 1)).toBeLessThan(1e-3);
  });

  it('releases what a clamped plate does on a flat: 3 d^4 (1 - nu^2)/(512 E t^3) and 3 d^2/(64 G t)', () => {
    const { mean } = blisterOver({ ...circle([2e7, 1, 30], alike), thickness: 0.001 }, 4);
    const bending = (3 * 0.03 ** 4 * 0.91) / (512 * 24e9 * 0.001 ** 3);
    const shear = (3 * 0.03 ** 2) / (64 * alike.shearModulus * 0.001);
    expect(mean / (bending + shear)).toBeCloseTo(1, 5);
  });

  const thin = { ...alike, poissonRatio: 0, shearModulus: 12e9, radius: 0.1, thickness: 0.0005 };
  const lengthOf = (times: number) => times * Math.sqrt(0.2 * 0.0005);
  const strip = (times: number) => ({
    radius: 0.1,
    thickness: 0.0005,
    length: lengthOf(times),
    hoopModulus: 24e9,
    bendingStiffness: (24e9 * 0.0005 ** 3) / 12,
  });

  it.each([1, 1.5, 2])(
    'releases at its ends what a ring does where it reaches far round the pipe: %d sqrt(D t)',
    (times) => {
      const { atEnd } = blisterOver({ ...thin, along: lengthOf(times) / 2, round: 0.1 }, DEGREE);
      expect(Math.abs(atEnd / releaseByMoment(strip(times)) - 1)).toBeLessThan(0.02);
    },
  );

  it.each([1, 2.2])('releases at its sides what an arc does where it is long along the pipe: %d sqrt(D t)', (times) => {
    const { atSide } = blisterOver({ ...thin, along: 0.1, round: lengthOf(times) / 2 }, DEGREE);
    expect(Math.abs(atSide / releaseOfArc(strip(times)) - 1)).toBeLessThan(0.02);
  });
});

describe('the lower of plate and ring against a blister over a round patch', () => {
  it('is not passed anywhere by a laminate that is alike in all directions, neither in the mean nor at a place', () => {
    const found = ratios(alike);
    expect(found.length).toBeGreaterThanOrEqual(20);
    expect(highest(found.map(({ mean }) => mean))).toBeLessThan(1.0005);
    expect(highest(found.map(({ most }) => most))).toBeLessThan(1.0005);
  });

  it.each([
    ['woven', woven, 1.1, 1.12, 1.3, 1.02],
    ['glass', glass, 1.07, 1.085, 1.5, 1.01],
    ['carbon', carbon, 1.04, 1.06, 1.67, 1.06],
  ] as const)(
    'is passed in the mean only by what the mean modulus of the plate leaves out, and at a place by much more: %s',
    (_, material, least, most, atPlace, asRing) => {
      const found = ratios(material);
      const mean = highest(found.map((each) => each.mean));
      // Known, and no guard: see the known problem of laminates over a seal.
      expect(mean).toBeGreaterThan(least);
      expect(mean).toBeLessThan(most);
      // The curvature of the pipe never adds to it.
      expect(highest(found.map(({ curved }) => curved))).toBeLessThan(1.0005);
      expect(highest(found.map((each) => each.most))).toBeGreaterThan(1.2);
      expect(highest(found.map((each) => each.most))).toBeLessThan(atPlace);
      // Where the ring counts, no place passes it by more than this, the mean by nothing.
      const rings = found.filter(({ isRing }) => isRing);
      expect(rings.length).toBeGreaterThan(3);
      expect(highest(rings.map(({ mean: each }) => each))).toBeLessThan(0.75);
      expect(highest(rings.map((each) => each.most))).toBeLessThan(asRing);
    },
  );

  it.each([
    ['alike', alike],
    ['woven', woven],
    ['glass', glass],
    ['carbon', carbon],
  ] as const)('over a seal, by the energy at the rim, is passed at no place: %s', (_, material) => {
    const rims = sizes.map((size) => {
      const patch = circle(size, material);
      const { release, isRing } = byLibrary(patch, true);
      return { isRing, most: (blisterOver(patch, DEGREE).most + releaseOfHalfCrack(patch)) / release };
    });
    const plates = rims.filter(({ isRing }) => !isRing);
    expect(plates.length).toBeGreaterThan(5);
    expect(highest(plates.map(({ most }) => most))).toBeLessThan(1.0005);
    // Not so safe that it is another equation.
    expect(highest(plates.map(({ most }) => most))).toBeGreaterThan(0.8);
    expect(highest(rims.map(({ most }) => most))).toBeLessThan(1.06);
  });

  it('is passed at the side of a circle, and more so once the crack there has grown by a tenth', () => {
    const at = circle([600, 2, 30], glass);
    const before = blisterOver(at, DEGREE).atSide;
    const after = blisterOver({ ...at, round: 1.1 * at.round }, DEGREE).atSide;
    expect(before / blisterOver(at, DEGREE).mean).toBeGreaterThan(1.3);
    expect(after).toBeGreaterThan(before);
  });
});
