export * from './allowable-strain.js';
export * from './cyclic-factor.js';
export * from './default-strains.js';
export * from './performance-factor.js';
export * from './temperature-factor.js';
export * from './upper-temperature-limit.js';
