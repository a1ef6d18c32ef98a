import type { AnyFormula, OutputDeclaration } from './declaration.js';

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
  if ('symbol' in output && typeof output.symbol === 'string')
    return { member: undefined, declared: output as OutputDeclaration<never> };
  const first = Object.entries(output)[0];
  if (first === undefined) throw new Error(`${formula.id} declares no output`);
  return { member: first[0], declared: first[1] };
}
