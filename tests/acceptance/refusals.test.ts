import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as room from '../../src/acceptance/index.js';
import { type AnyFormula, CalculationError } from '../../src/formula/index.js';

/** Every function of the room, by its declaration: what it must never take, and what it must never give back. */

interface Declared {
  readonly kind: string;
  readonly sample?: readonly [number, number];
  readonly choices?: readonly string[];
}

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
const formulas = (Object.values(room) as readonly unknown[]).filter(isFormula);
const inputsOf = (formula: AnyFormula): [string, Declared][] =>
  Object.entries(formula.inputs as Record<string, Declared>);
/** Inputs that may lie on either side of zero. */
const signed = new Set(['temperatureChange', 'liquidExpansion']);
const readings = [78, 80, 77, 81, 79, 80, 78, 79, 80, 81];

function middling(formula: AnyFormula): Record<string, unknown> {
  const values = inputsOf(formula).map(([name, { kind, sample, choices }]) => {
    if (kind === 'choice') return [name, choices?.[0]];
    if (kind === 'list') return [name, readings];
    const [low, high] = sample ?? [1, 1];
    return [name, kind === 'count' ? Math.round(low + (high - low) * 0.4) : low + (high - low) * 0.4];
  });
  return Object.fromEntries(values);
}

const finite = (value: unknown): boolean =>
  typeof value === 'string' ||
  typeof value === 'boolean' ||
  (typeof value === 'number' ? Number.isFinite(value) : Object.values(Object(value)).every(finite));

it('the room has its formulas', () => {
  expect(formulas.length).toBe(25);
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
  const names = inputsOf(formula);
  const numeric = names.filter(([, { kind }]) => kind !== 'choice' && kind !== 'list');

  it('accepts a middling value of every input', () => {
    expect(finite(formula.compute(middling(formula)))).toBe(true);
  });

  const bad = numeric.flatMap(([name]) =>
    [
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      null,
      ...(signed.has(name) ? [] : [-1e-9, -1]),
    ].map((value) => [name, value] as const),
  );
  if (bad.length > 0) {
    it.each(bad)('refuses %s of %s', (name, value) => {
      expect(() => formula.compute({ ...middling(formula), [name]: value })).toThrow(CalculationError);
    });
  }

  const words = names.filter(([, { kind }]) => kind === 'choice').map(([name]) => name);
  if (words.length > 0) {
    it.each(words)('refuses a wrong word for %s', (name) => {
      expect(() => formula.compute({ ...middling(formula), [name]: 'no such word' })).toThrow(CalculationError);
    });
  }

  const lists = names.filter(([, { kind }]) => kind === 'list').map(([name]) => name);
  if (lists.length > 0) {
    it.each(lists)('refuses no list, an empty one and readings that cannot be in %s', (name) => {
      for (const list of [undefined, [], [...readings.slice(1), -1], [...readings.slice(1), Number.NaN], [100.5, 80]]) {
        expect(() => formula.compute({ ...middling(formula), [name]: list })).toThrow(CalculationError);
      }
    });
  }

  it('returns finite numbers or refuses, for numbers of any size', () => {
    const any = fc.oneof(
      fc.double({ noNaN: true }),
      fc.double({ noNaN: true, min: 0 }),
      fc.double({ noNaN: true, min: 0, max: 2 }),
    );
    fc.assert(
      fc.property(
        fc.array(any, { minLength: numeric.length, maxLength: numeric.length }),
        fc.array(fc.boolean(), { minLength: numeric.length, maxLength: numeric.length }),
        (values, changed) => {
          const odd = numeric.flatMap(([name], index) => (changed[index] ? [[name, values[index]]] : []));
          try {
            expect(finite(formula.compute({ ...middling(formula), ...Object.fromEntries(odd) }))).toBe(true);
          } catch (error) {
            if (!(error instanceof CalculationError)) throw error;
          }
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
