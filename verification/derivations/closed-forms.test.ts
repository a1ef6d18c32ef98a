import { describe, expect, it } from 'vitest';
import {
  alongStrength,
  isotropicShearModulus,
  slotPressureCeiling,
  stripModulus,
  thicknessWideSlot,
  wideSlotResistance,
} from '../../src/laminate/index.js';
import { energyReleaseRate, type Length, length, modulus, stress } from '../../src/quantity/index.js';
import { padBeyondBands } from '../../src/seal/index.js';

/** Short formulas by another way: opening of a crack, balance of a ring, compliance, forces, places side by side. */

const W = 0.06;
const E = 14e9;
const gamma = 200;
const f = 0.4;

/** Energy per area that a pressure on half a crack gives to each of its two tips: half the change of pressure times opening. */
function releasedByCrack(pressure: number, width: number, modulusOfStrip: number): number {
  const opening = (a: number): number => {
    const STEPS = 20_000;
    let sum = 0;
    // The face of a crack opens as an ellipse; the middle of each piece, in the angle, where nothing is steep.
    for (let i = 0; i < STEPS; i++) {
      const angle = (Math.PI * (i + 0.5)) / STEPS;
      sum += ((2 * pressure) / modulusOfStrip) * a * Math.sin(angle) * a * Math.sin(angle) * (Math.PI / STEPS);
    }
    return sum;
  };
  const [a, step] = [width / 2, width * 1e-4];
  const energy = (half: number): number => (pressure * opening(half)) / 2;
  return (energy(a + step) - energy(a - step)) / (2 * step) / 2;
}

/** Energy per area that a ring gives when it comes loose under pressure: half the pressure times how far it moves. */
const releasedByRing = (pressure: number, diameter: number, thickness: number, hoop: number): number => {
  const strain = (pressure * diameter) / 2 / thickness / hoop;
  return (pressure * strain * (diameter / 2)) / 2;
};

describe('a slot', () => {
  const strip = {
    slotWidth: length.m(W),
    stripModulus: modulus.Pa(E),
    energyReleaseRate: energyReleaseRate.JPerM2(gamma),
  };

  it('opens at the ceiling as half a crack', () => {
    const ceiling = slotPressureCeiling({ ...strip, serviceFactor: f, turningRoot: 1 });
    expect(releasedByCrack(ceiling / f, W, E) / gamma).toBeCloseTo(1, 6);
  });

  it('that is wide lets a ring go, with its overshoot, and opens at its edge', () => {
    const [D, hoop, over] = [0.3239, 24e9, 1.6];
    const ring = {
      ...strip,
      outsideDiameter: length.m(D),
      hoopModulus: modulus.Pa(hoop),
      serviceFactor: f,
      overshoot: over,
    };
    for (const t of [0.004, 0.012, 0.03]) {
      const held = wideSlotResistance({ ...ring, laminateThickness: length.m(t) });
      const released = over * releasedByRing(held / f, D, t, hoop) + releasedByCrack(held / f, W, E);
      expect(released / gamma).toBeCloseTo(1, 6);
      expect(thicknessWideSlot({ ...ring, pressure: held }) / t).toBeCloseTo(1, 6);
    }
  });

  it('is bridged by a strip that cannot contract along it', () => {
    const [axial, hoop, nu] = [14e9, 24e9, 0.25];
    // Stress across the slot and along it, no strain along it.
    const [s11, s22, s12] = [1 / axial, 1 / hoop, -nu / hoop];
    const strain = s11 - (s12 * s12) / s22;
    const input = { hoopModulus: modulus.Pa(hoop), axialModulus: modulus.Pa(axial), poissonRatio: nu };
    expect(stripModulus({ ...input, bridgingModulus: modulus.Pa(axial) }) * strain).toBeCloseTo(1, 9);
  });
});

describe('constituents', () => {
  it('alike in all directions shear as they are pulled and pushed across', () => {
    const [young, nu] = [3.45e9, 0.35];
    const strain = (1 + nu) / young;
    const shear = isotropicShearModulus({ modulus: modulus.Pa(young), poissonRatio: nu });
    expect(shear * 2 * strain).toBeCloseTo(1, 9);
  });

  it('carry by their shares what the fibre strains when it fails', () => {
    const [strength, fibre, matrix, share, voids] = [2.4e9, 72e9, 3.4e9, 0.55, 0.02];
    const strain = strength / fibre;
    const input = {
      fibreStrength: stress.Pa(strength),
      fibreModulus: modulus.Pa(fibre),
      matrixModulus: modulus.Pa(matrix),
      fibreVolumeFraction: share,
      voidFraction: voids,
    };
    expect(alongStrength(input) / (share * fibre * strain + (1 - share - voids) * matrix * strain)).toBeCloseTo(1, 9);
  });
});

describe('what is laid beside each other', () => {
  it('leaves the same piece of the pad free on either side of the bands', () => {
    const [bands, width, pad] = [2, 0.03, 0.1];
    const left = -pad / 2;
    const firstBand = -(bands * width) / 2;
    const beyond = padBeyondBands({ bands, bandWidth: width as Length, padDiameter: pad as Length });
    expect(beyond).toBeCloseTo(firstBand - left, 9);
  });
});
