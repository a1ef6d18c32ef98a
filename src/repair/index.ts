export { compareAsBuilt } from './as-built/as-built.js';
export type * from './as-built/record.js';
export * from './case/case.js';
export * from './design/design.js';
export type * from './design/design-work.js';
export { designRepair } from './design-repair.js';
export { type EndOfLife, endOfLife, type ReInspection } from './end-of-life.js';
export { type LaidInCase, laidInCase } from './laid-in-case.js';
export * from './plan/index.js';
export type { CureLaw, CureOverHistory, Cures, SteadyCure } from './timeline/cure-law.js';
export type { CureUse, Duration } from './timeline/duration.js';
export {
  type Entered,
  type Job,
  type JobStep,
  type Renewal,
  type StepId,
  stepAt,
  type Timeline,
  type TimelineStep,
  timeline,
} from './timeline/timeline.js';
export { version } from './version.js';
