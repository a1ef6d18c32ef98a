import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { loss, type Paths, withPaths } from '../../faults/cases.js';

/** Choices of a case that make its remaining strength larger are said; those that do not are not. */

const METHODS = [
  'original B31G',
  'modified B31G',
  'effective area',
  'DNV-RP-F101',
  'API 579-1 Level 1',
  'API 579-1 Level 2',
] as const;

const judged = (changes: Paths) => {
  const { found, warnings } = designOf(
    withPaths(loss, { line: { state: 'empty, dry, isolated, vented' }, ...changes }),
  );
  const strength = found?.strength;
  const warned = (words: RegExp): boolean => warnings.some(({ text }) => words.test(text));
  return { strength, warned };
};

describe('a method that the case names', () => {
  const NAMED = /because the case names it/u;

  // Two walls, so that more than one method is the lowest.
  const cases = ['0.1 in', '0.24 in'].flatMap((wall) => METHODS.map((method) => [method, wall] as const));

  it.each(cases)(
    'is warned of unless it is the lowest of all and takes the loss at its worst: %s, %s left',
    (method, wall) => {
      const { strength, warned } = judged({
        'assessment.method': method,
        'defect.remainingWall': wall,
        'defect.profile': undefined,
      });
      if (strength === undefined) return expect(warned(NAMED)).toBe(false);
      const pressures = strength.methods.flatMap((each) => ('value' in each ? [each] : []));
      const named = pressures.find(({ criterion }) => criterion === method)?.value ?? Number.NaN;
      const isLowest = pressures.every(({ value }) => value >= named);
      expect(warned(NAMED)).toBe(!isLowest);
    },
  );

  it('is warned of wherever it counts on the measured shape of the loss', () => {
    for (const method of ['effective area', 'API 579-1 Level 2'] as const) {
      const { strength, warned } = judged({ 'assessment.method': method });
      expect(strength?.method).toBe(method);
      expect(warned(NAMED)).toBe(true);
    }
  });

  it('is warned of on the measured shape even where that is as deep all along, and no other is lower', () => {
    const profile = ['0 in', '3.5 in', '7 in'].map((position) => ({ position, depth: '0.18 in' }));
    const { strength, warned } = judged({ 'assessment.method': 'API 579-1 Level 2', 'defect.profile': profile });
    const values = strength?.methods.map((each) => ('value' in each ? each.value : Number.POSITIVE_INFINITY)) ?? [];
    expect(strength?.safePressure).toBe(Math.min(...values));
    expect(warned(NAMED)).toBe(true);
  });

  it('is warned of once, of the wall of today and of that at the end of life', () => {
    const { warnings } = designOf(withPaths(loss, { 'assessment.method': 'effective area' }));
    expect(warnings.filter(({ text }) => NAMED.test(text))).toHaveLength(1);
  });

  it('leaves at least one that is not warned of, and none where no method is named', () => {
    const without = { 'defect.profile': undefined };
    expect(
      METHODS.some((method) => {
        const { strength, warned } = judged({ ...without, 'assessment.method': method });
        return strength !== undefined && !warned(NAMED);
      }),
    ).toBe(true);
    expect(judged(without).warned(NAMED)).toBe(false);
  });
});

describe('a flow stress and a safety factor that the case states', () => {
  it.each([
    ['1.1 SMYS', false],
    ['SMYS + 69 MPa', true],
    ['(SMYS + SMTS) / 2', true],
    [undefined, false],
  ])('warns of a flow stress other than the one that is taken unasked: %s', (flowStress, warns) => {
    const { warned } = judged({ 'assessment.flowStress': flowStress });
    expect(warned(/in place of 1\.1 SMYS/u)).toBe(warns);
  });

  it.each([
    [1.25, 0.9, false],
    [1.24, 0.9, true],
    [1, 1, true],
    [1.24, 0.72, false],
  ])(
    'warns of a factor below that of a damaged pipe: %s beside a design factor of %s',
    (safetyFactor, designFactor, warns) => {
      const { strength, warned } = judged({ assessment: { safetyFactor, designFactor } });
      expect((strength?.safetyFactor ?? Number.NaN) < 1.25).toBe(warns);
      expect(warned(/smaller than what would be taken unasked/u)).toBe(warns);
    },
  );
});
