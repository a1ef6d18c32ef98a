import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { defaultStrains, performanceFactor } from '../../src/laminate/index.js';
import type { Modulus, Strain, Time } from '../../src/quantity/index.js';
import type { DefaultStrainRow, PerformanceRow } from '../../src/rules/index.js';
import { columnFor } from './life-columns.js';

const seeded = { seed: 20261125, numRuns: 500 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const life = fc.integer({ min: 1, max: 30 }).map((years) => (years * 31_557_600) as Time);
const strain = span(1e-3, 4e-3).map((value) => value as Strain);

function attempt<T>(look: () => T): T | string {
  try {
    return look();
  } catch (error) {
    if (isCalculationError(error)) return error.code;
    throw error;
  }
}

describe('a table by life, row by row', () => {
  it('laminate/default-strains takes the first row that lasts, in whatever order the rows stand', () => {
    const row: fc.Arbitrary<DefaultStrainRow> = fc.record({ life, hoop: strain, axial: strain, softAxial: strain });
    const table = fc.uniqueArray(row, { minLength: 1, maxLength: 6, selector: ({ life: at }) => at });
    fc.assert(
      fc.property(table, life, span(4e9, 4e10), (rows, wanted, axialModulus) => {
        const expected = columnFor(rows, wanted);
        const found = attempt(() =>
          defaultStrains({
            table: rows,
            designLife: wanted,
            hoopModulus: 20e9 as Modulus,
            axialModulus: axialModulus as Modulus,
            failureStrain: 0.015 as Strain,
          }),
        );
        expect(found).toEqual(
          expected === undefined
            ? 'outside-validity'
            : {
                hoop: expected.hoop,
                axial: axialModulus / 20e9 < 0.5 ? expected.softAxial : expected.axial,
                lifeColumn: expected.life,
              },
        );
      }),
      seeded,
    );
  });

  it('laminate/performance-factor takes the first row that lasts', () => {
    const row: fc.Arbitrary<PerformanceRow> = fc.record({ life, factor: span(0.1, 1) });
    const table = fc.uniqueArray(row, { minLength: 1, maxLength: 6, selector: ({ life: at }) => at });
    fc.assert(
      fc.property(table, life, (rows, wanted) => {
        const expected = columnFor(rows, wanted);
        const found = attempt(() => performanceFactor({ table: rows, designLife: wanted }));
        expect(found).toEqual(
          expected === undefined ? 'outside-validity' : { factor: expected.factor, lifeColumn: expected.life },
        );
      }),
      seeded,
    );
  });
});
