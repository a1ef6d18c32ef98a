export * from './defect-depth-at-end-of-life.js';
export * from './defect-length-at-end-of-life.js';
export * from './governing-wall-loss-rate.js';
export * from './inspection-interval.js';
export * from './remaining-life.js';
export * from './through-wall-at-end-of-life.js';
export * from './wall-at-end-of-life.js';
export * from './wall-loss-rate.js';
