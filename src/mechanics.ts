/**
 * `hoopwright/mechanics`: mechanics that several rooms need. Written by `npm run contents`.
 *
 * @module
 */
export {
  type ArrheniusRateInput,
  type ArrheniusShiftInput,
  arrheniusRate,
  arrheniusShift,
  type CylinderEnds,
  type Ends,
  type RingBucklingInput,
  ringBuckling,
  type SquarePlateDeflectionInput,
  type StripBendingMomentInput,
  type StripBendingStrainInput,
  type StripBendingStressInput,
  squarePlateDeflection,
  stripBendingMoment,
  stripBendingStrain,
  stripBendingStress,
  type ThickCylinderAxialStressInput,
  type ThickCylinderHoopStressInput,
  type ThickCylinderRadialStressInput,
  type TwoLayerInterfacePressureInput,
  thickCylinderAxialStress,
  thickCylinderHoopStress,
  thickCylinderRadialStress,
  twoLayerInterfacePressure,
  type WrappedCylinder,
  type WrappedCylinderInput,
  wrappedCylinder,
} from './mechanics/index.js';
