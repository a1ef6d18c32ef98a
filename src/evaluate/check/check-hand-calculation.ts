import { type AnyFormula, isCalculationError } from '../../formula/index.js';
import { mainOutput, mainResult } from '../../formula/outputs.js';
import { decodeFormulaInput, type FormulaInput } from '../../json/formula-input.js';
import { formatNumber } from '../../quantity/format.js';
import { fromSi } from '../../quantity/quantity.js';
import { computed } from '../computed.js';
import { formulaNamed } from '../evaluate.js';
import { type Claim, isMet, readClaim } from './claim.js';
import { expressionSlips, onPaper } from './expression-slips.js';
import { ruleSlips } from './rule-slips.js';
import { inputSlips, resultSlips } from './slips.js';

/** What became of a claim. */
export interface HandCheck {
  /** Id of the formula. */
  readonly formula: string;
  /** The claim as it was written. */
  readonly claimed: string;
  /** What the formula gives, in the unit of the claim and two digits further. */
  readonly computed: string;
  /** Significant digits of the claim: it is held to no more. */
  readonly digits: number;
  /** Whether the claim is right to its own digits. */
  readonly agrees: boolean;
  /** Slips that give the claim to its last digit, the common ones first; none where it agrees. */
  readonly slips: readonly string[];
  /** The answer in a sentence. */
  readonly message: string;
}

/** Claims of fewer digits are met by too many slips to name one. */
const LEAST_DIGITS = 3;
/** From so many digits on the rarer slips are tried too. */
const DIGITS_FOR_ALL = 4;

/**
 * Holds a result that somebody worked out by hand to the digits in which it is written. Where it does not agree, the slips that
 * people make are tried one at a time, and those named that give the claim to its last digit.
 *
 * @param id       of a formula, as for `evaluate`
 * @param given    its inputs, text with units or typed values
 * @param claimed  the result as written: "38.4 MPa"
 * @throws CaseError where the name, an input or the claim is none; CalculationError where the formula refuses the inputs
 */
export function checkHandCalculation(id: string, given: Readonly<Record<string, unknown>>, claimed: string): HandCheck {
  const formula = formulaNamed(id);
  const decoded = decodeFormulaInput(formula, given, { typedValues: true });
  return heldTo(formula, decoded, computed(formula, decoded), claimed);
}

/** A claim held to what the formula gave for these inputs. @throws CaseError where the claim is none */
export function heldTo(formula: AnyFormula, decoded: FormulaInput, result: unknown, claimed: string): HandCheck {
  const claim = readClaim(claimed, mainOutput(formula).declared.kind as string);
  const numberOf = (given: unknown): number => inUnit(claim, mainResult(formula, given));
  const right = numberOf(result);
  const agrees = isMet(claim, right);
  const slips = agrees || claim.digits < LEAST_DIGITS ? [] : slipsOf(formula, decoded, claim, { right, numberOf });
  const shown = `${formatNumber(right, Math.min(15, claim.digits + 2))}${claim.symbol === '' ? '' : ` ${claim.symbol}`}`;
  return {
    formula: formula.id,
    claimed,
    computed: shown,
    digits: claim.digits,
    agrees,
    slips,
    message: said(claim, shown, agrees, slips),
  };
}

function slipsOf(
  formula: AnyFormula,
  decoded: FormulaInput,
  claim: Claim,
  { right, numberOf }: { readonly right: number; readonly numberOf: (result: unknown) => number },
): string[] {
  const most = claim.digits >= DIGITS_FOR_ALL ? 2 : 1;
  const found: { readonly words: string; readonly rank: number }[] = [];
  for (const { words, rank, input: slipped } of [
    ...inputSlips(formula, decoded.input),
    ...ruleSlips(formula, decoded.input),
  ])
    if (rank <= most && isMet(claim, numberOf(attempted(formula, slipped)))) found.push({ words, rank });
  if (most === 2)
    for (const { words, factor, value } of expressionSlips(formula, decoded))
      if (isMet(claim, factor === undefined ? inUnit(claim, value) : right * factor)) found.push({ words, rank: 2 });
  for (const { words, rank, turn } of resultSlips)
    if (rank <= most && isMet(claim, turn(right))) found.push({ words, rank });
  return [...new Set(found.toSorted((a, b) => a.rank - b.rank).map(({ words }) => words))];
}

/** What the formula gives; where it refuses, as a wall thicker than the pipe, what its equation gives on paper. */
function attempted(formula: AnyFormula, input: Readonly<Record<string, unknown>>): unknown {
  try {
    return formula.compute(input as never);
  } catch (error) {
    if (isCalculationError(error)) return onPaper(formula, input);
    throw error;
  }
}

function inUnit({ unit }: Claim, value: unknown): number {
  if (typeof value !== 'number') return Number.NaN;
  return unit === undefined ? value : fromSi(value, unit);
}

function said({ text, digits }: Claim, shown: string, agrees: boolean, slips: readonly string[]): string {
  if (agrees)
    return `${text.trim()} agrees to the ${digits === 1 ? 'digit' : `${digits} digits`} given; computed: ${shown}.`;
  const differs = `${text.trim()} does not agree; computed: ${shown}.`;
  if (digits < LEAST_DIGITS) return `${differs} With fewer than three digits no slip can be told from another.`;
  if (slips.length === 0) return `${differs} No common slip found.`;
  return `${differs} ${slips.length === 1 ? 'The likely slip' : 'Each of these slips gives it'}: ${slips.join('; or ')}.`;
}
