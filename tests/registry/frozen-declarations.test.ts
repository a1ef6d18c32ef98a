import { describe, expect, it } from 'vitest';
import { formulaById, formulas } from '../../src/registry/index.js';

describe('a declaration', () => {
  it('is closed against change to its last row, also as it is found by its id', () => {
    const open = formulas.filter((formula) => !isClosed(formula) || !isClosed(formulaById(formula.id)));
    expect(open.map(({ id }) => id)).toEqual([]);
    expect(formulas.length).toBeGreaterThan(400);
  });
});

function isClosed(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(isClosed);
}
