import fc from 'fast-check';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from '../formula/samplers.js';

/** Inputs of a formula by name, as drawn or as a property sets them. */
export type Inputs = Readonly<Record<string, number | string>>;

export const formulaNamed = (id: string): AnyFormula => {
  // A property hands a formula the inputs of its inverse too, so it takes the plain function.
  const found = formulas.find((formula) => formula.id === id);
  if (found === undefined) throw new Error(`the registry has no formula ${id}`);
  return found;
};

/** A draw from the stated spans of every input; what was left out stands at its default. */
export function drawnInputs(formula: AnyFormula, draw: number): Inputs {
  const { input } = drawInput(formula, seeded(`${formula.id} ${draw}`), drawList);
  const defaults = Object.entries<{ default?: unknown }>(formula.inputs).flatMap(([name, declared]) =>
    declared.default === undefined ? [] : [[name, declared.default]],
  );
  return { ...Object.fromEntries(defaults), ...input } as Inputs;
}

/** One number of a result: the result itself, or the named member of its record. A refused draw is drawn again. */
export function numberFrom(formula: AnyFormula, input: Inputs, member?: string): number {
  let result: unknown;
  try {
    result = formula.compute(input);
  } catch (error) {
    if (isCalculationError(error)) fc.pre(false);
    throw error;
  }
  const { output } = formula;
  const name = member ?? (typeof output.symbol === 'string' ? undefined : Object.keys(output)[0]);
  return (name === undefined ? result : (result as Inputs)[name]) as number;
}
