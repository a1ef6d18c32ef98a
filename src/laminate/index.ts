export * from './extent/index.js';
export * from './hole/index.js';
export * from './minor-poisson-ratio.js';
export * from './off-axis-modulus.js';
export * from './poisson-ratio-limit.js';
export * from './resistance/index.js';
export * from './strain/index.js';
export * from './thickness/index.js';
