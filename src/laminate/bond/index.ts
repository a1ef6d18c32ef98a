export type { Joint } from './joint.js';
export * from './lap-peak-over-mean.js';
export * from './lap-shear-peak.js';
export * from './lap-shear-stress.js';
export * from './shear-lag-length.js';
export * from './tapered-end-shear.js';
export * from './wrap-end-shear.js';
