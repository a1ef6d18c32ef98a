export * from './kinetics/index.js';
export * from './shift/index.js';
export * from './transition/index.js';
export * from './wait/index.js';
