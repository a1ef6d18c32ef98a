import type { AnyFormula } from '../../src/formula/index.js';
import { mainOutput } from '../../src/formula/outputs.js';
import { drawCalls } from './draw.js';
import { exactEquation, mainResult, mathDigits } from './equation.js';
import { exactDecimal } from './exact-decimal.js';
import { seeded } from './random.js';
import { ulp } from './ulp.js';

/**
 * How far float64 is from the declared equation, over a seeded sample of the stated validity. The error is measured in
 * ulp: units in the last place of the reference, which is the equation at 64 digits on the exact doubles.
 */
export interface Accuracy {
  readonly id: string;
  readonly draws: number;
  readonly maxUlp: number;
  /** Root of the mean square. */
  readonly rmsUlp: number;
  /** The call with the largest error. */
  readonly worst: {
    readonly bySymbol: Readonly<Record<string, unknown>>;
    readonly result: number;
    /** The reference, to 25 digits. */
    readonly reference: string;
    readonly branch: string;
    /**
     * The condition number there. Inputs that are themselves rounded to float64 already put the result in doubt by about
     * half this many ulp, whatever the code does.
     */
    readonly condition: number;
  };
}

/** Whether a formula states its main result as a closed form that is a number with rounding: no root, no algorithm, no count. */
export function isClosedForm(formula: AnyFormula): boolean {
  const { equation } = formula;
  const kind = mainOutput(formula).declared.kind as string;
  return ('expression' in equation || 'branches' in equation) && !['count', 'choice', 'flag', 'list'].includes(kind);
}

/** Measures the error of one formula. */
export function accuracyOf(formula: AnyFormula, wanted = 200): Accuracy {
  const equation = exactEquation(formula);
  const draws = drawCalls(formula, seeded(`${formula.id} accuracy`), { wanted, least: 10, most: 10 * wanted });
  let [sum, maxUlp] = [0, -1];
  let worst: Omit<Accuracy['worst'], 'condition'> | undefined;
  for (const { bySymbol, result } of draws) {
    const found = mainResult(formula, result);
    const { value, branch } = equation.evaluate(bySymbol);
    if (typeof found !== 'number' || !mathDigits.isBigNumber(value)) {
      throw new Error(`${formula.id} gives ${String(found)} where its equation gives ${String(value)}: not a number`);
    }
    const off = mathDigits.bignumber(exactDecimal(found)).minus(value).abs();
    const error = off.isZero() ? 0 : off.div(exactDecimal(ulp(value.toNumber()))).toNumber();
    sum += error * error;
    if (error > maxUlp) {
      maxUlp = error;
      worst = { bySymbol, result: found, reference: value.toPrecision(25), branch };
    }
  }
  if (worst === undefined) throw new Error(`${formula.id}: nothing was drawn`);
  const condition = equation.condition(worst.bySymbol);
  return {
    id: formula.id,
    draws: draws.length,
    maxUlp,
    rmsUlp: Math.sqrt(sum / draws.length),
    worst: { ...worst, condition },
  };
}

/** The accuracy table: every closed-form formula, in the order of the registry. */
export function accuracyTable(formulas: readonly AnyFormula[], wanted = 200): Accuracy[] {
  return formulas.filter(isClosedForm).map((formula) => accuracyOf(formula, wanted));
}
