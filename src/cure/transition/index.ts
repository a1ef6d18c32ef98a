export * from './conversion-from-transition.js';
export * from './di-benedetto.js';
export * from './logarithmic-transition.js';
