import type { PlanFacts } from './facts.js';
import type { StepDraft } from './schedule.js';
import { cureStep } from './step-cure.js';
import { fillerSteps } from './steps-filler.js';
import { sealSteps } from './steps-seal.js';
import { wrapStep } from './steps-wrap.js';

/** What is built on the pipe: seal, putty, filler, wrap, each with its wait. */
export function stepsBuild(facts: PlanFacts): StepDraft[] {
  return [...sealSteps(facts), ...fillerSteps(facts), wrapStep(facts), cureStep(facts)];
}
