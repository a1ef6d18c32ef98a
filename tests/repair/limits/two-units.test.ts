import { describe, expect, it } from 'vitest';
import { reaches, settled } from '../../../src/numeric/index.js';
import { temperature } from '../../../src/quantity/index.js';
import { designOf } from '../../faults/answers.js';
import {
  type CaseFile,
  emptyLeak,
  leak,
  live,
  type Paths,
  proposed,
  quietLoss,
  withPaths,
} from '../../faults/cases.js';

/** A temperature that meets its limit in another unit: the last digit of the conversion decides nothing, and a real excess does. */

const longTerm = withPaths(quietLoss, {
  'repair.method': 'long-term strength',
  'laminate.longTermStrength': { strength: '60 MPa', test: '1000 h survival', testTemperature: '60 degC' },
});
const utility = withPaths(quietLoss, {
  basis: 'ISO 24817',
  'repair.class': 1,
  'service.designPressure': '8 bar',
});
const second = { testTemperature: '20 degC', strength: '80 MPa' };

/** What a case comes to: its verdict, what it refuses and asks for, and its laminate. */
function answerOf(file: CaseFile, changes: Paths): unknown {
  const { verdict, reasons, missing, laminate } = designOf(withPaths(file, changes));
  return {
    verdict,
    refused: reasons.map(({ text }) => text),
    asked: missing.map(({ field }) => field),
    plies: laminate?.plies,
  };
}

/** Each: the field, what it may be at most or least, the same in the other unit, and what lies beyond it by a thousandth of a degree. */
const limits: readonly (readonly [string, CaseFile, field: string, limit: string, same: string, beyond: string])[] = [
  ['one long-term test', longTerm, 'service.designTemperature', '60 degC', '140 degF', '140.001 degF'],
  [
    'the warmer of two long-term tests',
    withPaths(longTerm, { [proposed.longTermSecond]: second }),
    'service.designTemperature',
    '60 degC',
    '140 degF',
    '140.001 degF',
  ],
  [
    'the upper limit of the laminate',
    withPaths(quietLoss, { 'laminate.glassTransition': '80 degC' }),
    'service.designTemperature',
    '60 degC',
    '140 degF',
    '140.001 degF',
  ],
  ['the heat that a class covers', utility, 'service.designTemperature', '40 degC', '104 degF', '104.001 degF'],
  [
    'what the resin stands',
    withPaths(emptyLeak, { 'service.designTemperature': '95 degF' }),
    'laminate.resists.temperature',
    '95 degF',
    '35 degC',
    '34.999 degC',
  ],
  [
    'the lowest temperature of the qualification',
    withPaths(quietLoss, { 'service.lowestTemperature': '5 degC' }),
    'laminate.lowestTemperature',
    '5 degC',
    '278.15000000000003 K',
    '5.001 degC',
  ],
  [
    'the cure of the sample of the transition',
    withPaths(quietLoss, {
      'site.pipeTemperature': '20 degC',
      'site.history': [{ duration: '100 h', temperature: '20 degC' }],
    }),
    proposed.transitionCure,
    '20 degC',
    '68 degF',
    '68.001 degF',
  ],
  [
    'steel on the day, by hand',
    withPaths(leak, live('1 bar')),
    'site.pipeTemperature',
    '60 degC',
    '140 degF',
    '140.001 degF',
  ],
];

describe('a temperature that meets its limit in another unit', () => {
  it('is not the same number', () => {
    expect(temperature.degF(140)).toBeGreaterThan(temperature.degC(60));
    expect(temperature.degF(140) - temperature.degC(60)).toBeLessThan(1e-12);
  });

  it.each(limits)(
    'is taken as the same, and a thousandth of a degree beyond is not: %s',
    (_, file, field, limit, same, beyond) => {
      const at = (value: string): unknown => answerOf(file, { [field]: value });
      expect(at(same)).toEqual(at(limit));
      expect(at(beyond)).not.toEqual(at(limit));
    },
  );

  it('does not pass where a class has to be stayed below, whichever way it was rounded', () => {
    const hot = { 'repair.class': 2, 'laminate.glassTransition': '150 degC', 'service.hazards': ['hot'] };
    for (const heat of ['100 degC', '212 degF', '373.14999999999998 K'])
      expect(
        designOf(withPaths(utility, { ...hot, 'service.designTemperature': heat })).reasons.map(({ text }) => text),
      ).toContainEqual(expect.stringContaining('the design temperature is above what class 2 covers'));
  });
});

describe('a value held to its most', () => {
  it('is the most where rounding alone lies between, and itself where it lies below or beyond', () => {
    expect([settled(1, 2), settled(2 + 1e-12, 2), settled(2.001, 2)]).toEqual([1, 2, 2.001]);
    expect(reaches(2, 2.001)).toBe(false);
  });
});
