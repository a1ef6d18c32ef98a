import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Amount,
  exactly,
  joinLines,
  line,
  roundedDown,
  roundedUp,
  saidIn,
  written,
} from '../../src/quantity/index.js';

const spoken = ({ name, value }: Amount): string => `${name} ${value}`;

describe('a line', () => {
  it('is written with each amount in its place, and keeps a mark that has none', () => {
    expect(written(line('from {0} to {1}', exactly('a', 'count', 1), exactly('b', 'count', 2)), spoken)).toBe(
      'from a 1 to b 2',
    );
    expect(written(line('{0} and {1}', exactly('a', 'count', 1)), spoken)).toBe('a 1 and {1}');
  });

  it('spoken within another sentence keeps its amounts', () => {
    const least = line('at least {0}', roundedUp('profile', 'length', 60e-6));
    expect(saidIn(least, (text) => `Profile: ${text}.`)).toEqual({ ...least, text: 'Profile: at least {0}.' });
    expect(saidIn({ text: 'clean' }, (text) => `${text}.`)).toEqual({ text: 'clean.' });
  });

  it('joined with others reads as each of them alone, for more than ten amounts too', () => {
    const sentence = fc
      .array(fc.integer({ min: 0, max: 99 }), { maxLength: 6 })
      .map((values) =>
        line(
          values.map((_, index) => `part {${index}}`).join(' '),
          ...values.map((value) => roundedDown('n', 'count', value)),
        ),
      );
    fc.assert(
      fc.property(fc.array(sentence, { maxLength: 6 }), (lines) => {
        const alone = lines.map((each) => written(each, spoken)).join('; ');
        expect(written(joinLines(lines, '; '), spoken)).toBe(alone);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
