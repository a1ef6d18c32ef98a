import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoopStress, hoopStressAll, mawp, mawpAll } from '../../src/pipe/index.js';
import { gauge, type Length, length, stress } from '../../src/quantity/index.js';
import { span as real } from '../properties/spans.js';
import { runs } from './pipes.js';

const line = { pressure: gauge.MPa(4), outsideDiameter: length.mm(508) };
const vessel = { outsideDiameter: length.mm(508), allowableStress: stress.MPa(138), jointFactor: 0.85 };
const readings = fc.array(real(0.0031, 0.08), { maxLength: 40 }).map((walls) => Float64Array.from(walls));

describe('hoop stress of a survey', () => {
  it('is that of each reading, bit for bit, in the array given', () => {
    fc.assert(
      fc.property(readings, (wallThickness) => {
        const out = new Float64Array(wallThickness.length);
        expect(hoopStressAll({ ...line, wallThickness }, out)).toBe(out);
        for (const [row, t] of wallThickness.entries())
          expect(out[row]).toBe(hoopStress({ ...line, wallThickness: t as Length }));
      }),
      runs,
    );
  });

  it('names the first bad reading', () => {
    for (const bad of [0, -0.001, Number.NaN, Number.POSITIVE_INFINITY, 0.254, 1e-320]) {
      const wallThickness = Float64Array.of(0.01, 0.009, bad, -1);
      for (const pressure of [line.pressure, gauge.MPa(0)])
        if (bad !== 1e-320 || pressure > 0)
          expect(() => hoopStressAll({ ...line, pressure, wallThickness }, new Float64Array(4))).toThrow(
            'wallThickness[2] is',
          );
    }
  });

  it('may write over the readings, and refuses an array of another length', () => {
    const wallThickness = Float64Array.of(0.01, 0.02);
    hoopStressAll({ ...line, wallThickness }, wallThickness);
    expect(wallThickness[1]).toBe(hoopStress({ ...line, wallThickness: length.mm(20) }));
    expect(() => hoopStressAll({ ...line, wallThickness }, new Float64Array(3))).toThrow('must be 2, the length');
  });
});

describe('maximum allowable working pressure of a survey', () => {
  it('is that of each reading, bit for bit, with and without a supplement', () => {
    fc.assert(
      fc.property(readings, real(0, 0.003), (wallThickness, tsl) => {
        for (const supplementalThickness of [undefined, tsl as Length]) {
          const out = mawpAll(
            { ...vessel, supplementalThickness, wallThickness },
            new Float64Array(wallThickness.length),
          );
          for (const [row, t] of wallThickness.entries()) {
            const one = mawp({ ...vessel, supplementalThickness, wallThickness: t as Length });
            expect(out[row]).toBe(one.mawp);
          }
        }
      }),
      runs,
    );
  });

  it('names the first bad reading and what is wrong with it', () => {
    const sixth = vessel.outsideDiameter / 6;
    for (const supplementalThickness of [length.mm(0), length.mm(2)]) {
      const refusal = (bad: number) => {
        const wallThickness = Float64Array.of(0.01, bad, -1);
        return () => mawpAll({ ...vessel, supplementalThickness, wallThickness }, new Float64Array(3));
      };
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 0, -0.001])
        expect(refusal(bad)).toThrow(`wallThickness[1] is ${bad} m; must be a finite number above 0`);
      for (const bad of [sixth, 0.09]) expect(refusal(bad)).toThrow('m; must be below D/6');
      if (supplementalThickness > 0)
        expect(refusal(0.002)).toThrow('wallThickness[1] is 0.002 m; must be above the supplemental thickness');
    }
  });

  it('refuses an array of another length', () => {
    const wallThickness = Float64Array.of(0.01);
    expect(() => mawpAll({ ...vessel, wallThickness }, new Float64Array(0))).toThrow('must be 1, the length');
  });
});
