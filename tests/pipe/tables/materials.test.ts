import { describe, expect, it } from 'vitest';
import { length, stress, type Temperature, temperature } from '../../../src/quantity/index.js';
import {
  allowableStress,
  allowableStressRows,
  type GradeEdition,
  linePipeGrade,
  linePipeGrades,
  structuralMinimumWall,
} from '../../../src/tables.js';

describe('line-pipe grade', () => {
  it('governs in psi to the 43rd edition and in MPa from the 44th', () => {
    const old = linePipeGrade('X52', '43rd and earlier');
    const later = linePipeGrade('X52', '44th and later');
    expect([old.yieldStrength, old.tensileStrength]).toEqual([stress.psi(52000), stress.psi(66000)]);
    expect([later.yieldStrength, later.tensileStrength]).toEqual([stress.MPa(360), stress.MPa(460)]);
    expect([old.source.key, later.source.key]).toEqual(['api-5l-43', 'api-5l-44']);
  });

  it('carries its yield strength in its name: X grades in ksi, L grades in MPa', () => {
    for (const grade of linePipeGrades.filter((name) => name.startsWith('X')))
      expect(linePipeGrade(grade, '43rd and earlier').yieldStrength).toBe(stress.ksi(Number(grade.slice(1))));
    for (const metric of ['L175', 'L210', 'L245', 'L290', 'L320', 'L360', 'L390', 'L415', 'L450', 'L485', 'L555'])
      expect(linePipeGrade(metric, '44th and later').yieldStrength).toBe(stress.MPa(Number(metric.slice(1))));
    expect(linePipeGrades).toHaveLength(11);
  });

  it('is in both editions the same steel to 2 %, and yields below its tensile strength', () => {
    for (const grade of linePipeGrades) {
      const [old, later] = [linePipeGrade(grade, '43rd and earlier'), linePipeGrade(grade, '44th and later')];
      expect(later.yieldStrength / old.yieldStrength).toBeGreaterThan(0.999);
      expect(later.yieldStrength / old.yieldStrength).toBeLessThan(1.021);
      expect(Math.abs(later.tensileStrength / old.tensileStrength - 1)).toBeLessThan(0.013);
      for (const { yieldStrength, tensileStrength } of [old, later])
        expect(yieldStrength).toBeLessThan(tensileStrength);
    }
  });

  it('refuses a grade or an edition that is not in the table', () => {
    expect(() => linePipeGrade('X53', '44th and later')).toThrow('must be one of A25 (L175)');
    expect(() => linePipeGrade('X52', '46th' as GradeEdition)).toThrow('edition is 46th');
  });
});

describe('allowable stress', () => {
  it('is returned for a row that is named, and never picked', () => {
    expect(allowableStressRows).toHaveLength(16);
    expect(() => allowableStress('A106', temperature.degC(40))).toThrow('must be one of ASTM A106 B seamless');
    expect(() => allowableStress('', temperature.degC(40))).toThrow('must be one of');
  });

  it('is linear between two entries and the entry itself at one', () => {
    const row = 'ASTM A312 TP304 seamless';
    expect(allowableStress(row, temperature.degC(200)).value).toBe(stress.MPa(129));
    expect(allowableStress(row, temperature.degC(175)).value).toBe(stress.MPa(134));
    expect(allowableStress(row, temperature.degC(190)).value / 131e6).toBeCloseTo(1, 12);
    expect(allowableStress('ASTM A312 TP304L seamless', temperature.degC(125)).value).toBe(stress.MPa(115));
  });

  it('carries the tag of its own entries: the weaker of two', () => {
    const tag = (row: string, celsius: number) => allowableStress(row, temperature.degC(celsius)).tag;
    expect(tag('ASTM A53 B seamless', 40)).toBe('secondary');
    expect(tag('ASTM A53 B seamless', 50)).toBe('recalled');
    expect(tag('ASTM A312 TP316 seamless', 150)).toBe('recalled');
    expect(tag('ASTM A106 B seamless', 200)).toBe('secondary');
  });

  it('is refused outside its row, with a word on colder pipe', () => {
    const row = 'ASTM A106 B seamless';
    expect(() => allowableStress(row, temperature.degC(200.1))).toThrow('must be from 313.15 to 473.15 K');
    expect(() => allowableStress(row, temperature.degC(20))).toThrow('ask for the first entry');
    expect(() => allowableStress('ASTM A312 TP304L seamless', temperature.degC(160))).toThrow('423.15 K');
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -1])
      expect(() => allowableStress(row, bad as Temperature)).toThrow('temperature is');
  });

  it('never exceeds two thirds of the yield strength of ferritic rows, nor a third of the tensile strength', () => {
    for (const row of allowableStressRows.filter((name) => !name.includes('TP'))) {
      const { value, yieldStrength, tensileStrength } = allowableStress(row, temperature.degC(40));
      expect(value).toBeLessThanOrEqual((2 / 3) * yieldStrength * 1.003);
      expect(value).toBeLessThanOrEqual((1 / 3) * tensileStrength * 1.003);
    }
  });

  it('tells what the number leaves out', () => {
    expect(allowableStress('ASTM A53 B ERW', temperature.degC(40)).note).toContain('0.85');
    expect(allowableStress('ASTM A312 TP316 seamless', temperature.degC(40)).note).toContain('flanged');
    expect(allowableStress('API 5L X52', temperature.degC(40)).note).toBeUndefined();
  });
});

describe('structural minimum wall', () => {
  it('grows with the size and stays below the alert wall', () => {
    let before = 0;
    for (const nps of ['1/2', '3/4', 1, '1-1/2', 2, 3, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24]) {
      const { value, alert } = structuralMinimumWall(nps, temperature.degC(60));
      expect(value).toBeGreaterThanOrEqual(before);
      expect(alert).toBeGreaterThan(value);
      before = value;
    }
    expect(length.inMm(structuralMinimumWall(2, temperature.degC(60)).value)).toBeCloseTo(1.8, 12);
    expect(length.inMm(structuralMinimumWall(18, temperature.degC(60)).value)).toBeCloseTo(2.8, 12);
  });

  it('is refused for sizes between the rows, larger ones, and hot pipe', () => {
    for (const nps of [5, '2-1/2', 26, 'x', Number.NaN])
      expect(() => structuralMinimumWall(nps, temperature.degC(60))).toThrow('nps is');
    expect(temperature.inDegC(temperature.kelvin(478.15))).toBeCloseTo(205, 9);
    expect(() => structuralMinimumWall(6, temperature.degC(205))).toThrow('must be below');
    expect(() => structuralMinimumWall(6, temperature.kelvin(0))).toThrow('temperature is 0');
  });
});
