export * from './accept-repair.js';
export type * from './acceptance-record.js';
export * from './adhesion/index.js';
export * from './findings/index.js';
export * from './hardness/index.js';
export * from './least-thickness.js';
export * from './pressure-test/index.js';
export * from './stored-energy/index.js';
export type { AcceptanceReason, AcceptanceVerdict, HoldPoint } from './verdict.js';
