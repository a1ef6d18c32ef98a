import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { designOf } from '../../faults/answers.js';
import { type CaseFile, evenLoss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { leaking } from '../example-case.js';
import { recordedOf } from '../recorded.js';

/** What a limit says of the repair beside its verdict: where it bears on it, and not a degree before. */

const warned = (file: CaseFile, changes: Paths, words: string): boolean =>
  designOf(withPaths(file, changes)).warnings.some(({ text, step }) => text.includes(words) && step === 'return');

describe('the owner of the line is warned', () => {
  it.each([
    ['of a bond that is counted as it was tested', 'service.designTemperature', '40 degC', '40.1 degC', 'holds less'],
    ['of ice', 'service.lowestTemperature', '0 degC', '-0.1 degC', 'water that freezes'],
  ])('%s, beyond the temperature and not at it', (_, field, at, beyond, words) => {
    const qualified = { 'laminate.lowestTemperature': '-10 degC' };
    expect(warned(evenLoss, { ...qualified, [field]: at }, words)).toBe(false);
    expect(warned(evenLoss, { ...qualified, [field]: beyond }, words)).toBe(true);
  });
});

describe('what the resin stands', () => {
  it('is that of the contents of a typed case too, whatever blanks stand round their name', () => {
    const resists = { ...leaking.laminate.resists, contents: ' produced  water ' } as typeof leaking.laminate.resists;
    const { missing } = designRepair({ ...leaking, laminate: { ...leaking.laminate, resists } });
    expect(missing).toEqual([]);
  });
});

describe('the record of the limits', () => {
  it.each<readonly [string, CaseFile, Paths, Paths]>([
    ['the transition counts as it is stated', evenLoss, {}, { 'laminate.wetGlassTransition': '100 degC' }],
    [
      'laminate/allowable-strain, hoop strain, set on the warmest steel',
      quietLoss,
      { 'service.lowestTemperature': '10 degC' },
      {},
    ],
  ])('says "%s" where it was so, and nowhere else', (text, file, where, nowhere) => {
    expect(recordedOf(withPaths(file, where))).toContain(text);
    expect(recordedOf(withPaths(file, nowhere))).not.toContain(text);
  });
});
