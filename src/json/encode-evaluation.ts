import type { AnyFormula, Limit } from '../formula/index.js';
import { readQuantity } from '../quantity/index.js';
import {
  type AmountOptions,
  type Declared,
  type EncodedAmount,
  encodeDeclared,
  encodeResults,
} from './encode-amount.js';
import type { FormulaInput } from './formula-input.js';
import { unusualInputs } from './unusual-inputs.js';

/** An input as JSON: as it was typed, or the default in its place. */
export interface EncodedInput extends EncodedAmount {
  /** Set where a quantity was typed. */
  readonly text?: string;
  /** Set where the input was left out. */
  readonly default?: true;
}

/** One formula evaluated, as JSON. */
export interface Evaluation {
  /** Id of the formula. */
  readonly formula: string;
  /** Each input by name. */
  readonly inputs: Readonly<Record<string, EncodedInput>>;
  /** The main output. */
  readonly result: EncodedAmount;
  /** Every output by its name; a single one is called `result`. */
  readonly results: Readonly<Record<string, EncodedAmount>>;
  /** Limits of the formula that the input lies beyond, and inputs that look like a slip. */
  readonly warnings: readonly string[];
  /** The substituted step as text. */
  readonly step: string;
}

/**
 * What a formula was given and what it returned, as JSON.
 *
 * @param formula its declaration
 * @param given its input as it was read
 * @param result what it gave, in SI
 * @param step the substituted step as text
 * @param options units and digits
 */
export function encodeEvaluation(
  formula: AnyFormula,
  given: FormulaInput,
  result: unknown,
  step: string,
  options: AmountOptions = {},
): Evaluation {
  const { input, typed } = given;
  const declarations = Object.entries(formula.inputs as Readonly<Record<string, Declared & { default?: unknown }>>);
  const inputs = declarations.flatMap(([name, declaration]): [string, EncodedInput][] => {
    const text = typed[name]?.text;
    if (text !== undefined) return [[name, typedInput(text, declaration)]];
    const value = input[name];
    if (value === undefined && declaration.default === undefined) return [];
    const amount = encodeDeclared(declaration, name, value ?? declaration.default, options);
    return [[name, value === undefined ? { ...amount, default: true } : amount]];
  });
  const results = encodeResults(formula, result, options);
  const main = Object.values(results)[0] ?? { value: null, unit: '', kind: 'number' };
  const warnings = [...warningsOf(formula, input), ...unusualInputs(formula, given).map(({ message }) => message)];
  return { formula: formula.id, inputs: Object.fromEntries(inputs), result: main, results, warnings, step };
}

/** The notes among the limits of a formula that an input lies beyond. */
export function warningsOf(formula: AnyFormula, input: FormulaInput['input']): string[] {
  return (formula.limits as readonly Limit<unknown>[])
    .filter(({ sort, beyond }) => sort === 'note' && beyond?.(input) === true)
    .map(({ text, source }) => (source === undefined ? text : `${text} (${source.key}, ${source.locator})`));
}

/** The number and the unit as they were typed, not converted. */
function typedInput(text: string, { kind }: Declared): EncodedInput {
  const reading = readQuantity(kind as Parameters<typeof readQuantity>[0], text);
  return reading.ok ? { value: reading.number, unit: reading.unit, kind, text } : { value: text, unit: '', kind, text };
}
