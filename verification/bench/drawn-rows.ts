import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { drawInput } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';
import { entryFile } from './built.js';

/** The inputs of one call, by name. */
export type Inputs = Readonly<Record<string, number>>;

export const ROWS = 4096;

/**
 * A second copy of every function, for the draws: refused calls, and inputs that are put together in many ways, would
 * spoil what the compiler learns of the copy that is timed.
 */
const copies: typeof import('../../src/formulas.js') = createRequire(import.meta.url)(
  fileURLToPath(entryFile('./formulas', ['require', 'default'])),
);

/**
 * Rows that a formula accepts, drawn from the spans that its declaration states; every input is there, by its default
 * where the draw leaves it out.
 */
export function drawRows(formula: AnyFormula, fixed: Inputs = {}): Inputs[] {
  const random = seeded(`bench ${formula.id}`);
  const rows: Inputs[] = [];
  for (let drawn = 0; rows.length < ROWS; drawn++) {
    if (drawn > 100 * ROWS) throw new Error(`${formula.id} accepted ${rows.length} of ${drawn} draws`);
    const row = { ...defaultsOf(formula), ...drawInput(formula, random).input, ...fixed } as Inputs;
    if (accepts(formula, row)) rows.push(row);
  }
  return rows;
}

/** One row whose inputs stand at their defaults where they have one: the pipe of a survey. */
export function drawPipe(formula: AnyFormula): Inputs {
  return { ...(drawRows(formula)[0] as Inputs), ...defaultsOf(formula) };
}

/** The values of one input down the rows. */
export function column(rows: readonly Inputs[], name: string): Float64Array {
  return Float64Array.from(rows, (row) => row[name] as number);
}

function defaultsOf({ inputs }: AnyFormula): Inputs {
  const declared = Object.entries<{ readonly default?: unknown }>(inputs);
  return Object.fromEntries(
    declared.flatMap(([name, { default: value }]) => (value === undefined ? [] : [[name, value as number]])),
  );
}

function accepts({ id }: AnyFormula, row: Inputs): boolean {
  const copy = copies.formulaById(id);
  if (copy === undefined) throw new Error(`the copy of the package has no formula ${id}`);
  try {
    copy.compute(row);
    return true;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return false;
  }
}
