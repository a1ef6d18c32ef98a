export * from './bend-factor.js';
export * from './thickness-as-straight.js';
export * from './thickness-on-fitting.js';
