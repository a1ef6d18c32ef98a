/** `hoopwright/report`: calculation sheets, single steps, formula cards, the plan of the work, comparisons and what doubt leaves. */
export {
  type CalculationSheetOptions,
  calculationSheet,
  comparisonSheet,
  type FormulaSheetOptions,
  formulaSheet,
  intervalSheet,
  type PlanTextOptions,
  planHtml,
  planText,
  renderStep,
  type SheetOptions,
  type StepOptions,
  sensitivitySheet,
  shortfallSheet,
  type UnitPreferences,
  type UnitSystem,
} from './report/index.js';
