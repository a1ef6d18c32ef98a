export type { Answer } from './answer.js';
export { type CoursePoint, type CourseSteps, courseOf, type OutcomeCourse } from './course.js';
export type { Distribution } from './distribution.js';
export type { DesignPoint } from './first-order.js';
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
export { type CriterionPoint, type Shortfall, type ShortfallOptions, type Spread, shortfall } from './shortfall.js';
export type { Simulation } from './simulate.js';
