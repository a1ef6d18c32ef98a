/**
 * `hoopwright/report`: calculation sheets, single steps, formula cards, the plan of the work, exercises, comparisons and what doubt leaves.
 *
 * @module
 */
export {
  type CalculationSheetOptions,
  calculationSheet,
  comparisonSheet,
  type ExerciseSheetOptions,
  exerciseSheet,
  type FirstPageOptions,
  type FormulaSheetOptions,
  firstPage,
  formulaSheet,
  intervalSheet,
  type PlanTextOptions,
  planHtml,
  planText,
  type RepairDrawings,
  renderStep,
  repairDrawing,
  repairDrawings,
  type SensitivitySheetOptions,
  type SheetOptions,
  type StepOptions,
  sensitivitySheet,
  shortfallSheet,
  type UnitPreferences,
  type UnitSystem,
} from './report/index.js';
