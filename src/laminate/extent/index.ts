export * from './axial-extent.js';
export * from './governing-overlap.js';
export * from './overlap-from-adhesive.js';
export * from './overlap-from-geometry.js';
export * from './overlap-from-hole.js';
export * from './taper-length.js';
