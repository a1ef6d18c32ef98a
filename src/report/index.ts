export { type FormulaSheetOptions, formulaSheet } from './formula-sheet.js';
export type { SheetOptions, StepOptions } from './options.js';
export { lineText } from './plan-amount.js';
export { planHtml } from './plan-html.js';
export { type PlanTextOptions, planText } from './plan-text.js';
export { renderStep } from './render.js';
export { type CalculationSheetOptions, calculationSheet } from './sheet.js';
export type { UnitPreferences, UnitSystem } from './units.js';
