import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import {
  b31gAll,
  b31gOriginal,
  dnvAll,
  dnvSingleDefect,
  modifiedB31g,
  modifiedB31gAll,
} from '../../../src/pipe/index.js';
import { length, stress } from '../../../src/quantity/index.js';

const S = stress.MPa(400);

const rows = fc.record({
  D: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  t: fc.double({ min: 0.005, max: 0.03, noNaN: true }),
  losses: fc.array(
    fc.tuple(fc.double({ min: 0, max: 0.79, noNaN: true }), fc.double({ min: 1e-3, max: 2, noNaN: true })),
    { minLength: 1, maxLength: 40 },
  ),
});

interface Survey {
  readonly outsideDiameter: ReturnType<typeof length.m>;
  readonly wallThickness: ReturnType<typeof length.m>;
  readonly depth: Float64Array;
  readonly length: Float64Array;
}

const forms = [
  [
    'original B31G',
    (survey: Survey, out: Float64Array) => b31gAll({ ...survey, flowStress: S }, out),
    (pipe: Omit<Survey, 'depth' | 'length'>, d: number, L: number) =>
      b31gOriginal({ ...pipe, flowStress: S, defectDepth: length.m(d), defectLength: length.m(L) }),
    0.8,
  ],
  [
    'modified B31G',
    (survey: Survey, out: Float64Array) => modifiedB31gAll({ ...survey, flowStress: S }, out),
    (pipe: Omit<Survey, 'depth' | 'length'>, d: number, L: number) =>
      modifiedB31g({ ...pipe, flowStress: S, defectDepth: length.m(d), defectLength: length.m(L) }),
    0.8,
  ],
  [
    'DNV-RP-F101',
    (survey: Survey, out: Float64Array) => dnvAll({ ...survey, tensileStrength: S, editionFactor: 1.05 }, out),
    (pipe: Omit<Survey, 'depth' | 'length'>, d: number, L: number) =>
      dnvSingleDefect({
        ...pipe,
        tensileStrength: S,
        editionFactor: 1.05,
        defectDepth: length.m(d),
        defectLength: length.m(L),
      }),
    0.85,
  ],
] as const;

describe.each(forms)('the survey form of %s', (_, all, one, deepest) => {
  const survey = (depth: readonly number[], lengths: readonly number[]): Survey => ({
    outsideDiameter: length.m(0.5),
    wallThickness: length.m(0.01),
    depth: Float64Array.from(depth),
    length: Float64Array.from(lengths),
  });

  it('gives every row what the formula gives, bit for bit, in the array that was passed', () => {
    fc.assert(
      fc.property(rows, ({ D, t, losses }) => {
        const pipe = { outsideDiameter: length.m(D), wallThickness: length.m(t) };
        const depth = Float64Array.from(losses, ([x]) => x * t);
        const lengths = Float64Array.from(losses, ([, L]) => L);
        const out = new Float64Array(losses.length);
        expect(all({ ...pipe, depth, length: lengths }, out)).toBe(out);
        losses.forEach(([x, L], row) => {
          expect(out[row]).toBe(one(pipe, x * t, L));
        });
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  const bad = [
    ['a negative depth', [0.001, -1e-9, -1], [0.1, 0.1, 0.1], 'depth[1]'],
    ['a depth over its limit', [0.001, 0.001, deepest * 0.01 + 1e-9], [0.1, 0.1, 0.1], 'depth[2]'],
    ['a depth through the wall', [0.01, 0.001, 0.001], [0.1, 0.1, 0.1], 'depth[0]'],
    ['a depth that is no number', [0.001, Number.NaN, 0.001], [0.1, 0.1, 0.1], 'depth[1]'],
    ['a length of 0', [0.001, 0.001, 0.001], [0.1, 0, -1], 'length[1]'],
    ['an endless length', [0.001, 0.001, 0.001], [0.1, 0.1, Number.POSITIVE_INFINITY], 'length[2]'],
    ['a length that is no number', [0.001, 0.001, 0.001], [Number.NaN, 0.1, 0.1], 'length[0]'],
  ] as const;
  it.each(bad)('names the first row that has %s', (__, depth, lengths, parameter) => {
    let caught: unknown;
    try {
      all(survey(depth, lengths), new Float64Array(3));
    } catch (error) {
      caught = error;
    }
    expect(isCalculationError(caught) && caught.parameter).toBe(parameter);
  });

  it('takes the deepest loss that the formula takes', () => {
    const out = all(survey([deepest * 0.01], [0.1]), new Float64Array(1));
    expect(out[0]).toBe(one(survey([], []), deepest * 0.01, 0.1));
  });

  it('refuses lists of different length and a pipe that cannot be', () => {
    expect(() => all(survey([0.001, 0.001], [0.1]), new Float64Array(2))).toThrow(/length is 1 rows/u);
    expect(() => all(survey([0.001], [0.1]), new Float64Array(2))).toThrow(/out is 2 rows/u);
    expect(() => all({ ...survey([0.001], [0.1]), wallThickness: length.m(0.25) }, new Float64Array(1))).toThrow(
      /half the outside diameter/u,
    );
  });
});
