import { describe, expect, it } from 'vitest';
import { run } from '../../tests/cli/run.js';
import { asked } from './asked.js';
import { budgets } from './budgets.js';
import { leastTimes } from './interleaved.js';
import { held, table } from './row.js';

describe('a row of the bench', () => {
  it('says that its budget is missed, with the budget and the measured value', () => {
    const row = { what: 'columns', measured: 1.36, unit: 'x', budget: budgets.columns } as const;
    expect(held(row)).toBe(false);
    expect(table([row]).replace(/ +/gu, ' ')).toContain('| columns | 1.36 x | 1.20 x | MISSED | |');
  });

  it('misses its budget when the measurement is no number', () => {
    expect(held({ what: 'nothing', measured: Number.NaN, unit: 'x', budget: 2 })).toBe(false);
  });

  it('says nothing of a budget where none is set', () => {
    const row = { what: 'decoding', measured: 23, unit: 'x' } as const;
    expect(held(row)).toBeUndefined();
    expect(table([row]).replace(/ +/gu, ' ')).toContain('| decoding | 23 x | none | | |');
  });
});

describe('the stopwatch of the bench', () => {
  it('refuses a calculation that does not give the same number each time', () => {
    let count = 0;
    expect(() => leastTimes([() => 1, () => count++], 0)).toThrow(/gave 0 at first and another number/);
  });

  it('refuses a calculation that gives no number, since nothing may have been calculated', () => {
    expect(() => leastTimes([() => Number.NaN], 0)).toThrow(/gave NaN at first/);
  });
});

describe('the cold starts of the bench', () => {
  it('ask something of each command that there is', async () => {
    const { err } = await run([]);
    const commands = /the commands are ([a-z, ]+)/u.exec(err)?.[1]?.split(', ');
    expect(Object.keys(asked)).toEqual(commands);
  });
});
