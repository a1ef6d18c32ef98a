import { describe, expect, it } from 'vitest';
import { type AnyFormula, type InputDeclaration, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawCalls } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from './samplers.js';

/** Bad input to every formula: one input of an accepted call is replaced, and the call must be refused by a CalculationError. */

type Fields = Readonly<Record<string, unknown>>;

const notNumbers = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, null, '5', [5], {}];

/** What is no list of rows, or holds what is no row. */
const notLists = [null, undefined, '5', 5, {}, [null], [undefined], ['5'], [Number.NaN]];

/** No list at all, and a list with one cell of its first row replaced, for every column of numbers. */
function badLists(list: readonly unknown[], columns: Fields): unknown[] {
  return [...notLists, ...badCells(list, columns)];
}

function badCells(list: readonly unknown[], columns: Fields): unknown[] {
  const [first, ...rest] = list;
  if (typeof first === 'number') return notNumbers.map((bad) => [bad, ...rest]);
  const row = first as Fields;
  const numeric = Object.keys(columns).filter((column) => typeof row[column] === 'number');
  return numeric.flatMap((column) => notNumbers.map((bad) => [{ ...row, [column]: bad }, ...rest]));
}

function badValues(declared: InputDeclaration, good: unknown): unknown[] {
  const kind = declared.kind as string;
  if (kind === 'flag') return [];
  if (kind === 'choice') return ['no such word', null, 5];
  if (kind === 'list') {
    const bad = badLists(good as readonly unknown[], declared.columns ?? {});
    return declared.optional === true ? bad.filter((each) => each !== undefined) : bad;
  }
  if (kind === 'count') return [...notNumbers, 1.5];
  if (kind === 'temperature') return [...notNumbers, -1];
  return notNumbers;
}

/** What a bad input came to, where it was not refused. */
function notRefused(formula: AnyFormula, input: Fields): string | undefined {
  try {
    return `returned ${JSON.stringify(formula.compute(input))}`;
  } catch (error) {
    if (!isCalculationError(error)) return `threw ${String(error)}`;
    return /\bundefined\b|\[object/u.test(error.constraint) ? `was refused in odd words: ${error.message}` : undefined;
  }
}

describe('bad input', () => {
  it.each(formulas.map((formula) => [formula.id, formula] as const))('is refused by %s', (id, formula) => {
    const [draw] = drawCalls(formula, seeded(`${id} refusals`), { wanted: 1, lists: drawList });
    if (draw === undefined) throw new Error('one draw was asked for');
    const found = Object.entries<InputDeclaration>(formula.inputs).flatMap(([name, declared]) => {
      const good = draw.input[name] ?? declared.default;
      const bad = badValues(declared, good);
      return bad.flatMap((value) => {
        const words = notRefused(formula, { ...draw.input, [name]: value });
        const shown = JSON.stringify(value, (_, inner) => (typeof inner === 'number' ? String(inner) : inner));
        return words === undefined ? [] : [`${name} = ${shown} ${words}`];
      });
    });
    expect(found).toEqual([]);
  });
});
