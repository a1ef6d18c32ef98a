export * from './allowable-pressure.js';
export * from './anchor-force.js';
export * from './api579-length-parameter.js';
export * from './axial-force-stress.js';
export * from './b31g-1991-allowable-depth.js';
export * from './b31g-1991-allowable-length.js';
export * from './b31g-1991-design-pressure.js';
export * from './b31g-1991-length-factor.js';
export * from './b31g-1991-safe-pressure.js';
export * from './b31g-allowable-length.js';
export * from './b31g-original.js';
export * from './b31g-original-all.js';
export * from './bending-stress.js';
export * from './bore-hoop-stress.js';
export * from './circumference.js';
export * from './circumferential-extent-limit.js';
export * from './code-hoop-stress.js';
export * from './code-longitudinal-stress.js';
export * from './combined-tresca-stress.js';
export * from './combined-von-mises-stress.js';
export * from './critical-through-wall-length.js';
export * from './defect-circle-diameter.js';
export * from './defect-depth-at-end-of-life.js';
export * from './defect-length-at-end-of-life.js';
export type { DepthPoint } from './depth-profile.js';
export * from './design-thickness-inside.js';
export * from './design-thickness-outside.js';
export * from './dnv-axial-compression.js';
export * from './dnv-length-correction.js';
export * from './dnv-part-a.js';
export * from './dnv-single-defect.js';
export * from './dnv-single-defect-all.js';
export * from './dnv-tensile-strength.js';
export * from './effective-area.js';
export * from './flow-stress-mean.js';
export * from './flow-stress-multiple.js';
export * from './flow-stress-offset.js';
export * from './folias-api579.js';
export * from './folias-b31g.js';
export * from './folias-modified-b31g.js';
export * from './gas-design-pressure.js';
export * from './governing-wall-loss-rate.js';
export * from './hoop-stress.js';
export * from './hoop-stress-all.js';
export * from './inside-diameter-hoop-stress.js';
export * from './inspection-interval.js';
export * from './leak-or-rupture.js';
export * from './liquid-design-pressure.js';
export * from './local-metal-loss.js';
export * from './local-metal-loss-profile.js';
export * from './longitudinal-stress.js';
export * from './longitudinal-stress-limit.js';
export * from './longitudinal-stress-sum.js';
export * from './mawp.js';
export * from './mawp-all.js';
export * from './mean-diameter-hoop-stress.js';
export * from './metal-loss-depth.js';
export type { FlowStressSurvey, MetalLossSurvey } from './metal-loss-survey.js';
export * from './minimum-wall.js';
export * from './modified-b31g.js';
export * from './modified-b31g-all.js';
export * from './order-wall.js';
export * from './outside-diameter-from-circumference.js';
export * from './outside-hoop-stress.js';
export * from './outside-radius.js';
export type { PartWallDefect } from './part-wall-defect.js';
export * from './recent-pressure-limit.js';
export * from './rectangular-defect.js';
export * from './remaining-life.js';
export * from './remaining-strength.js';
export {
  type FlowStressChoice,
  flowStressChoices,
  type MethodInside,
  type MethodOutside,
  type MethodResult,
  type RemainingStrengthInput,
  type RemainingStrengthMethod,
  remainingStrengthMethods,
} from './remaining-strength-methods.js';
export * from './remaining-wall.js';
export * from './restrained-pressure-stress.js';
export * from './restrained-thermal-stress.js';
export * from './safe-pressure.js';
export * from './thick-wall-axial-stress.js';
export * from './thick-wall-coefficient.js';
export * from './thick-wall-hoop-stress.js';
export * from './thick-wall-radial-stress.js';
export * from './thin-longitudinal-stress.js';
export * from './through-wall-at-end-of-life.js';
export * from './through-wall-slot.js';
export * from './through-wall-slot-pressure.js';
export * from './tresca-stress.js';
export * from './von-mises-stress.js';
export * from './wall-at-end-of-life.js';
export * from './wall-less-reading-error.js';
export * from './wall-loss-rate.js';
export * from './working-safety-factor.js';
