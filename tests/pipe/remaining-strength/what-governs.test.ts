import { describe, expect, it } from 'vitest';
import { type RemainingStrengthInput, remainingStrength } from '../../../src/pipe/index.js';
import { type Force, gauge, length, stress } from '../../../src/quantity/index.js';
import { refusalOf } from './refusal-of.js';

/** A loss of 250 by 60 mm, 6 mm deep, in 9.53 mm. */
const base: RemainingStrengthInput = {
  outsideDiameter: length.mm(508),
  wallThickness: length.mm(9.53),
  yieldStrength: stress.MPa(359),
  tensileStrength: stress.MPa(455),
  defectDepth: length.mm(6),
  defectLength: length.mm(250),
  defectWidth: length.mm(60),
  maximumPressure: gauge.MPa(9),
  designFactor: 0.72,
};
const deep = { ...base, defectDepth: length.mm(0.82 * 9.53) };
const pulled = { ...base, defectLength: length.mm(20), axialForce: 8e6 as Force };
const { defectWidth: _, ...unmeasured } = base;

const failureBy = (input: RemainingStrengthInput, method: string): number => {
  const found = remainingStrength(input).methods.find((each) => each.method === method);
  return found?.inside === true ? (found.failurePressure ?? Number.NaN) : Number.NaN;
};
const ACROSS = 'axial stress over the width';

describe('what governs the remaining strength', () => {
  it('brings its notes, and those of the method where the pipe parts across', () => {
    const level1 = { method: 'API 579-1 Level 1' } as const;
    const { defectWidth: __, ...wide } = pulled;
    const across = remainingStrength({ ...wide, ...level1 });
    expect([across.method, across.notes]).toEqual([
      ACROSS,
      [expect.stringMatching(/all round the pipe/u), expect.stringMatching(/^no distance to the nearest/u)],
    ]);
    const round = remainingStrength({ ...unmeasured, ...level1, axialForce: 0 as Force });
    expect([round.method, round.notes]).toEqual([level1.method, [expect.stringMatching(/^no distance/u)]]);
  });

  it('says of DNV-RP-F101 that its factor is in the pressure, and more only of a loss that no other method reaches', () => {
    const named = { method: 'DNV-RP-F101' } as const;
    expect(remainingStrength({ ...base, ...named }).notes).toEqual([expect.stringMatching(/factor of 0\.9/u)]);
    const answered = remainingStrength({ ...deep, ...named });
    expect(answered.notes).toEqual([expect.stringMatching(/factor of 0\.9/u), expect.stringMatching(/less conserv/u)]);
    // No method counts unasked there, and none is the least of all at failure.
    expect(Object.keys(answered)).not.toContain('failurePressure');
  });

  it('is the least wall where the loss is too deep, as long as that counts as a wall', () => {
    const thin = remainingStrength(deep);
    expect(thin.notes).toEqual([expect.stringMatching(/thin all round as it is at its thinnest/u)]);
    expect(Object.keys(thin)).not.toContain('failurePressure');
    const none = remainingStrength({ ...base, defectDepth: length.mm(8.5) });
    expect([none.safePressure, none.notes]).toEqual([0, [expect.stringMatching(/carries nothing/u)]]);
  });

  it('is of all methods at failure where the named one predicts no failure', () => {
    const { methods, failurePressure } = remainingStrength({ ...base, method: 'API 579-1 Level 1' });
    const failures = methods.flatMap((each) => (each.inside ? (each.failurePressure ?? []) : []));
    expect(failures.length).toBeGreaterThan(3);
    expect(failurePressure).toBe(Math.min(...failures));
  });

  it('is never above the tensile strength, across as along', () => {
    // 1.1 SMYS is 394.9 MPa; across no force acts but that of the pressure.
    const soft = failureBy({ ...base, tensileStrength: stress.MPa(380) }, ACROSS);
    expect(soft / failureBy(base, ACROSS)).toBeCloseTo(380 / 394.9, 12);
    const { tensileStrength: __, ...unknown } = base;
    expect(failureBy(unknown, ACROSS)).toBe(failureBy(base, ACROSS));
    const just = stress.Pa(1.1 * base.yieldStrength);
    expect(failureBy({ ...base, tensileStrength: just }, 'modified B31G')).toBe(failureBy(base, 'modified B31G'));
  });
});

describe('the remaining strength is refused', () => {
  const along = (depths: readonly number[], from = 0, step = 25) =>
    depths.map((mm, index) => ({ position: length.mm(from + step * index), depth: length.mm(mm) }));
  const whole = [0, 1, 3, 2, 2, 6, 6, 3, 1, 1, 0];

  it.each<[string, Partial<RemainingStrengthInput>, object]>([
    ['a method of no name', { method: 'guess' as never }, { parameter: 'method', value: 'guess' }],
    ['a flow stress of no name', { flowStress: 'high' as never }, { parameter: 'flowStress', value: 'high' }],
    ['no tensile strength at all', { ...deep, tensileStrength: stress.MPa(0) }, { parameter: 'tensileStrength' }],
    ['too small a factor', { safetyFactor: 0.9, designFactor: undefined }, { parameter: 'safetyFactor', value: 0.9 }],
    ['no factor', { designFactor: undefined }, { parameter: 'safetyFactor', value: 'missing' }],
    ['a profile of another depth', { profile: along(whole.map((mm) => mm / 2)) }, { value: 0.003 }],
    ['a profile that is too short', { profile: along(whole, 1000, 5) }, { parameter: 'length of profile' }],
    ['a profile that rises', { profile: along([-1, ...whole.slice(1)]) }, { parameter: 'profile[0].depth' }],
  ])('for %s', (_name, input, expected) => {
    expect(refusalOf({ ...base, ...input })).toMatchObject({ code: 'invalid-input', ...expected });
  });

  it('for a profile too short by the length that it has', () => {
    expect(refusalOf({ ...base, profile: along(whole, 1000, 5) }).value).toBeCloseTo(0.05, 12);
  });

  it('for a mean of strengths of which one is missing', () => {
    const { tensileStrength: __, ...unknown } = base;
    const asked = { ...unknown, method: 'modified B31G', flowStress: '(SMYS + SMTS) / 2' } as const;
    expect(refusalOf(asked).message).toMatch(/must be given for a flow stress between yield and tensile strength/u);
  });
});
