import type { AnyFormula, OutputDeclaration } from './declaration.js';

/**
 * Whether a formula gives one value, and no record of several.
 *
 * @internal
 */
export function hasOneOutput(output: object): output is { readonly symbol: string } {
  return 'symbol' in output && typeof output.symbol === 'string';
}

/**
 * The output that the equation of a formula states: the only one, or the first member of a record, with its name there.
 *
 * @internal
 */
export function mainOutput(formula: AnyFormula): {
  readonly member: string | undefined;
  readonly declared: OutputDeclaration<never>;
} {
  const { output } = formula as { output: object };
  if (hasOneOutput(output)) return { member: undefined, declared: output as unknown as OutputDeclaration<never> };
  const first = Object.entries(output)[0];
  if (first === undefined) throw new Error(`${formula.id} declares no output`);
  return { member: first[0], declared: first[1] };
}

/**
 * What a result holds of that output.
 *
 * @internal
 */
export function mainResult(formula: AnyFormula, result: unknown): unknown {
  const { member } = mainOutput(formula);
  return member === undefined ? result : Object(result)[member];
}

/** An output of a formula with its value. */
export interface GivenOutput {
  readonly name: string;
  readonly declaration: OutputDeclaration;
  readonly value: unknown;
}

/**
 * The outputs of a formula with their values, the main one first; a single one is called `result`.
 *
 * @internal
 */
export function givenOutputs(formula: AnyFormula, result: unknown): GivenOutput[] {
  const output: object = formula.output;
  if (hasOneOutput(output))
    return [{ name: 'result', declaration: output as unknown as OutputDeclaration, value: result }];
  return Object.entries(output as Record<string, OutputDeclaration>).map(([name, declaration]) => ({
    name,
    declaration,
    value: (result as Record<string, unknown>)[name],
  }));
}
