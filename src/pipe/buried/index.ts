export * from './pressure-from-outside.js';
export * from './soil-pressure.js';
export * from './span-buckling-force.js';
export * from './stress-under-soil.js';
