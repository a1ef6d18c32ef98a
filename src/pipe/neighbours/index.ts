export * from './colony-extent.js';
export * from './gap-at-end-of-life.js';
export * from './gap-past-neighbours.js';
export * from './joined-extent.js';
export * from './neighbour-reach.js';
export * from './neighbour-spacing-along.js';
export * from './neighbour-spacing-round.js';
