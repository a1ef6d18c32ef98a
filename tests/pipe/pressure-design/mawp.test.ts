import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  codeHoopStress,
  codeLongitudinalStress,
  designThicknessOutside,
  mawp,
  minimumWall,
} from '../../../src/pipe/index.js';
import { type GaugePressure, gauge, type Length, length, type Stress, stress } from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';
import { runs } from '../pipes.js';

const cases = fc
  .tuple(real(60e6, 200e6), real(0.6, 1), real(0, 0.7), real(0.001, 0.3), real(0.02, 1.2))
  .map(([S, E, Y, share, D]) => ({
    pressure: (share * S * E) as GaugePressure,
    outsideDiameter: D as Length,
    allowableStress: S as Stress,
    jointFactor: E,
    temperatureCoefficient: Y,
  }));

describe('maximum allowable working pressure', () => {
  it('of the minimum wall for a pressure is that pressure', () => {
    fc.assert(
      fc.property(cases, (pipe) => {
        const { required, hoop } = minimumWall(pipe);
        expect(required).toBe(hoop);
        expect(mawp({ ...pipe, wallThickness: required }).mawp / pipe.pressure).toBeCloseTo(1, 10);
      }),
      runs,
    );
  });

  it('along the pipe is that pressure too, for the longitudinal wall with its supplement', () => {
    fc.assert(
      fc.property(cases, real(0, 0.003), (pipe, tsl) => {
        const supplementalThickness = tsl as Length;
        const { longitudinal } = minimumWall({ ...pipe, supplementalThickness });
        fc.pre(longitudinal < pipe.outsideDiameter / 6);
        const found = mawp({ ...pipe, supplementalThickness, wallThickness: longitudinal });
        expect(found.longitudinal / pipe.pressure).toBeCloseTo(1, 8);
      }),
      runs,
    );
  });

  it('is the lower of the two values, and the hoop value when nothing else loads the pipe', () => {
    fc.assert(
      fc.property(cases, real(0.01, 0.16), real(0, 0.9), (pipe, share, part) => {
        const wallThickness = (pipe.outsideDiameter * share) as Length;
        const loaded = mawp({ ...pipe, wallThickness, supplementalThickness: (wallThickness * part) as Length });
        expect(loaded.mawp).toBe(Math.min(loaded.hoop, loaded.longitudinal));
        expect(mawp({ ...pipe, wallThickness }).mawp).toBe(loaded.hoop);
      }),
      runs,
    );
  });

  it('brings the code stresses back to S', () => {
    fc.assert(
      fc.property(cases, real(0.01, 0.16), real(0, 0.9), (pipe, share, part) => {
        const wall = (pipe.outsideDiameter * share) as Length;
        const thinned = { ...pipe, wallThickness: wall, supplementalThickness: (wall * part) as Length };
        const { hoop, longitudinal } = mawp(thinned);
        expect(codeHoopStress({ ...thinned, pressure: hoop }) / pipe.allowableStress).toBeCloseTo(1, 10);
        const along = codeLongitudinalStress({ ...thinned, pressure: longitudinal });
        expect(along / pipe.allowableStress).toBeCloseTo(1, 8);
      }),
      runs,
    );
  });

  it('never rises when the wall thins', () => {
    fc.assert(
      fc.property(cases, real(0.01, 0.16), real(0.1, 0.999), (pipe, share, less) => {
        const wall = pipe.outsideDiameter * share;
        const before = mawp({ ...pipe, wallThickness: wall as Length }).mawp;
        expect(mawp({ ...pipe, wallThickness: (wall * less) as Length }).mawp).toBeLessThan(before);
      }),
      runs,
    );
  });

  it('is refused for a wall of D/6 and when the supplement takes the whole wall', () => {
    const pipe = { outsideDiameter: length.mm(60), allowableStress: stress.MPa(138), jointFactor: 1 };
    expect(() => mawp({ ...pipe, wallThickness: length.mm(10.001) })).toThrow('must be below D/6');
    const gone = { ...pipe, wallThickness: length.mm(3), supplementalThickness: length.mm(3) };
    expect(() => mawp(gone)).toThrow('no wall is left');
    expect(() => codeLongitudinalStress({ ...gone, pressure: gauge.MPa(1) })).toThrow('no wall is left');
  });
});

describe('minimum wall', () => {
  it('by hoop stress is the pressure design thickness of the construction code and the mechanical allowance', () => {
    fc.assert(
      fc.property(cases, real(0, 0.003), (pipe, m) => {
        const t = designThicknessOutside(pipe);
        const { hoop } = minimumWall({ ...pipe, mechanicalAllowance: m as Length });
        expect(Math.abs(hoop - t - m)).toBeLessThan(1e-15);
      }),
      runs,
    );
  });

  it('is never below the structural minimum, nor below what bending needs along the pipe', () => {
    const pipe = {
      pressure: gauge.MPa(0.5),
      outsideDiameter: length.mm(168.3),
      allowableStress: stress.MPa(138),
      jointFactor: 1,
    };
    expect(minimumWall(pipe).required).toBeLessThan(length.mm(0.4));
    expect(minimumWall({ ...pipe, structuralMinimum: length.mm(2.8) }).required).toBe(length.mm(2.8));
    const bent = minimumWall({ ...pipe, supplementalThickness: length.mm(2) });
    expect(bent.required).toBe(bent.longitudinal);
    expect(bent.required).toBeGreaterThan(length.mm(2));
  });
});
