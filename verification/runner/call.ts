import {
  type AnyFormula,
  type InputDeclaration,
  isCalculationError,
  type OutputDeclaration,
} from '../../src/formula/index.js';
import { type Kind, readQuantity, type Unit, unitOf, units } from '../../src/quantity/index.js';
import { toSi } from '../../src/quantity/quantity.js';
import type { CaseInput } from '../case.js';
import { readPrinted } from './printed.js';

/** A record that cannot be judged: an unknown formula or input, a text that does not decode. */
export class CaseFault extends Error {}

/** How the runner finds a formula. */
export type Lookup = (id: string) => AnyFormula | undefined;

/** A printed number among the inputs, which may be moved by up to half a unit in its last place. */
interface Leaf {
  readonly path: string;
  readonly text: string;
  readonly value: number;
  readonly half: number;
  readonly unit: Unit;
  readonly written: string;
}

/** Shifts of the leaves, each from -1 to 1 in half units of its last printed place. */
export type Shifts = readonly number[];

type Build = (shifts: Shifts) => unknown;

/** A call that can be repeated with its printed inputs moved. */
export interface Call {
  readonly formula: AnyFormula;
  readonly leaves: readonly Leaf[];
  /** Runs the call; a refusal comes back as the error. */
  run(shifts: Shifts): unknown;
  /** The leaves as they stand after a shift, by path. */
  written(shifts: Shifts): Readonly<Record<string, string>>;
}

function isKind(kind: string): kind is Kind {
  return Object.hasOwn(units, kind);
}

interface Reader {
  readonly lookup: Lookup;
  readonly leaves: Leaf[];
  /** Every number that was read, also those that cannot move. */
  readonly paths: string[];
  readonly exact: readonly string[];
}

/** Whether a path is, or lies in, an input that the record calls exact. */
function isUnder(path: string, name: string): boolean {
  return path === name || path.startsWith(`${name}.`) || path.startsWith(`${name}[`);
}

function numberLeaf(reader: Reader, path: string, kind: Kind | 'number', text: string): Build {
  const reading = readQuantity(kind === 'number' ? 'ratio' : kind, text);
  const printed = readPrinted(text);
  if (!reading.ok) throw new CaseFault(`${path}: ${reading.problem}`);
  if (printed === undefined) throw new CaseFault(`${path}: ${JSON.stringify(text)} is not a printed number`);
  if (kind === 'number' && reading.unit !== '1')
    throw new CaseFault(`${path}: ${JSON.stringify(text)} is not a plain number`);
  const unit = kind === 'number' ? ([1, 1] as const) : unitOf(kind, reading.unit);
  if (unit === undefined) throw new CaseFault(`${path}: a ${kind} has no unit ${reading.unit}`);
  reader.paths.push(path);
  const half = reader.exact.some((name) => isUnder(path, name)) ? 0 : printed.place / 2;
  if (half === 0) return () => reading.quantity;
  const index = reader.leaves.length;
  reader.leaves.push({ path, text, value: reading.number, half, unit, written: reading.unit });
  return (shifts) => {
    const shift = shifts[index] ?? 0;
    return shift === 0 ? reading.quantity : toSi(reading.number + shift * half, unit);
  };
}

function leaf(reader: Reader, path: string, kind: string, text: string, choices?: readonly string[]): Build {
  if (kind === 'choice') {
    if (choices !== undefined && !choices.includes(text))
      throw new CaseFault(`${path}: ${text} is not one of ${choices.join(', ')}`);
    return () => text;
  }
  if (kind === 'flag') {
    if (text !== 'true' && text !== 'false') throw new CaseFault(`${path}: ${text} is neither true nor false`);
    return () => text === 'true';
  }
  if (kind === 'count') {
    if (!/^[+-]?\d+$/u.test(text)) throw new CaseFault(`${path}: ${text} is not a whole number`);
    return () => Number(text);
  }
  if (kind === 'number' || isKind(kind)) return numberLeaf(reader, path, kind, text);
  throw new CaseFault(`${path}: a ${kind} is not written as one text`);
}

type Rows = Extract<CaseInput, readonly unknown[]>;

function list(reader: Reader, path: string, declared: InputDeclaration, given: Rows): Build {
  const columns = declared.columns ?? {};
  const kindOf = (column: string): string => {
    const kind = columns[column];
    if (kind === undefined)
      throw new CaseFault(`${path}: there is no column ${column}, only ${Object.keys(columns).join(', ')}`);
    return kind;
  };
  const rows = given.map((row, index): Build => {
    const here = `${path}[${index}]`;
    if (typeof row === 'string') return leaf(reader, here, kindOf('value'), row);
    const cells = Object.entries(row).map(
      ([column, text]) => [column, leaf(reader, `${here}.${column}`, kindOf(column), text)] as const,
    );
    return (shifts) => Object.fromEntries(cells.map(([column, build]) => [column, build(shifts)]));
  });
  return (shifts) => rows.map((build) => build(shifts));
}

