import type { AnyFormula } from '../../src/formula/index.js';
import { mainOutput } from '../../src/formula/outputs.js';
import { type Draw, drawCalls } from './draw.js';
import { exactEquation, mainResult, mathDigits, undeclaredSymbols } from './equation.js';
import { exactDecimal } from './exact-decimal.js';
import { seeded } from './random.js';
import { ulp } from './ulp.js';

const exact = (value: number) => mathDigits.bignumber(exactDecimal(value));

/** The declared equation on one line. */
export function equationText(formula: AnyFormula): string {
  return JSON.stringify(formula.equation, undefined, 1).replaceAll(/\s+/g, ' ');
}

function failure(formula: AnyFormula, draw: Draw, found: unknown, lines: readonly string[]): string {
  const inputs = Object.entries(draw.bySymbol).map(([symbol, value]) => `${symbol} = ${String(value)}`);
  return [
    `${formula.id} differs from its declared equation`,
    `  inputs     ${inputs.join(', ')}`,
    `  function   ${mainOutput(formula).declared.symbol} = ${String(found)}`,
    ...lines.map((line) => `  ${line}`),
    `  equation   ${equationText(formula)}`,
  ].join('\n');
}

/** What is wrong with one call against the equation at 64 digits. */
function difference(formula: AnyFormula, equation: ReturnType<typeof exactEquation>, draw: Draw): string | undefined {
  const found = mainResult(formula, draw.result);
  if (typeof found === 'number' && !Number.isFinite(found))
    return failure(formula, draw, found, ['not a finite number']);
  if ('residual' in formula.equation) return residualLeft(formula, equation, draw, found as number);
  const { value, branch } = equation.evaluate(draw.bySymbol);
  if (!mathDigits.isBigNumber(value) || typeof found !== 'number') {
    return value === found ? undefined : failure(formula, draw, found, [`64 digits  ${String(value)} (${branch})`]);
  }
  if (!value.isFinite()) return failure(formula, draw, found, [`64 digits  ${String(value)} (${branch})`]);
  const step = exact(ulp(value.toNumber()));
  const off = exact(found).minus(value).abs();
  if (off.lte(step.times(4))) return undefined;
  const allowed = equation.spread(draw.bySymbol).plus(step.times(4));
  if (off.lte(allowed)) return undefined;
  return failure(formula, draw, found, [
    `64 digits  ${value.toString()} (${branch})`,
    `off by     ${off.div(step).toPrecision(4)} ulp, allowed ${allowed.div(step).toPrecision(4)} ulp`,
  ]);
}

/** A root is right when the residual changes its sign within 4 ulp of it, or is no larger than one ulp in the inputs makes it. */
function residualLeft(
  formula: AnyFormula,
  equation: ReturnType<typeof exactEquation>,
  draw: Draw,
  root: number,
): string | undefined {
  const { symbol } = mainOutput(formula).declared;
  const at = (value: number) => equation.evaluate({ ...draw.bySymbol, [symbol]: value }).value;
  const reach = 4 * ulp(root);
  const [left, here, right] = [at(root - reach), at(root), at(root + reach)];
  if (![left, here, right].every((value) => mathDigits.isBigNumber(value) && value.isFinite())) {
    return failure(formula, draw, root, [`residual   ${String(here)}`]);
  }
  const [a, b, c] = [left, here, right].map((value) => mathDigits.bignumber(value as never));
  if (a === undefined || b === undefined || c === undefined) throw new Error('three residuals were asked for');
  const changes = a.isNegative() !== c.isNegative();
  const spread = equation.spread({ ...draw.bySymbol, [symbol]: root }, [symbol]);
  if (changes || b.abs().lte(spread.plus(a.minus(c).abs()))) return undefined;
  return failure(formula, draw, root, [
    `residual   ${b.toPrecision(8)} at the result, ${a.toPrecision(4)} 4 ulp below and ${c.toPrecision(4)} 4 ulp above`,
    `one ulp in each input moves the residual by ${spread.toPrecision(4)}`,
  ]);
}

/**
 * What is wrong between a function and its declared equation, over seeded draws from the sample spans; nothing when the
 * float result lies within the change that one ulp in each input makes, plus 4 ulp.
 */
export function equationProblem(formula: AnyFormula): string | undefined {
  const unknown = undeclaredSymbols(formula);
  if (unknown.length > 0)
    return `${formula.id}: its equation reads symbols that are not declared: ${unknown.join(', ')}`;
  const equation = exactEquation(formula);
  const found = drawCalls(formula, seeded(formula.id)).map((draw) => difference(formula, equation, draw));
  const wrong = found.filter((text) => text !== undefined);
  return wrong[0] === undefined ? undefined : `${wrong[0]}\n  in ${wrong.length} of ${found.length} draws`;
}
