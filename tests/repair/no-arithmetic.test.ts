import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ownNumbers } from './arithmetic.js';

const job = fileURLToPath(new URL('../../src/repair', import.meta.url));

describe('the job', () => {
  it('joins formulas and tables, and holds no arithmetic and no number of its own', () => {
    // The table of the case is data: its bounds and spans are what it is for.
    const own = ownNumbers(job).filter(({ file }) => !/\/case\/table[^/]*\.ts$/u.test(file));
    expect(own.map(({ file, line, text }) => `${file.slice(job.length)}:${line} ${text}`)).toEqual([]);
  });
});
