export * from './attempt.js';
export * from './band/index.js';
export * from './end-load.js';
export * from './highest-pressure.js';
export * from './jet/index.js';
export * from './pad/index.js';
export * from './practice.js';
