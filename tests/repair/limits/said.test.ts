import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { designOf } from '../../faults/answers.js';
import { type CaseFile, emptyLeak, evenLoss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
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

  it('of a hole that either row of the screening calls a large one', () => {
    const large = 'size of the hole';
    const by = (units: string): Paths => ({
      basis: 'ASME PCC-2',
      'repair.class': 3,
      'pipe.size': undefined,
      'pipe.outsideDiameter': '200 mm',
      'pipe.wallThickness': '8 mm',
      'service.designPressure': '1 bar',
      'defect.growth.length': '0 mm/year',
      'defect.holeDiameter': '45 mm',
      confirmed: [{ path: `highRisk.${units}.holeOverDiameter`, value: 0.2, by: 'A. Reader', edition: '2022' }],
    });
    // 0.225 of the diameter, where both rows say 0.25.
    expect(['si', 'us'].map((units) => warned(emptyLeak, by(units), large))).toEqual([true, true]);
    expect(warned(emptyLeak, { ...by('si'), confirmed: undefined }, large)).toBe(false);
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
