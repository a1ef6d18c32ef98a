import { isCalculationError, type Recorder } from '../../formula/index.js';
import { type Force, type Kind, type Line, line, type Quantity } from '../../quantity/index.js';
import { numbersIn, type PracticeValue, type Rule, type RuleSet } from '../../rules/index.js';
import type { JudgedClimates } from '../../site/index.js';
import type { RepairCase } from '../case/case.js';
import type { Assumption, MissingInput, Reason, UsedRule, Warning } from '../design/design.js';
import type { StepId } from '../timeline/timeline.js';
import { refusalLine } from './refusal-line.js';

/** What pulls along the pipe and what pushes it, without the end load of the pressure: each may act alone, and neither relieves the other. */
export interface ForcesAlong {
  /** At least 0. */
  readonly pull: Force;
  /** At most 0. */
  readonly push: Force;
}

/** What a design gathers on its way through the stages. */
export interface Workbook {
  /** What is designed for: the case as stated, its design pressure raised to a surge above it, its neighbours joined to the defect. */
  readonly case: RepairCase;
  readonly stated: RepairCase;
  /** What acts along the pipe beside the end load of the pressure. */
  readonly along: ForcesAlong;
  readonly rules: RuleSet;
  readonly recorder: Recorder | undefined;
  readonly reasons: Reason[];
  readonly notCovered: Reason[];
  readonly missing: MissingInput[];
  readonly assumed: Assumption[];
  readonly warnings: Warning[];
  /** By the rule itself: a rule counts once, whatever it is called. */
  readonly usedRules: Map<object, UsedRule>;
  /** What the gate of the site found of each stretch of the forecast: all starts that are tried look at the same ones. */
  readonly climates: JudgedClimates;
}

/** The value of a rule; the design remembers that it used it. */
export function use<T>(work: Workbook, name: string, rule: Rule<T>): T {
  if (!work.usedRules.has(rule)) {
    const { tag, derived } = rule.evidence;
    const used: { -readonly [K in keyof UsedRule]: UsedRule[K] } = { name, clause: rule.clause, tag };
    if (derived !== undefined) used.derived = derived;
    if (rule.confirmed !== undefined) used.confirmed = { values: rule.confirmed, of: numbersIn(rule.value, '').length };
    work.usedRules.set(rule, used);
  }
  return rule.value;
}

/** The value that the case gives, or one that the library supplies and lists as assumed. */
export function assumeQuantity<K extends Kind>(
  work: Pick<Workbook, 'assumed'>,
  given: Quantity<K> | undefined,
  otherwise: {
    readonly name: string;
    readonly kind: K;
    readonly value: Quantity<K>;
    readonly tag: Assumption['tag'];
    readonly because: string;
  },
): Quantity<K> {
  if (given !== undefined) return given;
  const { name, kind, value, tag, because } = otherwise;
  if (!work.assumed.some(({ amount }) => amount.name === name))
    work.assumed.push({ amount: { name, kind, value }, tag, because });
  return value;
}

/** The value that the case gives, or the one of the table of practice, which the design then lists as assumed. */
export function assume<K extends Kind>(
  work: Pick<Workbook, 'assumed'>,
  given: Quantity<K> | undefined,
  otherwise: PracticeValue<K>,
): Quantity<K> {
  return assumeQuantity(work, given, otherwise as PracticeValue<K> & { readonly value: Quantity<K> });
}

/** Notes that a choice was made for the reader. */
export function assumeWord(work: Workbook, name: string, word: string, tag: Assumption['tag'], because: string): void {
  work.assumed.push({ amount: { name, word }, tag, because });
}

/** Notes that an input is missing, once. */
export function need(work: Workbook, field: string, why: string, askWhom: string): undefined {
  if (!work.missing.some((missing) => missing.field === field)) work.missing.push({ field, why, askWhom });
  return undefined;
}

/** Adds a warning, once with the same amounts. One that bears on the crew goes to its step of the plan: see `warnCrew`. */
export function warn(work: Workbook, what: string | Warning, clause?: string): void {
  const said = typeof what === 'string' ? { text: what } : what;
  if (work.warnings.some((each) => isAlike(each, said))) return;
  work.warnings.push(clause === undefined ? said : { ...said, clause });
}

/** The same sentence on another number, or at another step, is another warning. */
function isAlike(one: Warning, other: Warning): boolean {
  if (one.text !== other.text || one.step !== other.step) return false;
  return JSON.stringify(one.amounts) === JSON.stringify(other.amounts);
}

/** Adds a warning that the crew has to know of, once: the plan says it at that step before anything else. */
export function warnCrew(work: Workbook, step: StepId, what: string | Line, clause?: string): void {
  const said = typeof what === 'string' ? line(what) : what;
  warn(work, { ...said, step }, clause);
}

/** Adds a warning that whoever takes the line back has to know of, once: the plan says it at the return to service. */
export function warnOwner(work: Workbook, what: string | Line, clause?: string): void {
  warnCrew(work, 'return', what, clause);
}

/**
 * Runs a calculation whose refusal is an answer, not a crash: nothing can hold the demand (`no-solution`), or the source
 * forbids the equation (`outside-validity`). Bad input stays an error.
 */
export function attempt<T>(work: Workbook, what: string, calculate: () => T): T | undefined {
  try {
    return calculate();
  } catch (error) {
    if (!isCalculationError(error) || error.code === 'invalid-input') throw error;
    const reason: Reason = refusalLine(what, error);
    if (error.code === 'no-solution') work.reasons.push(reason);
    else work.notCovered.push(reason);
    return undefined;
  }
}

/** What a trial came to, or what it was refused for. */
export type Trial<T> =
  | { readonly result: T; readonly refusals: readonly [] }
  | { readonly result: undefined; readonly refusals: readonly [Reason, ...Reason[]] };

/**
 * Runs a calculation that must not decide the design: its refusals are handed back, and what it would have said about
 * missing inputs and of warnings concerns only who chose it.
 */
export function trial<T>(work: Workbook, what: string, calculate: () => T): Trial<T> {
  const { reasons, notCovered, missing, warnings } = work;
  const [r, n, m, w] = [reasons.length, notCovered.length, missing.length, warnings.length];
  const result = attempt(work, what, calculate);
  const [first, ...others] = [...notCovered.splice(n), ...reasons.splice(r)];
  missing.length = m;
  warnings.length = w;
  if (first !== undefined) return { result: undefined, refusals: [first, ...others] };
  // Without a refusal the calculation came to its end.
  return { result: result as T, refusals: [] };
}
