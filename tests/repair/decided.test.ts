import { describe, expect, it } from 'vitest';
import { designRepair } from '../../src/repair/index.js';
import { caseOf, designOf, laminateOf } from '../faults/answers.js';
import { bend, type CaseFile, evenLoss, loss, type Paths, withPaths, yieldedLoss } from '../faults/cases.js';

/** What the record says that was decided: where it was, and not where it was not. */

const decided = (file: CaseFile): string[] => {
  const { record = [] } = designRepair(caseOf(file), { record: true });
  return record.flatMap((entry) => (entry.sort === 'decision' ? [entry.what.text] : []));
};
const sheet = (width: string, finalLap?: string): Paths => ({
  wrap: { form: 'sheet', width, finalLap, rollLength: '25 m', waste: '10 %' },
});
const beside = (gapAlong: string): Paths => ({
  'defect.neighbours': [
    {
      cause: 'external corrosion',
      gapAlong,
      gapRound: '0 mm',
      axialLength: '20 mm',
      circumferentialWidth: '20 mm',
      remainingWall: '5 mm',
    },
  ],
});
// (R - D/4)/(R - D/2): 1.28 at R = 1.4 D, 1.06 at 5 D, where the rule set says 1.2.
const ofDiameter = (times: number): Paths => ({ 'fitting.bendRadius': `${times * 168.3} mm` });

describe('the record of a design', () => {
  it.each<readonly [string, CaseFile, Paths, Paths]>([
    ['factor of the bend by its inside', bend, ofDiameter(1.4), ofDiameter(5)],
    ['factor of the bend by the rule set', bend, ofDiameter(5), ofDiameter(1.4)],
    ['lap of a turn by the bond', evenLoss, sheet('2 m', '10 mm'), sheet('2 m', '150 mm')],
    ['one band over the whole length', evenLoss, sheet('2 m'), sheet('300 mm')],
    ['all passes end together', evenLoss, {}, { 'wrap.width': '25 mm' }],
    ['each pass ends a step inside the one below', evenLoss, { 'wrap.width': '25 mm' }, {}],
    ['the transition counts as it is stated', evenLoss, {}, { 'laminate.wetGlassTransition': '100 degC' }],
    [
      'a neighbour {0} along the pipe and {1} round it is one defect with this one',
      loss,
      beside('9 mm'),
      beside('3 m'),
    ],
    ['profile left out', loss, beside('9 mm'), beside('3 m')],
    ['profile left out', loss, beside('9 mm'), { ...beside('9 mm'), 'defect.profile': undefined }],
    ['hoop load taken on the diameter over the filler', yieldedLoss, {}, { filler: 'none' }],
  ])('says "%s" where it was so, and nowhere else', (text, file, where, nowhere) => {
    expect(decided(withPaths(file, where))).toContain(text);
    expect(decided(withPaths(file, nowhere))).not.toContain(text);
  });
});

describe('the lap of a turn of sheet', () => {
  it('is the longer of what is stated and what the bond takes for the force of a ply', () => {
    // l = 3 E eps t/tau, round the pipe: 24 GPa, 0.8 mm, 8 MPa.
    const ofBond = (3 * 24e9 * laminateOf(withPaths(evenLoss, sheet('2 m'))).hoopStrain * 0.8e-3) / 8e6;
    const laps = (stated: string) => {
      const { wrap } = designOf(withPaths(evenLoss, sheet('2 m', stated)));
      return wrap?.form === 'sheet' ? wrap.finalLap : Number.NaN;
    };
    expect(laps('10 mm')).toBeCloseTo(ofBond, 12);
    expect(ofBond).toBeGreaterThan(0.01);
    expect(laps('150 mm')).toBeCloseTo(0.15, 12);
  });
});
