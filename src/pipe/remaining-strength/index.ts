export * from './axial-failure-stress.js';
export * from './axial-loss-pressure.js';
export * from './damage-safety-factor.js';
export * from './defect-aspect-ratio.js';
export * from './defect-circle-diameter.js';
export type { DepthPoint } from './depth-profile.js';
export * from './design-factor-of-safety-factor.js';
export * from './flow-stress-mean.js';
export * from './flow-stress-multiple.js';
export * from './flow-stress-offset.js';
export * from './least-wall-pressure.js';
export * from './metal-loss-depth.js';
export type { FlowStressSurvey, MetalLossSurvey } from './metal-loss-survey.js';
export type { PartWallDefect } from './part-wall-defect.js';
export * from './recent-pressure-limit.js';
export * from './rectangular-defect.js';
export * from './remaining-strength.js';
export {
  type FlowStressChoice,
  flowStressChoices,
  type MethodInside,
  type MethodOutside,
  type MethodResult,
  type RemainingStrengthCriterion,
  type RemainingStrengthInput,
  type RemainingStrengthMethod,
  remainingStrengthCriteria,
  remainingStrengthMethods,
} from './remaining-strength-methods.js';
export * from './remaining-wall.js';
export * from './safe-pressure.js';
export * from './through-wall-arc-stress.js';
export * from './wall-less-reading-error.js';
