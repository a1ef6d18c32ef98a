export * from './air/index.js';
export * from './gate/index.js';
export * from './hours/index.js';
export * from './surface/index.js';
