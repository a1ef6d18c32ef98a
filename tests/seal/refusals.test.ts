import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, CalculationError } from '../../src/formula/index.js';
import * as room from '../../src/seal/index.js';

/** Every function of the room, by its declaration: what it must never take, and what it must never give back. */

interface Declared {
  readonly kind: string;
  readonly sample?: readonly [number, number];
  readonly default?: number;
  readonly choices?: readonly string[];
  readonly columns?: Readonly<Record<string, string>>;
}

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
const formulas = (Object.values(room) as readonly unknown[]).filter(isFormula);
const inputsOf = (formula: AnyFormula): [string, Declared][] =>
  Object.entries(formula.inputs as Record<string, Declared>);

/** An accepted input: the declared defaults, and a middling value of each span. */
function middling(formula: AnyFormula): Record<string, unknown> {
  const values = inputsOf(formula).map(([name, { kind, sample, choices, columns }]) => {
    if (kind === 'flag') return [name, false];
    if (kind === 'choice') return [name, choices?.[0]];
    if (kind === 'list') return [name, [Object.fromEntries(Object.keys(columns ?? {}).map((column) => [column, 1]))]];
    const [low, high] = sample ?? [1, 1];
    return [name, kind === 'count' ? Math.round(low + (high - low) * 0.4) : low + (high - low) * 0.4];
  });
  return Object.fromEntries(values);
}

const finite = (value: unknown): boolean =>
  typeof value === 'string' ||
  (typeof value === 'number' ? Number.isFinite(value) : Object.values(Object(value)).every(finite));

describe.each(formulas.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
  const names = inputsOf(formula);

  it('accepts a middling value of every input', () => {
    expect(finite(formula.compute(middling(formula)))).toBe(true);
  });

  const bad = names
    .filter(([, { kind }]) => !['flag', 'choice', 'list'].includes(kind))
    .flatMap(([name]) =>
      [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1e-9, -1].map((value) => [name, value]),
    );
  it.each(bad)('refuses %s of %s', (name, value) => {
    expect(() => formula.compute({ ...middling(formula), [name as string]: value })).toThrow(CalculationError);
  });

  it('returns finite numbers or refuses, for numbers of any size', () => {
    const any = fc.oneof(fc.double({ noNaN: true, min: 0 }), fc.double({ noNaN: true, min: 0, max: 2 }));
    const numeric = names.filter(([, { kind }]) => !['flag', 'choice', 'list', 'count'].includes(kind));
    fc.assert(
      fc.property(fc.array(any, { minLength: numeric.length, maxLength: numeric.length }), (values) => {
        const input = {
          ...middling(formula),
          ...Object.fromEntries(numeric.map(([name], index) => [name, values[index]])),
        };
        try {
          expect(finite(formula.compute(input))).toBe(true);
        } catch (error) {
          if (!(error instanceof CalculationError)) throw error;
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
