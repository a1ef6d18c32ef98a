import {
  type AnyFormula,
  type CalculationError,
  type InputDeclaration,
  isCalculationError,
  refuse,
} from '../formula/index.js';
import { hasOneOutput } from '../formula/outputs.js';
import { formulas } from '../registry/index.js';
import { formulaNamed } from './evaluate.js';

/** Each input by its name: SI values row by row, or one value that all rows have; a choice, a flag or a list is one value. */
export type InputColumns = Readonly<Record<string, unknown>>;

/** What a row came to: `computed`, or the code of its refusal. */
export type RowAnswer = 'computed' | CalculationError['code'];

/** A formula over columns: one entry a row. */
export interface OverColumns {
  /** What each row came to. */
  readonly status: readonly RowAnswer[];
  /** Each output that is a number, in SI, by its name; a single one is called `result`. NaN where a row has none. */
  readonly results: Readonly<Record<string, Float64Array>>;
  /** Each output that is a word, a flag or a list, by its name; `undefined` where a row has none. */
  readonly words: Readonly<Record<string, readonly unknown[]>>;
  /** Why a row is refused, by its number from 0. */
  readonly because: ReadonlyMap<number, string>;
}

/**
 * A formula by its name over columns, each row as if it were called alone: with every guard, and bit for bit. A row that the
 * formula refuses has that as its status, and ends nothing.
 *
 * @param id      such as `pipe/modified-b31g`
 * @param columns a `Float64Array` for what differs from row to row, at least one; any other value holds for all rows
 * @throws CaseError where the name is none; CalculationError `invalid-input` for columns that do not fit the formula or each other
 */
export function overColumns(id: string, columns: InputColumns): OverColumns {
  const formula = plainly(formulaNamed(id));
  const { lists, constants, rows } = sorted(formula, columns);
  const single = hasOneOutput(formula.output);
  const outputs = Object.entries(single ? { result: formula.output } : formula.output) as [string, { kind: string }][];
  const results: Record<string, Float64Array> = {};
  const words: Record<string, unknown[]> = {};
  for (const [name, { kind }] of outputs) {
    if (kind === 'choice' || kind === 'flag' || kind === 'list') words[name] = new Array(rows).fill(undefined);
    else results[name] = new Float64Array(rows).fill(Number.NaN);
  }
  const status: RowAnswer[] = [];
  const because = new Map<number, string>();
  // One object for all rows: no formula keeps its input.
  const input: Record<string, unknown> = { ...constants };
  for (let row = 0; row < rows; row++) {
    for (const [name, list] of lists) input[name] = list[row];
    try {
      const found: unknown = formula.compute(input);
      status.push('computed');
      for (const [name] of outputs) {
        const value = single ? found : (found as Readonly<Record<string, unknown>>)[name];
        const numbers = results[name];
        if (numbers === undefined) (words[name] as unknown[])[row] = value;
        else numbers[row] = (value as number | undefined) ?? Number.NaN;
      }
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      status.push(error.code);
      because.set(row, error.message);
    }
  }
  return { status, results, words, because };
}

/** The formula without the look at the names of its inputs: they are looked at once, for all rows. */
function plainly(named: AnyFormula): AnyFormula {
  return formulas.find(({ id }) => id === named.id) ?? named;
}

/** The columns, and what all rows have. */
function sorted({ id, inputs }: AnyFormula, columns: InputColumns) {
  const known = Object.keys(inputs);
  const lists: [string, Float64Array][] = [];
  const constants: Record<string, unknown> = {};
  for (const [name, given] of Object.entries(columns)) {
    const declared = Object.hasOwn(inputs, name) ? inputs[name] : undefined;
    if (declared === undefined) wrong(name, 'given', `is no input of ${id}, which takes ${known.join(', ')}`);
    if (!(given instanceof Float64Array)) constants[name] = given;
    else if (['choice', 'flag', 'list'].includes(declared.kind))
      wrong(name, 'a Float64Array', `must be one ${declared.kind} for all rows`);
    else lists.push([name, given]);
  }
  for (const [name, { default: own, optional }] of Object.entries(
    inputs as Readonly<Record<string, InputDeclaration>>,
  )) {
    if (columns[name] === undefined && own === undefined && optional !== true)
      wrong(name, 'missing', 'must be a Float64Array in SI, or one value for all rows');
  }
  const [first] = lists;
  if (first === undefined) wrong('columns', 'no list', 'must hold at least one Float64Array with a value for each row');
  const [head, { length: rows }] = first;
  for (const [name, list] of lists)
    if (list.length !== rows) wrong(name, list.length, `must have as many rows as ${head}, ${rows}`);
  return { lists, constants, rows };
}

function wrong(parameter: string, value: unknown, constraint: string): never {
  return refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}
