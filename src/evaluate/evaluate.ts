import type { AnyFormula } from '../formula/index.js';
import type { RecordedStep } from '../formula/recorder.js';
import { CaseError } from '../json/case-error.js';
import type { EncodedAmount } from '../json/encode-amount.js';
import { type EncodedInput, encodeEvaluation } from '../json/encode-evaluation.js';
import { decodeFormulaInput } from '../json/formula-input.js';
import { nearMiss } from '../json/near-miss.js';
import { formulaById, formulas } from '../registry/index.js';
import type { StepOptions } from '../report/options.js';
import { renderStep } from '../report/render.js';
import { stepBlocks } from '../report/step.js';
import { computed } from './computed.js';
import { checkOptions, type EvaluateOptions } from './options.js';
import { type Line, type Typeset, typesetLines } from './typeset.js';

/** One formula evaluated. */
export interface Evaluated {
  /** Id of the formula. */
  readonly formula: string;
  /** Title of the formula. */
  readonly title: string;
  /** The main result in its unit; `result` and `results` hold it too. */
  readonly value: unknown;
  /** Unit of the main result; empty for a plain number. */
  readonly unit: string;
  /** Kind of the main result. */
  readonly kind: string;
  /** Every output by its name; a single one is called `result`. */
  readonly results: Readonly<Record<string, EncodedAmount>>;
  /** What was given, as it was typed, and the defaults in place of the rest. */
  readonly inputs: Readonly<Record<string, EncodedInput>>;
  /** Limits of the formula that the input lies beyond, and inputs that look like a slip. */
  readonly warnings: readonly string[];
  /** The substituted step: as plain data in SI, and for people. */
  readonly step: Typeset & {
    /** The call as it was recorded, in SI. */
    readonly data: RecordedStep;
  };
}

/**
 * Evaluates a formula by its name, from text with units, from typed values, or from both:
 * `evaluate('pipe/hoop-stress', { pressure: '150 psig', outsideDiameter: length.inch(8.625), wallThickness: '8.18 mm' })`.
 * An input is called by its name or by its symbol. A bare number for a quantity is one in the coherent SI unit.
 *
 * @param id of the formula: `pipe/hoop-stress`
 * @param given each input by its name or symbol; one with a default may be left out
 * @param options units and digits of the answer
 * @throws CaseError where the name, an input or an option is none; CalculationError where the formula refuses
 */
export function evaluate(
  id: string,
  given: Readonly<Record<string, unknown>>,
  options: EvaluateOptions = {},
): Evaluated {
  const formula = formulaNamed(id);
  checkOptions(options);
  const { units = 'si', digits } = options;
  const decoded = decodeFormulaInput(formula, given, { typedValues: true });
  const result = computed(formula, decoded);
  const data: RecordedStep = { sort: 'step', formula: formula.id, input: decoded.input, result };
  const shown = { typed: decoded.typed, units, digits };
  const text = renderStep(data, shown);
  const {
    inputs,
    results,
    result: main,
    warnings,
  } = encodeEvaluation(formula, decoded, result, text, { units, digits });
  const { mathml, latex } = typesetLines(linesOf(formula, data, shown));
  return {
    formula: formula.id,
    title: formula.title,
    ...main,
    results,
    inputs,
    warnings,
    step: { data, text, mathml, latex },
  };
}

/** The formula of a name. @throws CaseError that hints at the one that was meant */
export function formulaNamed(id: string): AnyFormula {
  const formula = formulaById(id);
  if (formula !== undefined) return formula;
  const ids = formulas.map((each) => each.id);
  const near = nearMiss(id, ids) ?? ids.find((each) => each.endsWith(`/${id}`));
  const hint = near === undefined ? 'hoopwright formulas lists them' : `did you mean ${near}?`;
  const message = `There is no formula ${JSON.stringify(id)}; ${hint}`;
  throw new CaseError([
    {
      path: 'formula',
      value: id,
      expected: 'the id of a formula',
      ...(near === undefined ? {} : { example: near }),
      message,
    },
  ]);
}

function linesOf(formula: AnyFormula, step: RecordedStep, options: StepOptions): Line[] {
  return stepBlocks(formula, step, options).flatMap((block) =>
    block.sort === 'equation'
      ? block.lines.map(({ text, note }, index): Line => ({ left: index === 0 ? block.left : '', right: text, note }))
      : [],
  );
}
