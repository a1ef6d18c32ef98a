export * from './batch/index.js';
export * from './hardener-deviation.js';
export * from './heat/index.js';
export * from './mass-without-waste.js';
export * from './mixed-mass.js';
export * from './ply/index.js';
export * from './ratio/index.js';
export * from './volume/index.js';
