export { compareAsBuilt } from './as-built.js';
export type * from './as-built-record.js';
export * from './case.js';
export * from './design.js';
export { designRepair } from './design-repair.js';
export type * from './design-work.js';
export * from './plan/index.js';
export { version } from './version.js';
