export * from './hoop-stress.js';