function argument(
  reader: Reader,
  path: string,
  formula: AnyFormula,
  inputs: Readonly<Record<string, CaseInput>>,
): Build {
  const declared = formula.inputs as Readonly<Record<string, InputDeclaration>>;
  const fields = Object.entries(inputs).map(([name, given]): readonly [string, Build] => {
    const here = path === '' ? name : `${path}.${name}`;
    const input = declared[name];
    if (input === undefined)
      throw new CaseFault(`${formula.id} has no input ${here}, only ${Object.keys(declared).join(', ')}`);
    if (typeof given === 'string') return [name, leaf(reader, here, input.kind as string, given, input.choices)];
    if ('from' in given) return [name, nested(reader, here, given.from)];
    if ((input.kind as string) !== 'list') throw new CaseFault(`${here} is a ${String(input.kind)}, not a list`);
    return [name, list(reader, here, input, given)];
  });
  return (shifts) => Object.fromEntries(fields.map(([name, build]) => [name, build(shifts)]));
}

function nested(
  reader: Reader,
  path: string,
  from: {
    readonly formula: string;
    readonly inputs: Readonly<Record<string, CaseInput>>;
    readonly output?: string | undefined;
  },
): Build {
  const formula = reader.lookup(from.formula);
  if (formula === undefined) throw new CaseFault(`${path}: there is no formula ${from.formula}`);
  const output = from.output ?? 'result';
  outputOf(formula, output);
  const build = argument(reader, path, formula, from.inputs);
  return (shifts) => resultOf(formula, formula.compute(build(shifts)), output);
}

/** Where an expected value stands in a result: `result`, `length`, `rows.length`, `rows[2].length`. */
interface Place {
  readonly member: string;
  readonly index: number | undefined;
  readonly column: string | undefined;
}

function placeOf(name: string): Place {
  const groups = /^(?<member>\w+)(?:\[(?<index>\d+)\])?(?:\.(?<column>\w+))?$/u.exec(name)?.groups;
  if (groups?.['member'] === undefined) throw new CaseFault(`${name} is not the name of an output`);
  const { member, index, column } = groups;
  return { member, index: index === undefined ? undefined : Number(index), column };
}

const hasOneOutput = ({ output }: AnyFormula): boolean => typeof output.symbol === 'string';

/** The symbol and kind of an expected value. `result` is the only output; a function that returns a record has its members. */
export function outputOf(formula: AnyFormula, name: string): { readonly symbol: string; readonly kind: string } {
  const { member, column, index } = placeOf(name);
  const members = (hasOneOutput(formula) ? { result: formula.output } : formula.output) as Record<
    string,
    OutputDeclaration
  >;
  const declared = members[member];
  if (declared === undefined) {
    throw new CaseFault(`${formula.id} has no output ${member}, only ${Object.keys(members).join(', ')}`);
  }
  const { symbol, kind, columns = {} } = declared as { symbol: string; kind: string; columns?: Record<string, string> };
  if (kind !== 'list') {
    if (column !== undefined || index !== undefined)
      throw new CaseFault(`${member} of ${formula.id} is a ${kind}, not a list`);
    return { symbol, kind };
  }
  const inColumn = columns[column ?? 'value'];
  if (inColumn === undefined) {
    throw new CaseFault(
      `${member} of ${formula.id} has no column ${column ?? 'value'}, only ${Object.keys(columns).join(', ')}`,
    );
  }
  return { symbol: `${symbol}.${column ?? 'value'}`, kind: inColumn };
}

/** What came back in a place of a result; a column of a list of rows is a list. */
export function resultOf(formula: AnyFormula, result: unknown, name: string): unknown {
  const { member, index, column } = placeOf(name);
  const whole = hasOneOutput(formula) ? result : (result as Readonly<Record<string, unknown>>)[member];
  const item = index === undefined ? whole : (whole as readonly unknown[] | undefined)?.[index];
  if (column === undefined) return item;
  const cell = (row: unknown): unknown => (row as Readonly<Record<string, unknown>> | undefined)?.[column];
  return Array.isArray(item) ? item.map(cell) : cell(item);
}

/**
 * Prepares the call of a case.
 *
 * @throws CaseFault when the formula is unknown or an input does not decode
 */
export function prepareCall(
  lookup: Lookup,
  id: string,
  inputs: Readonly<Record<string, CaseInput>>,
  exact: readonly string[] = [],
): Call {
  const formula = lookup(id);
  if (formula === undefined) throw new CaseFault(`there is no formula ${id}`);
  const reader: Reader = { lookup, leaves: [], paths: [], exact };
  const build = argument(reader, '', formula, inputs);
  const { leaves } = reader;
  const unmatched = exact.filter((name) => !reader.paths.some((path) => isUnder(path, name)));
  if (unmatched.length > 0) throw new CaseFault(`exact names ${unmatched.join(', ')}, which is no printed input`);
  return {
    formula,
    leaves,
    run: (shifts) => {
      try {
        return formula.compute(build(shifts));
      } catch (error) {
        if (isCalculationError(error)) return error;
        throw error;
      }
    },
    written: (shifts) =>
      Object.fromEntries(
        leaves.map(({ path, value, half, written }, index) => [
          path,
          `${Number((value + (shifts[index] ?? 0) * half).toPrecision(12))}${written === '1' ? '' : ` ${written}`}`,
        ]),
      ),
  };
}
