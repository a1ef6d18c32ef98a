import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thickCylinderRadialStress, twoLayerInterfacePressure } from '../../src/mechanics/index.js';
import type { GaugePressure, Length, Modulus } from '../../src/quantity/index.js';
import { span as real } from '../properties/spans.js';

const runs = { seed: 20261125, numRuns: 300 };

const drawn = fc
  .tuple(
    real(0.1, 60e6),
    real(0.02, 0.6),
    real(1.005, 2),
    real(1.005, 2),
    real(1e9, 3e11),
    real(1e9, 3e11),
    real(0, 0.45),
  )
  .map(([P, ri, first, second, Ei, Eo, nu]) => ({
    pressure: P as GaugePressure,
    innerRadius: ri as Length,
    interfaceRadius: (ri * first) as Length,
    outerRadius: (ri * first * second) as Length,
    innerModulus: Ei as Modulus,
    outerModulus: Eo as Modulus,
    innerPoissonRatio: nu,
    outerPoissonRatio: nu,
  }));

describe('pressure between a pipe and a layer round it', () => {
  it('is that inside the wall of one cylinder when both layers are of one metal', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const { pressure, innerRadius, interfaceRadius, outerRadius, innerModulus } = given;
        const inTheWall = thickCylinderRadialStress({
          internalPressure: pressure,
          innerRadius,
          outerRadius,
          radius: interfaceRadius,
        });
        const q = twoLayerInterfacePressure({ ...given, outerModulus: innerModulus });
        expect(Math.abs(q + inTheWall)).toBeLessThanOrEqual(1e-9 * q);
      }),
      runs,
    );
  });

  it('goes with the modulus of a thin, soft layer, and is nothing without one', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const soft = (Eo: number) => twoLayerInterfacePressure({ ...given, outerModulus: Eo as Modulus });
        const least = given.innerModulus * 1e-9;
        const slack = given.outerRadius / (given.outerRadius - given.interfaceRadius);
        expect(Math.abs(soft(2 * least) / soft(least) - 2)).toBeLessThan(1e-6 * slack);
        expect(soft(least)).toBeLessThan(1e-6 * slack * soft(given.innerModulus));
      }),
      runs,
    );
  });

  it('is never above the pressure in the bore, and shrinkage adds to it', () => {
    fc.assert(
      fc.property(drawn, real(1e-6, 1e-3), (given, delta) => {
        const q = twoLayerInterfacePressure(given);
        expect(q).toBeLessThanOrEqual(given.pressure * (1 + 1e-12));
        const alone = twoLayerInterfacePressure({
          ...given,
          pressure: 0 as GaugePressure,
          interference: delta as Length,
        });
        const both = twoLayerInterfacePressure({ ...given, interference: delta as Length });
        expect(Math.abs(both - q - alone)).toBeLessThanOrEqual(1e-12 * both);
      }),
      runs,
    );
  });
});
