export * from './slot-cross-over.js';
export * from './slot-pressure-ceiling.js';
export * from './slot-resistance.js';
export * from './strip-modulus.js';
export * from './thickness-slot.js';
export * from './thickness-wide-slot.js';
export * from './wide-slot-resistance.js';
