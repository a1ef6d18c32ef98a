/** `hoopwright/report`: calculation sheets, single steps, formula cards and the plan of the work. */
export {
  type CalculationSheetOptions,
  calculationSheet,
  type FormulaSheetOptions,
  formulaSheet,
  type PlanTextOptions,
  planHtml,
  planText,
  renderStep,
  type SheetOptions,
  type StepOptions,
  type UnitPreferences,
  type UnitSystem,
} from './report/index.js';
