export * from './adiabatic-rise.js';
export * from './heat-of-reaction.js';
export * from './induction-time.js';
export * from './runaway-parameter.js';
