export { checkHandCalculation, type HandCheck } from './check-hand-calculation.js';
export { type ClaimedStep, checkSheet, type SheetCheck, type StepCheck } from './check-sheet.js';
