/** `hoopwright/doubt`: what a design hangs on: sensitivity, tolerances, the chance to fall short. Written by `npm run contents`. */
export {
  type Answer,
  type Corner,
  type CornerWithoutDesign,
  type DesignInterval,
  interval,
  type Moved,
  type NumericInput,
  numericInputs,
  type OutcomeInterval,
  type Sensitivities,
  type Sensitivity,
  type Steps,
  sensitivities,
  type Tolerance,
  type Tolerances,
  withInputs,
} from './doubt/index.js';
