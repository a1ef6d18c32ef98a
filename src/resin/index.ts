export * from './batch/index.js';
export * from './heat/index.js';
export * from './ply/index.js';
export * from './ratio/index.js';
export * from './volume/index.js';
