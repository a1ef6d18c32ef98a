import { type AnyFormula, isCalculationError } from '../../formula/index.js';
import { mainOutput, mainResult } from '../../formula/outputs.js';
import type { RecordedStep } from '../../formula/recorder.js';
import type { FormulaInput } from '../../json/formula-input.js';
import type { Typed } from '../../json/typed.js';
import type { UnitPreferences, UnitSystem } from '../../quantity/index.js';
import { isKind } from '../../quantity/units/index.js';
import type { RepairDesign } from '../../repair/index.js';
import { declarationOf } from '../../report/declaration-of.js';
import { type NumberedStep, numberedSteps } from '../../report/numbered-steps.js';
import { givenInputs } from '../../report/problem.js';
import { givenText, preferredUnit } from '../../report/units.js';
import { refuse } from '../refuse.js';
import { type HandCheck, heldTo } from './check-hand-calculation.js';
import { claimedSi } from './claim.js';

/** The result of a step of a calculation sheet, as somebody else worked it out. */
export interface ClaimedStep {
  /** Number of the step on the sheet: `4.2`. */
  readonly step: string;
  /** The result as written, with its unit. */
  readonly claimed: string;
}

/** A step that was held to a claim. */
export interface StepCheck extends HandCheck {
  /** Number of the step on the sheet. */
  readonly step: string;
  /** Title of its formula. */
  readonly title: string;
  /** The steps whose claimed, rounded results were worked on with; none where the claim agrees without them. */
  readonly carried: readonly string[];
}

/** What became of the claims of a sheet. */
export interface SheetCheck {
  /** The steps that agree, in the order of the sheet, up to the first that does not. */
  readonly agreed: readonly StepCheck[];
  /** The first step that departs; nothing where all agree. */
  readonly departs: StepCheck | undefined;
  /** Steps behind it: they may be wrong only because of it, and are not held to anything. */
  readonly notHeld: readonly string[];
  /** The answer in a sentence or two. */
  readonly message: string;
}

/**
 * Holds the results of somebody else's calculation to the steps of a sheet, in the order of the sheet, and stops at the first that
 * departs: what follows from it would only repeat it. A step that agrees with the rounded results of the steps before it agrees.
 *
 * @param design  with its record: `designRepair(case, { record: true })`
 * @param claims  by the numbers that the sheet prints, in any order; steps may be left out
 * @param options units in which the answer is written
 * @throws CaseError where the design has no record, or where a claim names no step, names one twice or is no result of it
 */
export function checkSheet(
  design: RepairDesign,
  claims: readonly ClaimedStep[],
  { units = 'si' }: { readonly units?: UnitSystem | UnitPreferences | undefined } = {},
): SheetCheck {
  const steps = numberedSteps(design.record ?? refuse('design', undefined, 'a design with its record of steps'));
  const preferences = typeof units === 'string' ? { system: units } : units;
  const held = claimsInOrder(steps, claims);
  const agreed: StepCheck[] = [];
  const results: Result[] = [];
  for (const { number, step, claimed } of held) {
    const check = checkStep(number, step, claimed, results, preferences);
    if (!check.agrees) {
      const notHeld = held.slice(agreed.length + 1).map((each) => each.number);
      return { agreed, departs: check, notHeld, message: said(agreed, check, notHeld) };
    }
    agreed.push(check);
    const formula = declarationOf(step);
    results.push({ number, is: mainResult(formula, step.result), claimed: claimedSi(claimed, kindOf(formula)) });
  }
  return { agreed, departs: undefined, notHeld: [], message: said(agreed, undefined, []) };
}

/** A result that agrees: what it is and what was claimed for it, in SI. */
interface Result {
  readonly number: string;
  readonly is: unknown;
  readonly claimed: number;
}

type Held = NumberedStep & { readonly claimed: string };

function claimsInOrder(steps: readonly NumberedStep[], claims: readonly ClaimedStep[]): Held[] {
  const byNumber = new Map(claims.map(({ step, claimed }) => [step, claimed]));
  for (const [index, { step, claimed }] of claims.entries()) {
    const found = steps.find(({ number }) => number === step);
    if (found === undefined) refuse('claims', step, `the number of a step of the sheet, ${range(steps)}`);
    if (claims.findIndex((each) => each.step === step) !== index) refuse('claims', step, 'a step that is claimed once');
    if (typeof mainResult(declarationOf(found.step), found.step.result) !== 'number')
      refuse('claims', claimed, `left out: step ${step} gives no number`);
  }
  return steps.flatMap((each) => {
    const claimed = byNumber.get(each.number);
    return claimed === undefined ? [] : [{ ...each, claimed }];
  });
}

function checkStep(
  number: string,
  step: RecordedStep,
  claimed: string,
  results: readonly Result[],
  units: UnitPreferences,
): StepCheck {
  const formula = declarationOf(step);
  const decoded = asTyped(formula, step, units);
  const found = { step: number, title: formula.title, carried: [] };
  const check = heldTo(formula, decoded, step.result, claimed);
  if (check.agrees) return { ...found, ...check };
  const used = results.filter(({ is }) => Object.values(step.input).includes(is));
  const rounded = used.length === 0 ? undefined : withClaims(formula, decoded, used, claimed);
  if (rounded?.agrees !== true) return { ...found, ...check };
  return { ...found, ...rounded, carried: used.map((each) => each.number) };
}

/** The step worked on from results as they were rounded; nothing where the formula refuses those. */
function withClaims(
  formula: AnyFormula,
  decoded: FormulaInput,
  used: readonly Result[],
  claimed: string,
): HandCheck | undefined {
  const input = Object.fromEntries(
    Object.entries(decoded.input).map(([name, value]) => [name, used.find(({ is }) => is === value)?.claimed ?? value]),
  );
  try {
    return heldTo(formula, { ...decoded, input }, formula.compute(input as never), claimed);
  } catch (error) {
    if (isCalculationError(error)) return undefined;
    throw error;
  }
}

/** The inputs in the units in which the sheet prints them, since a forgotten square is one of the number on the paper. */
function asTyped(formula: AnyFormula, { input }: RecordedStep, units: UnitPreferences): FormulaInput {
  const typed: Record<string, Typed> = {};
  for (const { name, declaration, value } of givenInputs(formula, input)) {
    const { kind } = declaration;
    if (!isKind(kind) || typeof value !== 'number') continue;
    const unit = preferredUnit(kind, name, units, declaration.name);
    typed[name] = { kind, unit, text: givenText(kind, value, unit, 15) };
  }
  return { input, typed };
}

function kindOf(formula: AnyFormula): string {
  return mainOutput(formula).declared.kind as string;
}

function said(agreed: readonly StepCheck[], departs: StepCheck | undefined, notHeld: readonly string[]): string {
  const right = agreed.length === 1 ? '1 step agrees' : `${agreed.length} steps agree`;
  if (departs === undefined) return `All that was claimed agrees: ${right}.`;
  const { step, title, message } = departs;
  const behind =
    notHeld.length === 0 ? '' : ` Not held to anything, since they may follow from it: ${notHeld.join(', ')}.`;
  return `The first step that departs is ${step}, ${title}: ${message} Before it ${right}.${behind}`;
}

function range(steps: readonly NumberedStep[]): string {
  return `${steps[0]?.number ?? 'of which there is none'} to ${steps.at(-1)?.number ?? ''}`;
}
