/** `hoopwright/report`: calculation sheets, single steps and formula cards, as text or Markdown. */
export {
  type CalculationSheetOptions,
  calculationSheet,
  type FormulaSheetOptions,
  formulaSheet,
  renderStep,
  type SheetOptions,
  type StepOptions,
  type UnitPreferences,
  type UnitSystem,
} from './report/index.js';
