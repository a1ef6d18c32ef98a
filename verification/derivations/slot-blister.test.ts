import { describe, expect, it } from 'vitest';
import {
  slotCrossOver,
  slotPressureCeiling,
  slotResistance,
  softEdgeFactor,
  stripModulus,
  wideSlotResistance,
} from '../../src/laminate/index.js';
import type { EnergyReleaseRate, Length, Modulus } from '../../src/quantity/index.js';
import { blisterOver, type Patch } from './patch-blister.js';
import { releaseByMoment, releaseOfMembrane } from './ring-blister.js';
import { curvedRelease, layerOf, type SlotLayer, slotRelease } from './slot-blister.js';

/** Release at pressure 1 by the clamped strip, as recalled: P = 1/sqrt(K) at an energy of 1. */
function ofStrip(W: number, t: number, E: number, G: number, edgeFactor = 1, turningRoot = 1): number {
  return (
    slotResistance({
      edgeFactor,
      turningRoot,
      laminateThickness: t as Length,
      slotWidth: W as Length,
      stripModulus: E as Modulus,
      shearModulus: G as Modulus,
      energyReleaseRate: 1 as EnergyReleaseRate,
      serviceFactor: 1,
    }) ** -2
  );
}

function ofRing(W: number, t: number, D: number, Ec: number, E: number, overshoot?: number): number {
  const input = {
    laminateThickness: t as Length,
    outsideDiameter: D as Length,
    slotWidth: W as Length,
    hoopModulus: Ec as Modulus,
    stripModulus: E as Modulus,
    energyReleaseRate: 1 as EnergyReleaseRate,
    serviceFactor: 1,
  };
  return wideSlotResistance(overshoot === undefined ? input : { ...input, overshoot }) ** -2;
}

const alike: SlotLayer = (() => {
  const nu = 0.3;
  const [lambda, mu] = [nu / ((1 + nu) * (1 - 2 * nu)), 1 / (2 * (1 + nu))];
  return { across: lambda + 2 * mu, through: lambda + 2 * mu, coupling: lambda, shear: mu };
})();

describe('a laminate over an endless slot, by finite elements', () => {
  it.each([
    [1, 0.89],
    [2, 0.98],
    [5, 1.13],
  ])('that is alike in all directions, %d thicknesses wide: the strip holds %d of it', (W, printed) => {
    const ratio = Math.sqrt(slotRelease(W, alike, 0.1) / ofStrip(W, 1, 1 / 0.91, 1 / 2.6));
    expect(Math.abs(ratio - printed)).toBeLessThan(0.01);
  });

  it('that is softer across the slot is not that of the mean modulus, but of the modulus across', () => {
    const glass = slotRelease(8, layerOf({ modulus: 14, through: 8, shear: 3 }), 0.1);
    expect(Math.sqrt(glass / ofStrip(8, 1, 14, 3))).toBeLessThan(1.175);
    expect(Math.sqrt(glass / ofStrip(8, 1, Math.sqrt(24 * 14), 3))).toBeGreaterThan(1.26);
  });
});

describe('a laminate soft through its thickness, over an endless slot, by finite elements', () => {
  const layers = [
    ['alike or nearly', { modulus: 8, through: 8, shear: 3 }],
    ['glass along', { modulus: 14, through: 8, shear: 3 }],
    ['glass along, soft', { modulus: 14, through: 6, shear: 3 }],
    ['glass round', { modulus: 24, through: 8, shear: 3 }],
    ['glass round, soft', { modulus: 24, through: 6, shear: 2 }],
    ['soft in shear', { modulus: 40, through: 8, shear: 1.5 }],
    ['carbon', { modulus: 60, through: 8, shear: 4 }],
    ['stiff carbon', { modulus: 100, through: 8, shear: 4 }],
  ] as const;
  const widths = [0.25, 0.5, 1, 2, 3, 4, 6, 8, 12, 20];
  const released = (W: number, layer: (typeof layers)[number][1]): number =>
    slotRelease(W, layerOf(layer), W < 1 ? 0.1 : 0.2);

  it.each(layers)('releases no more than the library counts on, at any width: %s', (_, layer) => {
    const { modulus: E, shear: G } = layer;
    const h = softEdgeFactor({ stripModulus: E as Modulus, shearModulus: G as Modulus });
    const ratios = widths.map((W) => released(W, layer) / ofStrip(W, 1, E, G, h));
    // What the 1.4 is taken from; and no other equation at its worst place.
    expect(Math.max(...ratios)).toBeLessThan(1.4);
    expect(Math.max(...ratios)).toBeGreaterThan(1.25);
  });

  it('is far weaker over a narrow slot than the clamped strip that is recalled', () => {
    const [, carbon] = layers[7];
    expect(Math.sqrt(released(0.25, carbon) / ofStrip(0.25, 1, 100, 4))).toBeGreaterThan(1.85);
    const [, glass] = layers[3];
    expect(Math.sqrt(released(0.5, glass) / ofStrip(0.5, 1, 24, 3))).toBeGreaterThan(1.15);
  });

  it('has the ceiling at which no thickness holds more, with the edge that is soft', () => {
    const bond = { stripModulus: 60 as Modulus, energyReleaseRate: 1 as EnergyReleaseRate, serviceFactor: 1 };
    const h = softEdgeFactor({ stripModulus: 60 as Modulus, shearModulus: 4 as Modulus });
    const ceiling = slotPressureCeiling({ ...bond, slotWidth: 1 as Length, edgeFactor: h });
    expect(ceiling ** -2 / ofStrip(1, 1e6, 60, 4, h, 1.4)).toBeCloseTo(1, 4);
  });
});

