import { type CaseIssue, isCaseError, parseCase } from '../../src/json/index.js';
import type { Line } from '../../src/quantity/index.js';
import {
  type Designed,
  designRepair,
  type ExtentDesign,
  type LaminateDesign,
  type PlanOptions,
  type PlanStep,
  planWork,
  type RepairCase,
  type RepairDesign,
  type Verdict,
  type WorkPlan,
} from '../../src/repair/index.js';
import { designed } from '../repair/by-use.js';
import type { CaseFile } from './cases.js';

/** Through the JSON door. */
export const caseOf = (file: CaseFile): RepairCase => parseCase(JSON.stringify(file)).case;

/** Through the JSON door into a design, which the case has to come to. */
export const madeOf = (file: CaseFile): Designed => designed(caseOf(file));

/** Through the JSON door into a design, whatever its verdict. */
export const designOf = (file: CaseFile): RepairDesign => designRepair(caseOf(file));

/** What a case comes to: a verdict, or the refusal of the door. */
type Answer = { readonly design: RepairDesign } | { readonly issues: readonly CaseIssue[] };

function answerOf(file: CaseFile): Answer {
  try {
    return { design: designOf(file) };
  } catch (error) {
    if (!isCaseError(error)) throw error;
    return { issues: error.issues };
  }
}

/** The verdict, or `refused` where the door does not let the case in. */
export function verdictOf(file: CaseFile): Verdict | 'refused' {
  const answer = answerOf(file);
  return 'design' in answer ? answer.design.verdict : 'refused';
}

/** Fields that the door does not let in; none where it lets the case in. */
export function refusedFields(file: CaseFile): string[] {
  const answer = answerOf(file);
  return 'issues' in answer ? answer.issues.map(({ path }) => path) : [];
}

/** Whether the library asks for a field: the door as missing, or the design as a missing input. */
export function asksFor(file: CaseFile, path: string): boolean {
  const answer = answerOf(file);
  if ('design' in answer) return answer.design.missing.some(({ field }) => field === path);
  return answer.issues.some((issue) => issue.path === path && issue.value === undefined);
}

/** The laminate of a design; a case that comes to none is a fault of the test. */
export function laminateOf(file: CaseFile): LaminateDesign {
  const { laminate, verdict } = designOf(file);
  if (laminate === undefined) throw new Error(`no laminate: ${verdict}`);
  return laminate;
}

/** How far the laminate of a design reaches. */
export function extentOf(file: CaseFile): ExtentDesign {
  const { extent, verdict } = designOf(file);
  if (extent === undefined) throw new Error(`no extent: ${verdict}`);
  return extent;
}

/** Thickness that a design asks for, in millimetres; endless where nothing is designed: a refusal hurts nobody. */
export function millimetresAsked(file: CaseFile): number {
  const answer = answerOf(file);
  if ('issues' in answer || answer.design.verdict !== 'designed') return Number.POSITIVE_INFINITY;
  return (answer.design.laminate?.thickness.value ?? Number.NaN) * 1000;
}

/** Warnings of the first case that the second does not have. */
export function newWarnings(file: CaseFile, without: CaseFile): string[] {
  const known = new Set(designOf(without).warnings.map(({ text }) => text));
  return designOf(file).warnings.flatMap(({ text }) => (known.has(text) ? [] : [text]));
}

/** The plan of a case. */
export const planOf = (file: CaseFile, options: PlanOptions = {}): WorkPlan => planWork(designOf(file), options);

/** The steps of a plan in order, by their ids. */
export const idsOf = (plan: WorkPlan): string[] => plan.steps.map(({ id }) => id);

/** A step that the plan has to have. */
export function stepOf(plan: WorkPlan, id: string): PlanStep {
  const step = plan.steps.find((each) => each.id === id);
  if (step === undefined) throw new Error(`no step ${id} in ${idsOf(plan).join(', ')}`);
  return step;
}

/** All that a step says to the crew. */
export const linesOf = ({ does, goes, stops }: PlanStep): Line[] => [...does, ...goes, ...stops];

/**
 * A time that may not be known: `undefined` where it is. A known time is a number, or `{ known: true, time }`; one that is
 * not known is `{ known: false, because }`, never 0 and never absent.
 */
export function secondsOf(time: unknown): number | undefined {
  if (typeof time === 'number') return time;
  if (typeof time === 'object' && time !== null && 'time' in time && typeof time.time === 'number') return time.time;
  return undefined;
}

/** Whether a time is said to be not known, with the reason. */
export function isSaidUnknown(time: unknown): boolean {
  if (typeof time !== 'object' || time === null || !('known' in time) || !('because' in time)) return false;
  return time.known === false && time.because !== '';
}
