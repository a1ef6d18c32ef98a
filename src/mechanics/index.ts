export * from './arrhenius-rate.js';
export * from './arrhenius-shift.js';
export * from './thick-cylinder-axial-stress.js';
export * from './thick-cylinder-hoop-stress.js';
export * from './thick-cylinder-radial-stress.js';