describe('a curved strip over a slot along the pipe', () => {
  const strip = { radius: 0.1, thickness: 0.003, modulus: 24e9, shear: 3e9 };

  it('is the flat strip where it is narrow, and the ring where it is wide', () => {
    const narrow = curvedRelease({ ...strip, width: 0.004 });
    expect(narrow / ofStrip(0.004, 0.003, 24e9, 3e9)).toBeCloseTo(1, 2);
    const wide = curvedRelease({ ...strip, radius: 10, thickness: 0.001, width: 3 }) - (Math.PI * 3) / (4 * 24e9);
    expect(wide / (10 ** 2 / (2 * 24e9 * 0.001))).toBeCloseTo(1, 2);
  });

  it('passes neither the flat strip nor the ring with its overshoot, at any width, thickness or shear', () => {
    let [highest, most] = [0, 0];
    for (const t of [0.0004, 0.001, 0.003, 0.01, 0.0167])
      for (const G of [12e9, 5e9, 1e9])
        for (let times = 0.1; times < 8; times += 0.05) {
          const W = times * Math.sqrt(0.2 * t);
          if (W > 0.2 * Math.PI) break;
          const release = curvedRelease({ radius: 0.1, thickness: t, width: W, modulus: 24e9, shear: G });
          const bound = Math.min(ofStrip(W, t, 24e9, G), ofRing(W, t, 0.2, 24e9, 24e9));
          highest = Math.max(highest, release / bound);
          const crack = (Math.PI * W) / (4 * 24e9);
          most = Math.max(most, (release - crack) / (0.1 ** 2 / (2 * 24e9 * t)));
        }
    expect(highest).toBeLessThan(1.0005);
    // What the overshoot of 1.6 is taken from.
    expect(most).toBeGreaterThan(1.55);
    expect(most).toBeLessThan(1.6);
  });
});

describe('a ring that bridges a slot round the pipe', () => {
  const ring = { radius: 0.1, thickness: 0.001, hoopModulus: 24e9, bendingStiffness: (24e9 * 1e-9) / 12 };

  it('passes the membrane by about a tenth near two sqrt(D t), and neither bound of the library', () => {
    let most = 0;
    for (let times = 0.3; times < 6; times += 0.05) {
      const length = times * Math.sqrt(0.2 * 0.001);
      const release = releaseByMoment({ ...ring, length });
      most = Math.max(most, release / releaseOfMembrane({ ...ring, length }));
      const bound = Math.min(ofStrip(length, 0.001, 24e9, 1e15), ofRing(length, 0.001, 0.2, 24e9, 24e9));
      expect(release / bound).toBeLessThan(1);
    }
    expect(most).toBeGreaterThan(1.1);
    expect(most).toBeLessThan(1.12);
  });

  it('crosses the bending of the strip where the library says', () => {
    const width = slotCrossOver({
      outsideDiameter: 0.2 as Length,
      laminateThickness: 0.001 as Length,
      hoopModulus: 24e9 as Modulus,
      stripModulus: 14e9 as Modulus,
    });
    const bending = width ** 4 / (24 * 14e9 * 0.001 ** 3);
    expect(bending / (1.6 * releaseOfMembrane({ ...ring, length: width }))).toBeCloseTo(1, 10);
  });
});

describe('an opening of any shape', () => {
  const materials = [
    ['alike', { hoopModulus: 24e9, axialModulus: 24e9, poissonRatio: 0.3, shearModulus: 24e9 / 2.6 }],
    ['glass', { hoopModulus: 24e9, axialModulus: 14e9, poissonRatio: 0.12, shearModulus: 3e9 }],
    ['carbon', { hoopModulus: 60e9, axialModulus: 12e9, poissonRatio: 0.2, shearModulus: 4e9 }],
  ] as const;

  it.each(materials)('passes the lowest of strips and ring at no place of its rim: %s', (_, ply) => {
    const Ec = stripModulus({
      bridgingModulus: ply.hoopModulus as Modulus,
      hoopModulus: ply.hoopModulus as Modulus,
      axialModulus: ply.axialModulus as Modulus,
      poissonRatio: ply.poissonRatio,
    });
    const Ea = Ec * (ply.axialModulus / ply.hoopModulus);
    const found: number[] = [];
    for (const [D, t] of [
      [0.168, 0.003],
      [0.6, 0.004],
      [0.6, 0.016],
    ] as const)
      for (const [along, round] of [
        [0.015, 0.075],
        [0.03, 0.03],
        [0.03, 0.006],
        [0.08, 0.016],
        [0.08, 0.2],
        [0.2, 0.08],
      ] as const) {
        const patch: Patch = { radius: D / 2, thickness: t, along: along / 2, round: round / 2, ...ply };
        const bounds = [
          ofStrip(along, t, Ea, ply.shearModulus),
          ofStrip(round, t, Ec, ply.shearModulus),
          ofRing(Math.min(along, round), t, D, ply.hoopModulus, Math.min(Ea, Ec)),
        ];
        const crack = (Math.PI * Math.min(along, round)) / (4 * Math.max(Ea, Ec));
        found.push((blisterOver(patch, 6).most + crack) / Math.min(...bounds));
      }
    expect(Math.max(...found)).toBeLessThan(1.01);
    // Not so safe that it is another equation.
    expect(Math.max(...found)).toBeGreaterThan(0.9);
  });
});
