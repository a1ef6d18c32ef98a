import { describe, expect, it } from 'vitest';
import { formulas, sources } from '../../src/formulas.js';
import { asmePcc2, iso24817, practice, units } from '../../src/index.js';
import { frozen } from '../../src/numeric/frozen.js';
import { climateLimits } from '../../src/site/index.js';
import * as tables from '../../src/tables.js';

function open(value: unknown, path: string): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, held]) => open(held, `${path}.${key}`));
  return Object.isFrozen(value) ? inner : [path, ...inner];
}

describe('what a program shares with all others', () => {
  it('is closed against change, all the way down', () => {
    const constants = Object.fromEntries(Object.entries(tables).filter(([, value]) => typeof value !== 'function'));
    const shared = { asmePcc2, iso24817, practice, units, sources, climateLimits, ...constants };
    expect(Object.keys(constants).length).toBeGreaterThan(3);
    expect(Object.entries(shared).flatMap(([name, value]) => open(value, name))).toEqual([]);
    expect(Object.isFrozen(formulas)).toBe(true);
  });

  it('refuses a change in words', () => {
    expect(() => Object.assign(practice.modulusOfSteel, { value: 1 })).toThrow(/read only/);
    expect(() => Object.assign(units.length, { mm: [1, 1] })).toThrow(/read only/);
    const held = { inner: [1, { deep: 2 }] };
    expect(frozen(held)).toBe(held);
    expect(open(held, 'held')).toEqual([]);
  });
});
