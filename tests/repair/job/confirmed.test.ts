import { describe, expect, it } from 'vitest';
import { length } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { confirmedRules, iso24817 } from '../../../src/rules/index.js';
import { partWall } from '../example-case.js';

/** Numbers that somebody read in the document, and that let a repair be less than those of the library. */

const [library, short, long] = [50, 40, 60].map(length.mm);
const confirming = (value = library) => [
  { path: 'overlap.minimum', value: value as number, by: 'A. Reader', edition: '2017' },
];
const warnedOf = (...asked: Parameters<typeof designRepair>) =>
  designRepair(...asked).warnings.flatMap(({ text, amounts = [] }) =>
    /(?:confirms|set has) overlap\.minimum as/u.test(text) ? [amounts.map(({ value }) => value)] : [],
  );

describe('a confirmed number', () => {
  it('that is less conservative is warned of with the one before it', () => {
    expect(warnedOf({ ...partWall, confirmed: confirming(short) })).toEqual([[short, library]]);
    expect(warnedOf({ ...partWall, confirmed: confirming(long) })).toEqual([]);
  });

  it('is warned of in a rule set that the user brings, as in the case', () => {
    const bringing = (value?: typeof library) =>
      warnedOf(partWall, { rules: confirmedRules(iso24817, confirming(value)) });
    expect(bringing(short)).toEqual([[short, library]]);
    expect(bringing(long)).toEqual([]);
    expect(warnedOf(partWall, { rules: iso24817 })).toEqual([]);
  });
});
