import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thickCylinderHoopStress, twoLayerInterfacePressure } from '../../src/mechanics/index.js';
import type { GaugePressure, Length, Modulus } from '../../src/quantity/index.js';
import { layeredStresses } from './two-layer-cylinder.js';

const seeded = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (computed: number, other: number, tolerance: number) =>
  expect(Math.abs(computed - other)).toBeLessThanOrEqual(tolerance * Math.abs(other));

const wrapped = {
  bore: 77.04,
  meet: 84.15,
  outside: 90.15,
  inner: { modulus: 207000, poissonRatio: 0.3 },
  outer: { modulus: 25000, poissonRatio: 0.3 },
  pressure: 10,
  misfit: 0,
};

describe('two cylinders, one round the other, by four linear equations', () => {
  it('have the pressure between them and the stresses of the check LW-D1', () => {
    const [steel, laminate] = layeredStresses(wrapped);
    near(-steel.radial(wrapped.meet), 0.7732303, 1e-7);
    near(-laminate.radial(wrapped.meet), 0.7732303, 1e-7);
    near(steel.hoop(wrapped.bore), 104.0198, 1e-6);
    near(laminate.hoop(wrapped.meet), 11.24448, 1e-6);
    near(laminate.hoop(wrapped.outside), 10.47125, 1e-6);
  });

  it('press on each other as the formula says, and stress the bore as the thick cylinder then does', () => {
    fc.assert(
      fc.property(
        fc.tuple(span(0.02, 0.6), span(1.01, 2), span(1.01, 1.5), span(1e9, 3e11), span(0.02, 1.5)),
        fc.tuple(span(0, 0.45), span(0, 0.45), span(1e5, 6e7), span(0, 1e-3)),
        ([ri, first, second, Ei, share], [nui, nuo, P, misfit]) => {
          const [rm, ro, Eo] = [ri * first, ri * first * second, Ei * share];
          const [inner] = layeredStresses({
            bore: ri,
            meet: rm,
            outside: ro,
            inner: { modulus: Ei, poissonRatio: nui },
            outer: { modulus: Eo, poissonRatio: nuo },
            pressure: P,
            misfit: misfit * rm,
          });
          const pressure = P as GaugePressure;
          const q = twoLayerInterfacePressure({
            pressure,
            interference: (2 * misfit * rm) as Length,
            innerRadius: ri as Length,
            interfaceRadius: rm as Length,
            outerRadius: ro as Length,
            innerModulus: Ei as Modulus,
            outerModulus: Eo as Modulus,
            innerPoissonRatio: nui,
            outerPoissonRatio: nuo,
          });
          near(q, -inner.radial(rm), 1e-9);
          const bore = thickCylinderHoopStress({
            internalPressure: pressure,
            externalPressure: q,
            innerRadius: ri as Length,
            outerRadius: rm as Length,
            radius: ri as Length,
          });
          expect(Math.abs(bore - inner.hoop(ri))).toBeLessThanOrEqual(1e-9 * (Math.abs(bore) + P * (rm / (rm - ri))));
        },
      ),
      seeded,
    );
  });
});
