import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { formulaById } from '../../src/registry/index.js';
import { drawInput } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';

/** The inputs of one call, by name. */
export type Inputs = Readonly<Record<string, number>>;

export const ROWS = 4096;

/**
 * Rows that a formula accepts, drawn from the spans that its declaration states; every input is there, by its default
 * where the draw leaves it out. Drawn with the source, so that the built function sees no refused call before it is timed.
 */
export function drawRows(id: string, fixed: Inputs = {}): Inputs[] {
  const formula = named(id);
  const random = seeded(`bench ${id}`);
  const rows: Inputs[] = [];
  for (let drawn = 0; rows.length < ROWS; drawn++) {
    if (drawn > 100 * ROWS) throw new Error(`${id} accepted ${rows.length} of ${drawn} draws`);
    const row = { ...defaultsOf(formula), ...drawInput(formula, random).input, ...fixed } as Inputs;
    if (accepts(formula, row)) rows.push(row);
  }
  return rows;
}

/** One row whose inputs stand at their defaults where they have one: the pipe of a survey. */
export function drawPipe(id: string): Inputs {
  return { ...(drawRows(id)[0] as Inputs), ...defaultsOf(named(id)) };
}

/** The values of one input down the rows. */
export function column(rows: readonly Inputs[], name: string): Float64Array {
  return Float64Array.from(rows, (row) => row[name] as number);
}

function named(id: string): AnyFormula {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`the registry has no formula ${id}`);
  return formula;
}

function defaultsOf({ inputs }: AnyFormula): Inputs {
  const declared = Object.entries<{ readonly default?: unknown }>(inputs);
  return Object.fromEntries(
    declared.flatMap(([name, { default: value }]) => (value === undefined ? [] : [[name, value as number]])),
  );
}

function accepts({ compute }: AnyFormula, row: Inputs): boolean {
  try {
    compute(row);
    return true;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return false;
  }
}
