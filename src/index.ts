export { hoopStress } from './pipe/index.js';
export * from './quantity/index.js';
