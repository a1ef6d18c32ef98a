export * from './lap-shear-stress.js';
export * from './pull-off-stress.js';
