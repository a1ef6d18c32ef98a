import { describe, expect, it } from 'vitest';
import { type AnyFormula, CalculationError } from '../../../src/formula/index.js';
import { formulas } from '../../../src/registry/index.js';

const readings = [78, 80, 77, 81, 79, 80, 78, 79, 80, 81];
const taking = formulas.filter(({ id, inputs }) => id.startsWith('acceptance/') && 'readings' in inputs);

/** Readings, and a middling value of every other input. */
function middling(formula: AnyFormula): Record<string, unknown> {
  const inputs = Object.entries<{ kind: string; sample?: readonly [number, number]; choices?: readonly string[] }>(
    formula.inputs,
  );
  return Object.fromEntries(
    inputs.map(([name, { kind, sample: [low, high] = [1, 1], choices }]) => {
      if (kind === 'list') return [name, readings];
      return [name, kind === 'choice' ? choices?.[0] : low + (high - low) * 0.4];
    }),
  );
}

describe.each(taking.map((formula) => [formula.id, formula] as const))('%s', (_, formula) => {
  it('refuses no list, an empty one, and readings that cannot be', () => {
    expect(() => formula.compute(middling(formula))).not.toThrow();
    for (const list of [undefined, [], [...readings.slice(1), -1], [...readings.slice(1), Number.NaN], [100.5, 80]])
      expect(() => formula.compute({ ...middling(formula), readings: list })).toThrow(CalculationError);
  });
});

it('readings are taken by more than one formula', () => {
  expect(taking.length).toBeGreaterThan(1);
});
