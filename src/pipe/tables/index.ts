export { type AllowableStress, allowableStress, allowableStressRows } from './allowable-stress.js';
export {
  type GasCodeLocation,
  gasCodeDesignFactor,
  type LiquidCodeService,
  liquidCodeDesignFactor,
} from './code-design-factors.js';
export {
  type ClassLocation,
  type GasPipelineSituation,
  gasDesignFactor,
  gasHeatFactor,
  gasJointFactor,
  gasTemperatureFactor,
  gasUnknownYieldStrength,
} from './gas-pipeline-factors.js';
export { type GradeEdition, type LinePipeGrade, linePipeGrade, linePipeGrades } from './line-pipe-grade.js';
export {
  type LiquidPipelineJoint,
  type LiquidPipelineSituation,
  liquidDesignFactor,
  liquidJointFactor,
} from './liquid-pipeline-factors.js';
export { type NearestPipeSize, nearestPipeSize, type SizeCandidate } from './nearest-pipe-size.js';
export type { PipeStandard } from './pipe-diameters.data.js';
export { type PipeSize, type PipeSizeInput, pipeSize, schedulesOf } from './pipe-size.js';
export {
  type CoefficientYMaterial,
  coefficientY,
  millUnderTolerance,
  type ProcessPipeJoint,
  plateUnderTolerance,
  processJointFactor,
  type WeldMaterial,
  weldStrengthFactor,
} from './process-piping-factors.js';
export { type StructuralMinimumWall, structuralMinimumWall } from './structural-minimum-wall.js';
export type { TableValue } from './table-value.js';
