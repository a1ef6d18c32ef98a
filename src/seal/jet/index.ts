export * from './critical-pressure-ratio.js';
export * from './gas-leak-rate.js';
export * from './jet-reaction.js';
export * from './jet-speed.js';
export * from './liquid-leak-rate.js';
