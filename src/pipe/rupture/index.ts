export * from './critical-through-wall-length.js';
export * from './leak-or-rupture.js';
export * from './through-wall-slot.js';
export * from './through-wall-slot-pressure.js';
