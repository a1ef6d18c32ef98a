export * from './collar-volume.js';
export * from './coverage-volume.js';
export * from './defect-volume.js';
export * from './film-volume.js';
export * from './pour-depth.js';
export * from './volume-with-waste.js';
