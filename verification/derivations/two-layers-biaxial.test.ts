import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressureSharingBiaxial, thicknessSharingBiaxial } from '../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain, Stress } from '../../src/quantity/index.js';
import { greatestPressure, leastThickness, type TwoLayers } from './two-layers-biaxial.js';

const seeded = { seed: 20261125, numRuns: 60 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const drawn = fc
  .tuple(
    fc.tuple(span(0.05, 1), span(1, 1.3), span(0.01, 0.08), span(65e9, 210e9), span(0.2, 0.4)),
    fc.tuple(span(15e9, 80e9), span(0.2, 1), span(0, 0.4), span(8e7, 4e8), span(1e-3, 4e-3), span(1e-3, 4e-3)),
  )
  .map(([[pipe, filler, wall, steel, nu], [round, share, nuca, stress, hoopStrain, axialStrain]]): TwoLayers => {
    const wrap = pipe * filler;
    return {
      pipe,
      wrap,
      wall: pipe * wall,
      steel,
      nu,
      round,
      along: round * share,
      nuca,
      stress,
      hoopStrain,
      axialStrain,
    };
  });

const inputOf = (layers: TwoLayers) => ({
  outsideDiameter: layers.pipe as Length,
  wrappedDiameter: layers.wrap as Length,
  allowableStress: layers.stress as Stress,
  substrateWall: layers.wall as Length,
  substrateModulus: layers.steel as Modulus,
  substratePoisson: layers.nu,
  hoopModulus: layers.round as Modulus,
  axialModulus: layers.along as Modulus,
  poissonRatio: layers.nuca,
  hoopStrain: layers.hoopStrain as Strain,
  axialStrain: layers.axialStrain as Strain,
});

/** laminate/thickness-sharing-biaxial and laminate/pressure-sharing-biaxial. */
describe('pipe and laminate that share the load both ways', () => {
  it('need the thickness that halving the failed stretch finds, with the end load present and absent', () => {
    let thickened = 0;
    fc.assert(
      fc.property(drawn, span(0.5, 2), span(0, 0.5), span(-0.1, 0), (layers, over, pull, push) => {
        const pressure = (over * 2 * layers.stress * layers.wall) / layers.pipe;
        const end = (Math.PI / 4) * pressure * layers.pipe ** 2;
        const [force, least] = [end * (1 + pull), end * push];
        const thickness = thicknessSharingBiaxial({
          ...inputOf(layers),
          pressure: pressure as GaugePressure,
          axialForce: force as Force,
          leastAxialForce: least as Force,
        });
        const most = 4 * thickness + layers.wall;
        const other = leastThickness(layers, pressure, [force, least], most);
        expect(Math.abs(thickness - other)).toBeLessThanOrEqual(1e-9 * (layers.wall + other));
        if (thickness > 0) thickened += 1;
      }),
      seeded,
    );
    expect(thickened).toBeGreaterThan(20);
  });

  it('hold the pressure that halving finds', () => {
    fc.assert(
      fc.property(drawn, span(0, 3), span(0, 0.2), span(-0.2, 0), (layers, laid, pull, push) => {
        const scale = Math.PI * layers.pipe * layers.wall * Math.min(layers.stress, layers.steel * layers.axialStrain);
        const [external, least] = [scale * pull, scale * push];
        const laminateThickness = (laid * layers.wall) as Length;
        const pressure = pressureSharingBiaxial({
          ...inputOf(layers),
          laminateThickness,
          externalForce: external as Force,
          leastAxialForce: least as Force,
        });
        const other = greatestPressure(layers, laminateThickness, external, least);
        expect(Math.abs(pressure - other)).toBeLessThanOrEqual(1e-9 * other);
      }),
      seeded,
    );
  });
});
