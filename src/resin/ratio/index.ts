export * from './blend-equivalent-weight.js';
export * from './conversion-limit.js';
export * from './hardener-parts.js';
export * from './hydrogen-equivalent-weight.js';
export * from './mass-parts.js';
export * from './mix-density.js';
export * from './mixing-ratio-error.js';
export * from './volume-parts.js';
