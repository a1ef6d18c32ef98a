export * from './soluble-salts.js';
export * from './surface-grade.js';
export * from './surface-profile.js';
