import { describe, expect, it } from 'vitest';
import { calculationOf } from '../../docs/worksheet/formulas/calculation.js';
import type { AnyFormula } from '../../src/formula/index.js';
import { formulaById } from '../../src/registry/index.js';

const refusedAt = (id: string, given: Readonly<Record<string, unknown>>): string[] => {
  const calculation = calculationOf(formulaById(id) as AnyFormula, given, '', { system: 'si' });
  return calculation.sort === 'refused' ? calculation.refusals.map(({ path }) => path) : [calculation.sort];
};

describe('the calculator', () => {
  const pipe = { pressure: '150 psig', outsideDiameter: '12 3/4 in' };

  it('answers texts with units', () => {
    expect(refusedAt('pipe/hoop-stress', { ...pipe, wallThickness: '0.33 in' })).toEqual(['answered']);
    expect(refusedAt('cure/history-duration', { steps: [{ duration: '2 h', temperature: '20 degC' }] })).toEqual([
      'answered',
    ]);
  });

  it('refuses a bare number for a quantity, by the name of the input, by its symbol and in a row', () => {
    expect(refusedAt('pipe/hoop-stress', { ...pipe, wallThickness: 0.01 })).toEqual(['wallThickness']);
    expect(refusedAt('pipe/hoop-stress', { ...pipe, t: 0.01 })).toEqual(['wallThickness']);
    expect(refusedAt('cure/history-duration', { steps: [{ duration: 2, temperature: '20 degC' }] })).toEqual([
      'steps[0].duration',
    ]);
  });
});
