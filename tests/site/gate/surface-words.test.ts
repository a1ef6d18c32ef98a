import { describe, expect, it } from 'vitest';
import { length, time } from '../../../src/quantity/index.js';
import * as site from '../../../src/site/index.js';

/** What the gate of the steel says of each thing that it looks at, and what would turn it. */

const steel: site.SurfaceGateInput = {
  requiredGrade: 'Sa 2 1/2',
  grade: 'Sa 2 1/2',
  requiredProfile: length.um(60),
  profile: length.um(60),
  isFreeOfOil: true,
  hasRustBloom: false,
  sincePreparation: time.hour(4),
  openTime: time.hour(4),
};
const [limit, precision] = [4, 1] as never[];
const salts = (...readings: readonly number[]): Partial<site.SurfaceGateInput> => ({
  saltLimit: limit,
  saltPrecision: precision,
  saltReadings: readings as never,
});

describe('the gate of the steel', () => {
  it('lets through what is just as it has to be', () => {
    const { decision, reasons } = site.surfaceGate(steel);
    expect(decision).toBe('go');
    expect(reasons.find(({ check }) => check === 'clean and bright')?.because.text).toMatch(/^no oil/u);
  });

  it('says how much is left of the time to prime', () => {
    const { reasons } = site.surfaceGate({ ...steel, sincePreparation: time.hour(1) });
    const left = reasons.find(({ check }) => check === 'freshly prepared')?.change;
    expect(left?.amounts?.map(({ value }) => value)).toEqual([3 * 3600]);
  });

  it.each<[string, Partial<site.SurfaceGateInput>, string, string, RegExp, RegExp]>([
    [
      'a lighter grade',
      { grade: 'Sa 2' },
      'preparation grade',
      'stop',
      /is Sa 2 .*Sa 2 1\/2 is required$/u,
      /^prepare to Sa 2 1\/2/u,
    ],
    [
      'a grade of another method',
      { grade: 'St 3' },
      'preparation grade',
      'stop',
      /not compared$/u,
      /qualified on St 3$/u,
    ],
    ['oil', { isFreeOfOil: false }, 'clean and bright', 'stop', /^oil or grease is on the steel$/u, /^degrease first/u],
    ['rust', { hasRustBloom: true }, 'clean and bright', 'stop', /^rust has bloomed$/u, /^degrease first/u],
    [
      'oil and rust',
      { isFreeOfOil: false, hasRustBloom: true },
      'clean and bright',
      'stop',
      /^oil or grease is on the steel, rust has bloomed$/u,
      /^degrease first/u,
    ],
    [
      'a time gone by',
      { sincePreparation: time.hour(5) },
      'freshly prepared',
      'stop',
      /^prepared \{0\} ago/u,
      /^prepare again$/u,
    ],
    ['salts not measured', { saltLimit: limit }, 'soluble salts', 'wait', /were not measured$/u, /^measure them$/u],
    ['few salts', salts(3), 'soluble salts', 'go', /^one reading is/u, /^measure again if the steel gets wet$/u],
    ['salts at the limit', salts(4), 'soluble salts', 'wait', /^one reading is/u, /^take more readings/u],
    ['salts that may just keep it', salts(5), 'soluble salts', 'wait', /^one reading is/u, /^take more readings/u],
    ['too many salts', salts(5.01), 'soluble salts', 'stop', /^one reading is/u, /^wash with clean water/u],
  ])('says of %s what it is and what to do', (_, given, check, decision, because, change) => {
    const found = site.surfaceGate({ ...steel, ...given }).reasons.find((reason) => reason.check === check);
    expect(found?.decision).toBe(decision);
    expect(found?.because.text).toMatch(because);
    expect(found?.change.text).toMatch(change);
  });
});
