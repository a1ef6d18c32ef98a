export { type BestStart, bestStart, caseStartingAt, type StartTried } from './best-start.js';
export type * from './plan.js';
export { hourOf, planWork } from './plan-work.js';
