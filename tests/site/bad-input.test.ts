import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import * as site from '../../src/site/index.js';
import { drawCalls } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
const formulas: AnyFormula[] = Object.values<unknown>(site).filter(isFormula);
const withoutList = formulas.filter(
  ({ inputs }) => !Object.values<{ kind: string }>(inputs).some(({ kind }) => kind === 'list'),
);

function numbersOf(result: unknown): number[] {
  if (typeof result === 'number') return [result];
  if (typeof result !== 'object' || result === null) return [];
  return Object.values(result).flatMap(numbersOf);
}

describe.each(withoutList.map((formula) => ({ id: formula.id, formula })))('$id', ({ id, formula }) => {
  const draws = drawCalls(formula, seeded(`${id} bad input`), { wanted: 6, least: 3 });

  it('returns finite numbers', () => {
    for (const { result } of draws) for (const number of numbersOf(result)) expect(number).toSatisfy(Number.isFinite);
  });

  it('refuses NaN, the infinities and a wrong word in every field', () => {
    for (const { input } of draws.slice(0, 2)) {
      for (const [name, { kind }] of Object.entries<{ kind: string }>(formula.inputs)) {
        if (kind === 'flag') continue;
        const wrong =
          kind === 'choice' ? ['no such word'] : [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
        for (const value of wrong) {
          try {
            const result = formula.compute({ ...input, [name]: value } as never);
            expect.fail(`${name} = ${value} gave ${JSON.stringify(result)}`);
          } catch (error) {
            if (!isCalculationError(error)) throw error;
          }
        }
      }
    }
  });

  it('answers numbers of any size with a finite result or a refusal', () => {
    const sizes = [0, -1, 1e-300, 1e300, -1e300, 5e-324, 1];
    for (const { input } of draws.slice(0, 2)) {
      for (const [name, { kind }] of Object.entries<{ kind: string }>(formula.inputs)) {
        if (kind === 'flag' || kind === 'choice') continue;
        for (const value of sizes) {
          try {
            const result = formula.compute({ ...input, [name]: value } as never);
            for (const number of numbersOf(result)) {
              if (!Number.isFinite(number)) expect.fail(`${name} = ${value} gave ${JSON.stringify(result)}`);
            }
          } catch (error) {
            if (!isCalculationError(error)) throw error;
          }
        }
      }
    }
  });
});

it('every formula of the room is among those drawn', () => {
  expect(formulas.length).toBeGreaterThan(10);
  // The lists of the schedule have their own refusals in schedule.test.ts.
  expect(formulas.filter((each) => !withoutList.includes(each)).map(({ id }) => id)).toEqual(['site/schedule']);
});
