export { compareAsBuilt } from './as-built/as-built.js';
export type * from './as-built/record.js';
export * from './case/case.js';
export * from './design/design.js';
export type * from './design/design-work.js';
export { designRepair } from './design-repair.js';
export * from './plan/index.js';
export { version } from './version.js';
