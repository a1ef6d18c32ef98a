export { checkHandCalculation, type HandCheck } from './check-hand-calculation.js';
