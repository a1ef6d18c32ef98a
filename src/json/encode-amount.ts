import type { AnyFormula, InputKind } from '../formula/index.js';
import { givenOutputs } from '../formula/outputs.js';
import { roundedToward } from '../quantity/format.js';
import {
  type Kind,
  preferredUnit,
  siSymbol,
  type UnitPreferences,
  type UnitSystem,
  unitOf,
} from '../quantity/index.js';
import { fromSi } from '../quantity/quantity.js';
import { isKind } from '../quantity/units/index.js';
import type { Side } from '../repair/design/safe-side.js';

/** A quantity, a plain number, a count or a word as JSON. The unit of what has none is empty. */
export interface EncodedAmount {
  /** In the unit beside it. */
  readonly value: unknown;
  /** Empty for a plain number, a count or a word. */
  readonly unit: string;
  /** Kind of quantity, or what else it is. */
  readonly kind: string;
}

/** What of a declaration says how its value is written; the columns are those of a list. */
export interface Declared {
  /** Kind that the value is declared with. */
  readonly kind: InputKind;
  /** Kind of each column by its name. */
  readonly columns?: Readonly<Record<string, InputKind>>;
}

/** How numbers are written out: the unit of a quantity by its kind and its name, and the count of significant digits. */
export interface AmountOptions {
  /** The units of a sheet: a system, or one with its exceptions by kind or by name. The coherent SI units where it is left out. */
  readonly units?: UnitSystem | UnitPreferences | undefined;
  /** All digits of the float64 where it is left out. */
  readonly digits?: number | undefined;
}

/** A quantity in the unit wanted for it, rounded to the nearest where no side is named. */
export function encodeQuantity(
  kind: Kind,
  name: string,
  value: number,
  options: AmountOptions,
  toward?: Side,
): EncodedAmount {
  const symbol = unitFor(kind, name, options);
  const unit = unitOf(kind, symbol);
  if (unit === undefined) throw new RangeError(`a ${kind} is not written in ${symbol}`);
  return { value: rounded(fromSi(value, unit), options, toward), unit: symbol, kind };
}

function unitFor(kind: Kind, name: string, { units: wanted }: AmountOptions): string {
  if (wanted === undefined) return siSymbol(kind);
  return preferredUnit(kind, name, typeof wanted === 'string' ? { system: wanted } : wanted);
}

/**
 * A value by its declared kind: a quantity, a number, a count, a word, a flag, a list of rows.
 *
 * @param declared kind of the value, and of the columns of a list
 * @param name by which its unit is chosen
 * @param value in SI
 * @param options units and digits
 */
export function encodeDeclared(
  { kind, columns }: Declared,
  name: string,
  value: unknown,
  options: AmountOptions,
): EncodedAmount {
  if (Array.isArray(value)) {
    return { value: value.map((row) => encodeRow(columns ?? {}, row, options)), unit: '', kind };
  }
  if (typeof value === 'number' && isKind(kind)) return encodeQuantity(kind, name, value, options);
  if (typeof value === 'number' && kind !== 'count') return { value: rounded(value, options), unit: '', kind };
  return { value: value ?? null, unit: '', kind };
}

/**
 * Every output of a formula by its name; a single output is called `result`. The main one stands first.
 *
 * @param formula its declaration
 * @param result what it gave, in SI
 * @param options units and digits
 */
export function encodeResults(
  formula: AnyFormula,
  result: unknown,
  options: AmountOptions = {},
): Record<string, EncodedAmount> {
  return Object.fromEntries(
    givenOutputs(formula, result).flatMap(({ name, declaration, value }) =>
      value === undefined ? [] : [[name, encodeDeclared(declaration as Declared, name, value, options)]],
    ),
  );
}

function encodeRow(columns: NonNullable<Declared['columns']>, row: unknown, options: AmountOptions): unknown {
  const kindOf = (name: string) => ({ kind: columns[name] ?? 'number' }) satisfies Declared;
  if (typeof row !== 'object' || row === null) return encodeDeclared(kindOf('value'), 'value', row, options);
  return Object.fromEntries(
    Object.entries(row).map(([name, cell]) => [name, encodeDeclared(kindOf(name), name, cell, options)]),
  );
}

function rounded(value: number, { digits }: AmountOptions, toward?: Side): number {
  if (digits === undefined) return value;
  return toward === undefined ? Number(value.toPrecision(digits)) : roundedToward(value, digits, toward);
}
