import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesIn, root } from '../../verification/in-process/files.js';

/** Sentences that readers stumbled over, and the like of them: whoever writes one anew finds it here. */
const STUMBLED_OVER = [
  'weakest evidence behind',
  'not the clock',
  'clock alone',
  'hang on it',
  'hangs on it',
  'For one kelvin',
  'decide nothing',
  'Counted as nothing',
  'eats into',
  'another hand printed',
  'stay for the restraints',
  'a hand that strays',
  'stripe of fewer',
];

describe('what people read', () => {
  const files = [...filesIn('src', '.ts'), ...filesIn('docs', '.md'), 'README.md'];

  it.each(STUMBLED_OVER)('never says "%s"', (words) => {
    expect(files.filter((file) => readFileSync(`${root}/${file}`, 'utf8').includes(words))).toEqual([]);
  });
});
