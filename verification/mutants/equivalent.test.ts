import { describe, expect, it } from 'vitest';
import { equivalents, isTheSame } from './equivalent.js';
import { instrument } from './instrument.js';

describe('a change that makes no difference', () => {
  it('is still one that is made', async () => {
    const { mutants } = await instrument([...new Set(equivalents.map(({ file }) => file))]);
    const gone = equivalents.filter((row) => !mutants.some((mutant) => isTheSame(row, mutant)));
    expect(gone).toEqual([]);
  });

  it('stands once, with its reason', () => {
    const rows = equivalents.map(({ file, original, replacement }) => `${file}: ${original} => ${replacement}`);
    expect(rows).toEqual([...new Set(rows)]);
    for (const { because } of equivalents) expect(because.length).toBeGreaterThan(20);
  });
});
