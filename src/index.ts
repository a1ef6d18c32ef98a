/** Table of contents, written by `npm run contents`. */

// Quantities: constructors, readers, text.

export * from './quantity/index.js';

// Refusals and the record of a calculation.

export {
  CalculationError,
  type CalculationErrorCode,
  createRecorder,
  type Evidence,
  isCalculationError,
  type RecordedEntry,
  type Recorder,
  type Refusal,
  type SourceKey,
  type SourceTag,
} from './formula/index.js';

// Rule sets as data.

export {
  asmePcc2,
  type ClassLimits,
  type DefaultStrainRow,
  type HighRiskLimits,
  isKnown,
  iso24817,
  type Loading,
  type PerformanceRow,
  type RepairClass,
  type Rule,
  type RuleSet,
  type UnknownRule,
} from './rules/index.js';

// Mechanics that several rooms need.

export { type ArrheniusRateInput, type ArrheniusShiftInput, arrheniusRate, arrheniusShift } from './mechanics/index.js';

// The pipe: stresses, remaining strength, wall loss.

export { type HoopStressInput, hoopStress } from './pipe/index.js';

// The wrap: tape, sheet, layers, rolls.

export {
  type AdvancePerTurnInput,
  type AxialTapeWidthInput,
  advancePerTurn,
  axialTapeWidth,
  type FinalLapInput,
  finalLap,
  type HelixLengthInput,
  helixLength,
  type LeadAngleInput,
  type LeastOverlapInput,
  type LengthOnRollInput,
  type LengthPerTurnInput,
  leadAngle,
  leastOverlap,
  lengthOnRoll,
  lengthPerTurn,
  type MaximumLayersInput,
  type MeanLayersInput,
  type MinimumLayersInput,
  maximumLayers,
  meanLayers,
  minimumLayers,
  type NettingAngleInput,
  nettingAngle,
  overlapWithoutMargin,
  type PassesInput,
  passes,
  type Rolls,
  type RollsInput,
  rolls,
  type SheetLengthInput,
  type SheetPlan,
  type SheetPlanInput,
  type SheetsSideBySideInput,
  sheetLength,
  sheetPlan,
  sheetsSideBySide,
  slightlyMoreOverlapSavesPass,
  steepLead,
  type TapeAreaInput,
  type TapePass,
  type TapePlan,
  type TapePlanInput,
  tapeArea,
  tapePlan,
  type WrappedAreaInput,
  wrappedArea,
} from './wrap/index.js';
