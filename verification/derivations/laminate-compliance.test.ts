import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poissonRatioLimit, thicknessIgnoredAxial, thicknessIgnoredHoop } from '../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../src/quantity/index.js';
import { leastStrainEnergy, strains, thicknessAt } from './laminate-compliance.js';

const seeded = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the thickness of a laminate that carries everything, by its stiffness', () => {
  it('is that of cases C06 and C07', () => {
    const ply = { hoopModulus: 23.8e9, axialModulus: 12e9, poissonRatio: 0.12 };
    const D = 0.1143;
    const closed = (Math.PI / 4) * 4e6 * D * D;
    for (const [force, hoop, axial] of [
      [closed, 3.611496e-3, 3.348958e-3],
      [closed + 60000, 3.274504e-3, 8.918685e-3],
    ] as const) {
      const loads = { hoop: (4e6 * D) / 2, axial: force / (Math.PI * D) };
      expect(thicknessAt(ply, loads, 'hoop', 0.0025)).toBeCloseTo(hoop, 9);
      expect(thicknessAt(ply, loads, 'axial', 0.0025)).toBeCloseTo(axial, 9);
    }
  });

  it('is what both formulas give, over their span', () => {
    const drawn = fc.tuple(
      span(1e5, 2e7),
      span(0.05, 1.2),
      span(8e9, 8e10),
      span(4e9, 4e10),
      span(0, 0.4),
      span(5e-4, 4e-3),
      span(0, 2e6),
    );
    fc.assert(
      fc.property(drawn, ([P, D, Ec, Ea, nu, eps, F]) => {
        fc.pre(nu * nu * (Ea / Ec) < 0.9);
        const ply = { hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu };
        const loads = { hoop: (P * D) / 2, axial: F / (Math.PI * D) };
        const common = {
          pressure: P as GaugePressure,
          outsideDiameter: D as Length,
          hoopModulus: Ec as Modulus,
          poissonRatio: nu,
          allowableStrain: eps as Strain,
          axialForce: F as Force,
        };
        const near = (computed: number, other: number) =>
          expect(Math.abs(computed - other)).toBeLessThanOrEqual(1e-9 * (D + Math.abs(other)));
        near(thicknessIgnoredHoop(common), thicknessAt(ply, loads, 'hoop', eps));
        near(thicknessIgnoredAxial({ ...common, axialModulus: Ea as Modulus }), thicknessAt(ply, loads, 'axial', eps));
      }),
      seeded,
    );
  });

  it('is governed by the axial line wherever the hoop line says that nothing is needed', () => {
    // The hoop formula stops at zero; the laminate is then squeezed round the pipe, and less than it is pulled along it.
    fc.assert(
      fc.property(span(8e9, 8e10), span(0.1, 1), span(0, 0.4), span(0, 1), (Ec, share, nu, part) => {
        const ply = { hoopModulus: Ec, axialModulus: share * Ec, poissonRatio: nu };
        const found = strains(ply, { hoop: part * nu * 1e6, axial: 1e6 }, 0.005);
        expect(found.hoop).toBeLessThanOrEqual(1e-15);
        expect(Math.abs(found.hoop)).toBeLessThan(found.axial);
      }),
      seeded,
    );
  });
});

describe('laminate/poisson-ratio-limit', () => {
  it('is where straining a laminate would begin to give energy', () => {
    fc.assert(
      fc.property(span(8e9, 8e10), span(4e9, 8e10), span(0.01, 0.5), (Ec, Ea, below) => {
        const limit = poissonRatioLimit({ hoopModulus: Ec as Modulus, axialModulus: Ea as Modulus });
        const at = (poissonRatio: number) => leastStrainEnergy({ hoopModulus: Ec, axialModulus: Ea, poissonRatio });
        expect(at(limit * (1 - below))).toBeGreaterThan(0);
        expect(at(limit * (1 + below))).toBeLessThan(0);
      }),
      seeded,
    );
  });
});
