export * from './dnv-axial-compression.js';
export * from './dnv-length-correction.js';
export * from './dnv-part-a.js';
export * from './dnv-single-defect.js';
export * from './dnv-single-defect-all.js';
export * from './dnv-tensile-strength.js';
