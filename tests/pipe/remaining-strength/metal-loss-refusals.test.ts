import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, CalculationError } from '../../../src/formula/index.js';
import * as room from '../../../src/pipe/index.js';

/** Every formula on lost metal, by its declaration: what it must never take, and what it must never give back. */

interface Declared {
  readonly kind: string;
  readonly sample?: readonly [number, number];
  readonly columns?: Readonly<Record<string, string>>;
}

const MINE =
  /^pipe\/(?:folias|dnv|flow-stress|b31g|modified-b31g|rectangular|effective-area|api579|local-metal|circumferential-extent|through-wall|leak-or|critical-through|safe-pressure|wall-loss|governing-wall|wall-at-end|defect-|remaining-life|inspection-interval)/u;

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
const formulas = (Object.values(room) as readonly unknown[]).filter(isFormula).filter(({ id }) => MINE.test(id));
const inputsOf = (formula: AnyFormula): [string, Declared][] =>
  Object.entries(formula.inputs as Record<string, Declared>);

/** A defect that every method accepts; the names mean the same in all of them. */
const ACCEPTED: Readonly<Record<string, number>> = {
  outsideDiameter: 0.5,
  insideDiameter: 0.48,
  wallThickness: 0.01,
  correctedWall: 0.01,
  defectDepth: 0.004,
  defectLength: 0.1,
  measuredMinimum: 0.006,
  operatingPressure: 3e6,
  designPressure: 5e6,
  previousWall: 0.015,
  presentWall: 0.0149,
  requiredWall: 0.004,
  laterWall: 0.004,
  sincePrevious: 1e8,
  relativeDepth: 0.3,
  depthFactor: 1.2,
  strengthFactor: 0.96,
  pressure: 2e6,
  axialStress: -1e8,
  distanceToDiscontinuity: 1,
  futureAllowance: 0.0001,
  tensileStrength: 6e8,
  yieldStrength: 3e8,
};

function middling(formula: AnyFormula): Record<string, unknown> {
  return Object.fromEntries(
    inputsOf(formula).map(([name, { kind, sample, columns }]) => {
      if (kind === 'list') {
        const [, other = 'depth'] = Object.keys(columns ?? {});
        return [name, [0, 1, 2, 3].map((k) => ({ position: 0.02 * k, [other]: 0.006 }))];
      }
      const [low, high] = sample ?? [1, 1];
      return [name, ACCEPTED[name] ?? low + (high - low) * 0.4];
    }),
  );
}

const finite = (value: unknown): boolean =>
  typeof value === 'string' ||
  typeof value === 'boolean' ||
  (typeof value === 'number' ? Number.isFinite(value) : Object.values(Object(value)).every(finite));

/** Inputs that may be negative: a compressive stress. */
const SIGNED = new Set(['axialStress']);

describe('the formulas on lost metal', () => {
  it('are all found', () => {
    expect(formulas.length).toBeGreaterThanOrEqual(36);
  });
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
  const names = inputsOf(formula).filter(([, { kind }]) => kind !== 'list');

  it('accepts a middling value of every input', () => {
    expect(finite(formula.compute(middling(formula)))).toBe(true);
  });

  const bad = names.flatMap(([name]) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, ...(SIGNED.has(name) ? [] : [-1e-9, -1])].map(
      (value) => [name, value] as const,
    ),
  );
  it.each(bad)('refuses %s of %s', (name, value) => {
    expect(() => formula.compute({ ...middling(formula), [name]: value })).toThrow(CalculationError);
  });

  it('returns finite numbers or refuses, for numbers of any size', () => {
    const any = fc.oneof(fc.double({ noNaN: true, min: 0 }), fc.double({ noNaN: true, min: 0, max: 2 }));
    fc.assert(
      fc.property(fc.array(any, { minLength: names.length, maxLength: names.length }), fc.nat(31), (values, mask) => {
        const drawn = names.map(([name], index) => [name, values[index]] as const);
        // Some inputs keep a usual value, or next to nothing would be accepted.
        const kept = drawn.filter((__, index) => ((mask >> (index % 5)) & 1) === 1);
        try {
          const result = formula.compute({ ...middling(formula), ...Object.fromEntries(kept) });
          expect(finite(result), JSON.stringify(Object.fromEntries(kept))).toBe(true);
        } catch (error) {
          if (!(error instanceof CalculationError)) throw error;
        }
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });
});

describe('profiles', () => {
  const pipe = { outsideDiameter: 0.5, wallThickness: 0.01, flowStress: 4e8 };
  const shell = { insideDiameter: 0.48, correctedWall: 0.01, workingPressure: 5e6 };
  const byDepth = (profile: unknown): unknown => room.effectiveArea({ ...pipe, profile } as never);
  const byWall = (profile: unknown): unknown => room.localMetalLossProfile({ ...shell, profile } as never);
  const cases = [
    ['no point', [], /at least 2 points/u],
    ['one point', [[0, 0.002]], /at least 2 points/u],
    [
      'points out of order',
      [
        [0, 0.002],
        [0.02, 0.002],
        [0.01, 0.002],
      ],
      /profile\[2\]\.position is 0\.01 m/u,
    ],
    [
      'two points at one place',
      [
        [0, 0.002],
        [0, 0.002],
      ],
      /profile\[1\]\.position is 0 m/u,
    ],
    [
      'a position that is no number',
      [
        [0, 0.002],
        [Number.NaN, 0.002],
      ],
      /profile\[1\]\.position is NaN/u,
    ],
  ] as const;

  it.each(cases)('are refused with %s', (_, points, message) => {
    expect(() => byDepth(points.map(([position, depth]) => ({ position, depth })))).toThrow(message);
    expect(() => byWall(points.map(([position, wall]) => ({ position, wall })))).toThrow(message);
  });

  it('are refused where the loss is deeper than the method allows, with the point named', () => {
    const points = [0, 0.002, 0.0081].map((depth, k) => ({ position: 0.02 * k, depth }));
    expect(() => byDepth(points)).toThrow(/profile\[2\]\.depth is 0\.0081 m; must be at most 0\.8/u);
    const walls = points.map(({ position, depth }) => ({ position, wall: 0.01 - depth }));
    expect(() => byWall(walls)).toThrow(/profile\[2\]\.wall .* at least 0\.2 of the corrected wall/u);
  });

  it('are refused with a negative or endless depth', () => {
    for (const depth of [-1e-9, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() =>
        byDepth([
          { position: 0, depth: 0.001 },
          { position: 1, depth },
        ]),
      ).toThrow(CalculationError);
    }
  });
});
