import { describe, expect, it } from 'vitest';
import { energyAtRim, stressLeftAtWork } from '../../src/laminate/index.js';
import { type EnergyReleaseRate, force, gauge, length, type Modulus, stress } from '../../src/quantity/index.js';

/** The energy that counts at a rim, by the energy of a clamped plate in small pieces; stresses of a pipe at work, by hand. */

/**
 * Release of an isotropic clamped circle over the most that an orthotropic one releases anywhere along its rim, both of unit
 * radius, thickness and pressure. The deflection (1 - r^2)^2 is that of both; its height is where the energy of bending, summed
 * over the circle, gives least with the work of the pressure.
 */
function sharedOut(round: number, along: number, nu: number, shear: number): number {
  const free = 1 - (nu * nu * along) / round;
  const [Ec, Ea] = [round / free, along / free];
  const pieces = 400;
  let energy = 0;
  let work = 0;
  for (let i = 0; i < pieces; i++) {
    const r = (i + 0.5) / pieces;
    for (let j = 0; j < pieces; j++) {
      const angle = (2 * Math.PI * (j + 0.5)) / pieces;
      const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)];
      const area = (r * 2 * Math.PI) / pieces / pieces;
      const [xx, yy, xy] = [8 * x * x - 4 * (1 - r * r), 8 * y * y - 4 * (1 - r * r), 8 * x * y];
      energy += (area * (Ec * xx * xx + 2 * nu * Ea * xx * yy + Ea * yy * yy + 4 * shear * xy * xy)) / 24;
      work += area * (1 - r * r) ** 2;
    }
  }
  const height = work / (2 * energy);
  let most = 0;
  for (let j = 0; j <= 2000; j++) {
    const [c, s] = [Math.cos((Math.PI * j) / 4000) ** 2, Math.sin((Math.PI * j) / 4000) ** 2];
    const across = Ec * c * c + 2 * (nu * Ea + 2 * shear) * c * s + Ea * s * s;
    most = Math.max(most, (across * (8 * height) ** 2) / 24);
  }
  const even = Math.sqrt(round * along) / free;
  // w_0 = p a^4/(64 D), 1/2 D (8 w_0)^2 along the rim
  const isotropic = 1 / (128 * (even / 12));
  return isotropic / most;
}

describe("'laminate/energy-at-rim' against a plate in small pieces", () => {
  it.each([
    [24e9, 14e9, 0.12, 3e9],
    [24e9, 24e9, 0.12, 3e9],
    [60e9, 12e9, 0.2, 4e9],
    [14e9, 24e9, 0.07, 3e9],
  ])('of %d and %d Pa', (round, along, nu, shear) => {
    const found = energyAtRim({
      energyReleaseRate: 100 as EnergyReleaseRate,
      hoopModulus: round as Modulus,
      axialModulus: along as Modulus,
      poissonRatio: nu,
      shearModulus: shear as Modulus,
    });
    expect(Math.abs(found / 100 / sharedOut(round, along, nu, shear) - 1)).toBeLessThan(1e-4);
  });
});

describe("'laminate/stress-left-at-work' against stresses by hand", () => {
  const pipe = {
    allowableStress: stress.MPa(150),
    livePressure: gauge.MPa(2),
    outsideDiameter: length.mm(200),
    substrateWall: length.mm(5),
  };

  it('takes off the stress round the pipe: 2 MPa on 200 mm by 2 x 5 mm are 40 MPa', () => {
    expect(stressLeftAtWork({ ...pipe, axialForce: force.N(0) }) / 110e6).toBeCloseTo(1, 12);
  });

  it('or along it: 20 MPa of the pressure and 100 kN on 3141.59 mm2', () => {
    const along = 20 + 100_000 / 3141.592_653_589_793;
    expect(stressLeftAtWork({ ...pipe, axialForce: force.kN(100) }) / ((150 - along) * 1e6)).toBeCloseTo(1, 12);
  });
});
