export * from './batch-plan.js';
export * from './batch-split.js';
export * from './least-weighed-mass.js';
export * from './mass.js';
export * from './mass-with-waste.js';
export * from './usable-mass.js';
export * from './weighing-error.js';
