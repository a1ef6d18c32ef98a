export type { Answer } from './answer.js';
export { type NumericInput, numericInputs, withInputs } from './inputs.js';
export {
  type Corner,
  type CornerWithoutDesign,
  type DesignInterval,
  interval,
  type OutcomeInterval,
  type Tolerance,
  type Tolerances,
} from './interval.js';
export { type Moved, type Sensitivities, type Sensitivity, type Steps, sensitivities } from './sensitivities.js';
