import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, CalculationError, isCalculationError } from '../../src/formula/index.js';
import * as laminate from '../../src/laminate/index.js';
import { drawCalls } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from '../formula/samplers.js';

/** What no function of the room may take, and what none may give back. */

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
const formulas = (Object.values(laminate) as readonly unknown[]).filter(isFormula);

/** Forms in which a push along the pipe is a load that adds; the others carry a pull and take no push. */
const TAKES_PUSH = [
  'laminate/equivalent-axial-force',
  'laminate/thickness-ignored-hoop',
  'laminate/pressure-ignored-hoop',
  'laminate/relieving-force',
];

/** Whether an input may be below zero. */
const signed = (id: string, name: string): boolean =>
  name.endsWith('Expansion') || (name === 'axialForce' && TAKES_PUSH.includes(id));

/** Whether every number in a result is finite. */
function finite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value === 'string' || Object.values(Object(value)).every(finite);
}

const kindsOf = (formula: AnyFormula): [string, string][] =>
  Object.entries(formula.inputs as Record<string, { kind: string }>).map(([name, { kind }]) => [name, kind]);

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (id, formula) => {
  const [draw] = drawCalls(formula, seeded(id), { wanted: 1, lists: drawList });
  const accepted = draw?.input ?? {};
  const numeric = kindsOf(formula).filter(([, kind]) => kind !== 'list');

  const bad = numeric.flatMap(([name]) =>
    [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, ...(signed(id, name) ? [] : [-1])].map(
      (value) => [name, value] as const,
    ),
  );

  it.each(bad)('refuses %s of %s in a sentence that says what would pass', (name, value) => {
    try {
      formula.compute({ ...accepted, [name]: value });
      expect.fail('it was accepted');
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      expect(error.code).toBe('invalid-input');
      expect(error.message).toMatch(/; must be /u);
    }
  });

  it('returns finite numbers or refuses, for inputs of any size', () => {
    const size = fc.oneof(
      fc.double({ noNaN: true, min: 0 }),
      fc.double({ noNaN: true, min: 0, max: 2 }),
      fc.double({ noNaN: true }),
      fc.integer({ min: 0, max: 1_000_000_000 }),
    );
    fc.assert(
      fc.property(fc.array(size, { minLength: numeric.length, maxLength: numeric.length }), (values) => {
        const input = { ...accepted, ...Object.fromEntries(numeric.map(([name], index) => [name, values[index]])) };
        try {
          expect(finite(formula.compute(input))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(CalculationError);
        }
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
