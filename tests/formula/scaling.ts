import type { AnyFormula, InputDeclaration, OutputDeclaration } from '../../src/formula/index.js';
import { type Dimension, dimensions } from '../../src/quantity/dimensions.js';
import type { Kind } from '../../src/quantity/index.js';

/**
 * Another system of units: every base unit changed by a power of 4096, each by a different one. Square, cube and fourth
 * roots of 4096 are whole, so a formula that is dimensionally sound must give the scaled result bit for bit; one that
 * adds a stress to a length, or hides a dimensional constant, cannot.
 */
const POWERS: Readonly<Required<Dimension>> = { kg: 3, m: 1, s: -1, K: 2, mol: -2, A: -3 };

/** The factor by which a value of a kind changes: a power of two. */
export function factorOf(kind: string): number {
  if (!Object.hasOwn(dimensions, kind)) return 1;
  let exponent = 0;
  for (const [unit, power] of Object.entries(dimensions[kind as Kind])) {
    exponent += 12 * power * POWERS[unit as keyof Dimension];
  }
  return 2 ** exponent;
}

type Columns = Readonly<Record<string, string>>;

function kindOfColumn(column: string, columns: Columns): string {
  const kind = columns[column];
  if (kind === undefined)
    throw new Error(`a list holds the number ${column}; declare columns: { ${column}: '<kind>' } beside it`);
  return kind;
}

function scaledRow(row: unknown, columns: Columns): unknown {
  if (typeof row === 'number') return row * factorOf(kindOfColumn('value', columns));
  if (typeof row !== 'object' || row === null) return row;
  if (Array.isArray(row)) return row.map((item) => scaledRow(item, columns));
  return Object.fromEntries(
    Object.entries(row).map(([name, value]) => {
      if (typeof value !== 'number') return [name, value];
      return [name, value * factorOf(kindOfColumn(name, columns))];
    }),
  );
}

/** A value in the other system of units. */
function scaled(value: unknown, declared: { readonly kind: string; readonly columns?: Columns }): unknown {
  if (typeof value === 'number') return value * factorOf(declared.kind);
  if (typeof value === 'object' && value !== null) return scaledRow(value, declared.columns ?? {});
  return value;
}

/** An argument in the other system of units, with every default written out. */
export function scaledInput(formula: AnyFormula, input: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const [name, declared] of Object.entries<InputDeclaration<never>>(formula.inputs)) {
    const value = Object.hasOwn(input, name) ? input[name] : declared.default;
    if (value !== undefined) result[name] = scaled(value, declared as { kind: string; columns?: Columns });
  }
  return result;
}

/** A result in the other system of units. */
export function scaledResult(formula: AnyFormula, result: unknown): unknown {
  const output = formula.output as Readonly<Record<string, OutputDeclaration<never>>> | OutputDeclaration<never>;
  if ('symbol' in output && typeof output.symbol === 'string') {
    return scaled(result, output as { kind: string; columns?: Columns });
  }
  const declared = output as Readonly<Record<string, { kind: string; columns?: Columns }>>;
  return Object.fromEntries(
    Object.entries(result as Record<string, unknown>).map(([name, value]) => {
      const member = declared[name];
      if (member === undefined) throw new Error(`${formula.id} returns ${name}, which it does not declare`);
      return [name, scaled(value, member)];
    }),
  );
}
