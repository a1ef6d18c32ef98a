import { describe, expect, it } from 'vitest';
import { defaultStrains, defaultStrainsNearStep, performanceFactor } from '../../../src/laminate/index.js';
import { modulus, strain, time } from '../../../src/quantity/index.js';
import { asmePcc2, iso24817 } from '../../../src/rules/index.js';

const laminate = {
  hoopModulus: modulus.GPa(24),
  axialModulus: modulus.GPa(12.1),
  failureStrain: strain.percent(1.5),
};

describe('the default strains of the rule sets', () => {
  it('between two life columns are those of the longer life', () => {
    const table = iso24817.defaultStrains.continuous[2].value;
    for (const [years, hoop, column] of [
      [0.5, 0.0035, 2],
      [2, 0.0035, 2],
      [2.01, 0.003, 10],
      [10, 0.003, 10],
      [10.01, 0.0025, 20],
      [20, 0.0025, 20],
    ] as const) {
      const found = defaultStrains({ ...laminate, table, designLife: time.year(years) });
      expect([found.hoop, found.lifeColumn]).toEqual([hoop, time.year(column)]);
    }
    expect(() => defaultStrains({ ...laminate, table, designLife: time.year(20.01) })).toThrow('longest life');
  });

  it('along the pipe are the small ones when the laminate is softer there than half of its hoop modulus', () => {
    const table = asmePcc2.defaultStrains.continuous[3].value;
    const at = (GPa: number) =>
      defaultStrains({ ...laminate, table, axialModulus: modulus.GPa(GPa), designLife: time.year(10) }).axial;
    expect([at(12.01), at(12), at(11.99)]).toEqual([0.0025, 0.001, 0.001]);
  });

  it('along the pipe are the small ones when it is softer than that cold or warm, and a share near the step is told', () => {
    const table = asmePcc2.defaultStrains.continuous[3].value;
    const at = (cold: number, warm: number) => ({
      ...laminate,
      table,
      axialModulus: modulus.GPa(cold),
      warmHoopModulus: modulus.GPa(20),
      warmAxialModulus: modulus.GPa(warm),
      designLife: time.year(10),
    });
    const axial = [at(14, 11), at(14, 8), at(11, 14)].map((given) => defaultStrains(given).axial);
    expect(axial).toEqual([0.0025, 0.001, 0.001]);
    const near = [at(14, 11), at(14, 10.4), at(14, 9.6), at(14, 9.4), at(12.4, 14)].map(defaultStrainsNearStep);
    expect(near).toEqual([false, true, true, false, true]);
    const { warmHoopModulus: _, ...half } = at(14, 11);
    expect(() => defaultStrains(half)).toThrow('given as well');
  });

  it('ask for the one warm modulus that is missing', () => {
    const table = asmePcc2.defaultStrains.continuous[3].value;
    const at = (warm: object) => () => defaultStrains({ ...laminate, ...warm, table, designLife: time.year(10) });
    const missing = (parameter: string) => expect.objectContaining({ code: 'invalid-input', parameter });
    expect(at({ warmHoopModulus: modulus.GPa(20) })).toThrow(missing('warmAxialModulus'));
    expect(at({ warmAxialModulus: modulus.GPa(9) })).toThrow(missing('warmHoopModulus'));
  });

  it('are refused to a brittle laminate', () => {
    const table = iso24817.defaultStrains.rare[1].value;
    expect(() =>
      defaultStrains({ ...laminate, table, failureStrain: strain.percent(0.99), designLife: time.year(2) }),
    ).toThrow('must be at least 0.01');
  });
});

describe('the performance factor of the rule sets', () => {
  it('falls to the longer column, and never leaves its table', () => {
    const table = iso24817.performance.survivalTest[3].value;
    expect(performanceFactor({ table, designLife: time.year(3) })).toEqual({ factor: 0.54, lifeColumn: time.year(10) });
    expect(() => performanceFactor({ table, designLife: time.year(25) })).toThrow('longest life');
    expect(() => performanceFactor({ table: [{ life: time.year(5), factor: 1.2 }], designLife: time.year(3) })).toThrow(
      'table factor',
    );
    expect(() => performanceFactor({ table: [], designLife: time.year(3) })).toThrow('longest life');
  });
});

describe('a table by life', () => {
  const strains = { hoop: strain.percent(0.3), axial: strain.percent(0.2), softAxial: strain.percent(0.1) };
  const rows = [2, 20, 10].map((years) => ({ ...strains, factor: 0.5, life: time.year(years) }));

  it.each([
    [
      'default strains',
      (table: typeof rows, years: number) => defaultStrains({ ...laminate, table, designLife: time.year(years) }),
    ],
    [
      'performance factors',
      (table: typeof rows, years: number) => performanceFactor({ table, designLife: time.year(years) }),
    ],
  ])('of %s, in any order, is left only beyond its longest life, which the refusal names', (_, read) => {
    for (const table of [rows, [...rows].reverse()]) {
      expect(read(table, 5).lifeColumn).toBe(time.year(10));
      expect(read(table, 20).lifeColumn).toBe(time.year(20));
      expect(() => read(table, 20.01)).toThrow(
        expect.objectContaining({ parameter: 'designLife', limit: time.year(20) }),
      );
    }
  });
});
