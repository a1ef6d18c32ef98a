export * from './barcol-readings.js';
export * from './barcol-shop-mean.js';
export * from './hardness-gate.js';
export type { HardnessScale, IndentedMaterial } from './hardness-readings.js';
export * from './hardness-statistics.js';
export * from './hardness-to-reach.js';
