/**
 * `hoopwright/doubt`: what a design hangs on: sensitivity, tolerances, the chance to fall short. Written by `npm run contents`.
 *
 * @module
 */
export {
  type Answer,
  type Corner,
  type CornerWithoutDesign,
  type CoursePoint,
  type CourseSteps,
  type CriterionPoint,
  courseOf,
  type DesignInterval,
  type DesignPoint,
  type Distribution,
  interval,
  type Moved,
  type NumericInput,
  numericInputs,
  type OutcomeCourse,
  type OutcomeInterval,
  type Sensitivities,
  type Sensitivity,
  type Shortfall,
  type ShortfallOptions,
  type Simulation,
  type Spread,
  type Steps,
  sensitivities,
  shortfall,
  type Tolerance,
  type Tolerances,
  withInputs,
} from './doubt/index.js';
