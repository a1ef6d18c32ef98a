import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anchorForce,
  axialForceStress,
  bendingStress,
  hoopStress,
  longitudinalStress,
  longitudinalStressLimit,
  longitudinalStressSum,
  restrainedPressureStress,
  restrainedThermalStress,
  thickWallAxialStress,
  thinLongitudinalStress,
} from '../../../src/pipe/index.js';
import {
  force,
  gauge,
  length,
  modulus,
  moment,
  type Stress,
  stress,
  temperature,
  thermalExpansion,
} from '../../../src/quantity/index.js';
import { pipes, runs } from '../pipes.js';

const steel = { modulus: modulus.GPa(207), expansion: thermalExpansion.perK(1.17e-5) };

describe('longitudinal stress', () => {
  it('of pressure on closed ends is the thrust on the bore over the metal area', () => {
    fc.assert(
      fc.property(pipes(0.002, 0.49), (pipe) => {
        const [ro, ri] = [pipe.outsideDiameter / 2, pipe.outsideDiameter / 2 - pipe.wallThickness];
        const thrust = pipe.pressure * Math.PI * ri * ri;
        const area = Math.PI * (ro - ri) * (ro + ri);
        expect(longitudinalStress(pipe) / (thrust / area)).toBeCloseTo(1, 9);
        expect(longitudinalStress(pipe) / thickWallAxialStress({ ...pipe, ends: 'closed' })).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  it('in the thin form is half the hoop stress and never below the exact value', () => {
    fc.assert(
      fc.property(pipes(0.002, 0.49), (pipe) => {
        expect(thinLongitudinalStress(pipe)).toBe(hoopStress(pipe) / 2);
        expect(thinLongitudinalStress(pipe)).toBeGreaterThanOrEqual(longitudinalStress(pipe));
      }),
      runs,
    );
  });

  it('of pressure between anchors cancels the axial strain that hoop stress alone would cause', () => {
    const S = stress.MPa(129.3);
    const axialStrain = restrainedPressureStress({ hoopStress: S, poissonRatio: 0.27 }) - 0.27 * S;
    expect(axialStrain).toBe(0);
  });

  it('of temperature is compression in a line hotter than at tie-in, tension in a colder one, and none in between', () => {
    const [cold, warm] = [temperature.degC(5), temperature.degC(60)];
    const heated = restrainedThermalStress({ ...steel, tieInTemperature: cold, operatingTemperature: warm });
    const cooled = restrainedThermalStress({ ...steel, tieInTemperature: warm, operatingTemperature: cold });
    expect(heated).toBeCloseTo(-207e9 * 1.17e-5 * 55, 0);
    expect(cooled).toBe(-heated);
    expect(restrainedThermalStress({ ...steel, tieInTemperature: warm, operatingTemperature: warm })).toBe(0);
  });

  it('of a force balances it over the ring, and of bending meets the thin-ring moment', () => {
    const pipe = { outsideDiameter: length.mm(1000), wallThickness: length.mm(0.1) };
    const [r, t] = [0.49995, 0.0001];
    const bending = bendingStress({ ...pipe, bendingMoment: moment.Nm(1000) });
    // Sum over small arcs of stress times arm, with the stress linear over the section.
    let bendingMoment = 0;
    const arcs = 3600;
    for (let i = 0; i < arcs; i++) {
      const arm = r * Math.sin((2 * Math.PI * (i + 0.5)) / arcs);
      bendingMoment += bending * (arm / 0.5) * arm * t * ((2 * Math.PI * r) / arcs);
    }
    expect(bendingMoment / 1000).toBeCloseTo(1, 6);
    expect(axialForceStress({ ...pipe, axialForce: force.kN(-10) }) / (-10e3 / (2 * Math.PI * r * t))).toBeCloseTo(
      1,
      9,
    );
    expect(axialForceStress({ ...pipe, axialForce: force.N(0) })).toBe(0);
  });

  it('adds up, with what is left out counted as nothing', () => {
    const [P, T, X, B] = [40, -50, 6, -7].map((value) => stress.MPa(value)) as [Stress, Stress, Stress, Stress];
    expect(longitudinalStressSum({ pressureStress: P })).toBe(P);
    const sum = longitudinalStressSum({ pressureStress: P, thermalStress: T, axialForceStress: X, bendingStress: B });
    expect(sum).toBeCloseTo(-11e6, 3);
  });

  it('may reach more of the yield strength in a restrained line', () => {
    const pipe = { yieldStrength: stress.MPa(360), temperatureFactor: 0.9 };
    expect(longitudinalStressLimit({ ...pipe, restraint: 'restrained' })).toBeCloseTo(0.9 * 360e6 * 0.9, 3);
    expect(longitudinalStressLimit({ ...pipe, restraint: 'unrestrained' })).toBeCloseTo(0.75 * 360e6 * 0.9, 3);
  });
});

describe('anchor force', () => {
  it('is the force that takes away the strain of the free line', () => {
    const pipe = { outsideDiameter: length.mm(323.9), wallThickness: length.mm(9.53) };
    const area = (Math.PI / 4) * (0.3239 ** 2 - (0.3239 - 2 * 0.00953) ** 2);
    const S = hoopStress({ ...pipe, pressure: gauge.MPa(5) });
    const free = 1.17e-5 * 40 + (S / 2 - 0.3 * S) / 207e9;
    const state = { tieInTemperature: temperature.degC(10), operatingTemperature: temperature.degC(50) };
    const axialForce = anchorForce({ ...pipe, ...steel, ...state, hoopStress: S });
    expect(axialForce / (area * 207e9 * free)).toBeCloseTo(1, 10);
  });
});
