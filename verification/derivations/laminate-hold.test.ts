import { describe, expect } from 'vitest';
import {
  breakingStress,
  pipeStressAtStrain,
  softEdgeFactor,
  substratePressureShared,
  taperedEndShear,
  thicknessRing,
  wrapEndShear,
} from '../../src/laminate/index.js';
import {
  type EnergyReleaseRate,
  gauge,
  length,
  modulus,
  type Strain,
  strain,
  stress,
  type TemperatureDifference,
  type ThermalExpansion,
} from '../../src/quantity/index.js';
import { crackVolume, endShearBySprings, forceMarched, sinkOfWave } from './laminate-hold.js';
import { pullOnHalf } from './pipe-balance.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** What pipe, laminate and bond carry together, by forces and energy. */

describe('a laminate that is pulled until it breaks', () => {
  secondRoute('laminate/breaking-stress', 'physics', 'the last stress of a pull whose work is summed up', () => {
    for (const [stiffness, breaks] of [
      [23, 0.016],
      [121, 0.0123],
    ] as const) {
      const steps = 10_000;
      let work = 0;
      for (let at = 0; at < steps; at++) work += stiffness * 1e9 * (((at + 0.5) / steps) * breaks) * (breaks / steps);
      const found = breakingStress({ modulus: modulus.GPa(stiffness), failureStrain: breaks as Strain });
      // Half the last stress by the whole strain is the work of an elastic pull.
      meets(found / 1e6, (2 * work) / breaks / 1e6, 1e-9);
    }
  });
});

describe('a pipe under a laminate', () => {
  secondRoute(
    'laminate/pipe-stress-at-strain',
    'physics',
    'stretching pipe and laminate alike until either is at its limit',
    () => {
      for (const [limit, allowed] of [
        [160, 0.0025],
        [241, 0.0008],
      ] as const) {
        let pulled = 0;
        for (let at = 0; at < allowed && 207e3 * at < limit; at += 1e-8) pulled = 207e3 * at;
        const found = pipeStressAtStrain({
          limitStress: stress.MPa(limit),
          substrateModulus: modulus.GPa(207),
          allowableStrain: allowed as Strain,
        });
        meets(found / 1e6, pulled, 1e-4);
      }
    },
  );

  secondRoute(
    'laminate/substrate-pressure-shared',
    'physics',
    'the force of the wall against the pull on a wider cut',
    () => {
      for (const [filler, share] of [
        [0.006, 1],
        [0.0021, 0.71],
      ] as const) {
        const ofWall = 6.2e6 * pullOnHalf(0.1683) * share;
        const found = substratePressureShared({
          substratePressure: gauge.MPa(6.2),
          allowableStress: stress.MPa(160),
          pipeStress: stress.MPa(160 * share),
          outsideDiameter: length.mm(168.3),
          wrappedDiameter: length.m(0.1683 + 2 * filler),
        });
        meets(found, ofWall / pullOnHalf(0.1683 + 2 * filler));
      }
    },
  );
});

describe('a ring that nothing bonds over a length', () => {
  secondRoute(
    'laminate/thickness-ring',
    'physics',
    'the thickness at which swelling and opening release what the bond takes',
    () => {
      for (const [P, D, W, f, overshoot] of [
        [2e6, 0.1683, 0.03, 0.6, 1.55],
        [5e5, 0.6096, 0.12, 0.4, 1],
      ] as const) {
        const [Ec, gamma] = [24e9, 180];
        /** Half of the pressure times the volume that each length of the crack gains: the ring swells, the crack opens. */
        const released = (t: number): number => {
          const swelling = (P * pullOnHalf(D) * D) / 2 / (2 * Ec * t);
          const step = W * 1e-4;
          const opening = (crackVolume(P, W + step, Ec) - crackVolume(P, W - step, Ec)) / (2 * step);
          return (P / 2) * (overshoot * swelling + opening / 2);
        };
        const thickness = rootOf((t) => f * f * gamma - released(t), 1e-5, 1);
        const found = thicknessRing({
          pressure: gauge.Pa(P),
          outsideDiameter: length.m(D),
          unbondedLength: length.m(W),
          hoopModulus: modulus.Pa(Ec),
          energyReleaseRate: gamma as EnergyReleaseRate,
          serviceFactor: f,
          overshoot,
        });
        meets(found, thickness, 1e-5);
      }
    },
  );
});

describe('the edge of a slot in a body soft through its thickness', () => {
  secondRoute(
    'laminate/soft-edge-factor',
    'physics',
    'how far a wavy pressure sinks into a half space, of least energy',
    () => {
      for (const [E, G] of [
        [24, 3],
        [60, 4],
        [80, 2.5],
      ] as const) {
        const factor = softEdgeFactor({ stripModulus: modulus.GPa(E), shearModulus: modulus.GPa(G) });
        // A crack opens by the same compliance as the surface: 2/E of a body that is alike in all directions, without contraction.
        meets(factor, sinkOfWave(E, 2 * G, G) / (2 / E), 2e-5);
      }
      // Alike in all directions, and stiffer through the thickness than across, which is not counted on.
      meets(sinkOfWave(24, 24, 12), 2 / 24, 2e-5);
      for (const G of [12, 30])
        expect(softEdgeFactor({ stripModulus: modulus.GPa(24), shearModulus: modulus.GPa(G) })).toBe(1);
    },
  );
});

describe('the bond at the end of a wrap', () => {
  const joint = {
    innerModulus: modulus.GPa(207),
    innerThickness: length.mm(7),
    outerModulus: modulus.GPa(20),
    outerThickness: length.mm(8),
    bondShearModulus: modulus.GPa(1),
    bondThickness: length.mm(0.3),
  };
  const springs = { inner: 207e9 * 0.007, bond: 1e9 / 0.3e-3 };

  secondRoute(
    'laminate/wrap-end-shear',
    'physics',
    'layers and bond as ever more springs in a row, long wraps and short',
    () => {
      const expansion = { inner: 1.2e-5, outer: 3e-5 };
      for (const [wrapLength, apart, warmer] of [
        [0.4, 8e-4, 0],
        [0.03, 8e-4, 0],
        [0.012, 3e-4, -40],
      ] as const) {
        const free = (expansion.inner - expansion.outer) * warmer;
        const other = endShearBySprings({ ...springs, outer: 20e9 * 0.008, length: wrapLength, apart: apart + free });
        const found = wrapEndShear({
          ...joint,
          wrapLength: length.m(wrapLength),
          pipeStrain: strain.fraction(apart),
          innerExpansion: expansion.inner as ThermalExpansion,
          outerExpansion: expansion.outer as ThermalExpansion,
          temperatureChange: warmer as TemperatureDifference,
        });
        meets(found, other, 5e-5);
      }
    },
  );

  secondRoute(
    'laminate/tapered-end-shear',
    'mathematics',
    'a march of force and shear from the tip, aimed so that none is left at the far end',
    () => {
      for (const [tip, taper] of [
        [0.8, 0.04],
        [2, 0.1],
        [8, 0.02],
        [0.4, 0.005],
      ] as const) {
        const thickness = (x: number): number => Math.min(8e-3, tip / 1000 + ((8e-3 - tip / 1000) * x) / taper);
        const most = forceMarched({ ...springs, outer: (x) => 20e9 * thickness(x), apart: 8e-4, end: taper + 0.15 });
        const found = taperedEndShear({
          ...joint,
          tipThickness: length.mm(tip),
          taperLength: length.m(taper),
          strainApart: strain.fraction(8e-4),
        });
        meets(found, most, 3e-4);
      }
    },
  );
});
