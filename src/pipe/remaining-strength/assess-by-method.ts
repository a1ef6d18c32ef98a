import { isCalculationError, step } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { assessLocalMetalLoss, assessLocalMetalLossProfile } from '../api579/assess-api579.js';
import { b31gOriginal, b31gOriginalShallow } from '../b31g/b31g-original.js';
import { effectiveArea } from '../b31g/effective-area.js';
import { modifiedB31g } from '../b31g/modified-b31g.js';
import { dnvSingleDefect } from '../dnv/dnv-single-defect.js';
import { assessedFlowStress, flowStressNotes } from './assessed-flow-stress.js';
import { leastWallPressureAlone } from './least-wall-pressure.js';
import type {
  MethodInside,
  MethodOutside,
  MethodResult,
  RemainingStrengthJob,
  RemainingStrengthMethod,
} from './remaining-strength-methods.js';
import { safePressure } from './safe-pressure.js';

/** One method; a refusal for its limits is an answer here, bad input is not. */
export function assessByMethod(job: RemainingStrengthJob, method: RemainingStrengthMethod): MethodResult {
  try {
    return run(job, method);
  } catch (error) {
    if (!isCalculationError(error) || error.code === 'invalid-input') throw error;
    return outside(method, error.message);
  }
}

function run(job: RemainingStrengthJob, method: RemainingStrengthMethod): MethodResult {
  switch (method) {
    case 'original B31G':
      return byOriginalB31g(job);
    case 'modified B31G':
      return byModifiedB31g(job);
    case 'effective area':
      return byEffectiveArea(job);
    case 'DNV-RP-F101':
      return byDnv(job);
    case 'API 579-1 Level 1':
      return assessLocalMetalLoss(job);
    case 'API 579-1 Level 2':
      return assessLocalMetalLossProfile(job) ?? outside(method, 'needs a depth profile');
  }
}

function byOriginalB31g(job: RemainingStrengthJob): MethodInside {
  const { outsideDiameter, wallThickness, defectDepth, defectLength } = job.input;
  const flowStress = assessedFlowStress(job, '1.1 SMYS');
  const input = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress };
  const failure = step(job.recorder, 'pipe/b31g-original', b31gOriginal, input);
  const notes = b31gOriginalShallow(input) ? ['depth below 0.1 of the wall: B31G asks for no action'] : [];
  return inside(job, 'original B31G', failure, notes);
}

function byModifiedB31g(job: RemainingStrengthJob): MethodInside {
  const { outsideDiameter, wallThickness, defectDepth, defectLength } = job.input;
  const flowStress = assessedFlowStress(job, job.flowStress);
  const input = { outsideDiameter, wallThickness, defectDepth, defectLength, flowStress };
  const failure = step(job.recorder, 'pipe/modified-b31g', modifiedB31g, input);
  return inside(job, 'modified B31G', failure, flowStressNotes(job));
}

function byEffectiveArea(job: RemainingStrengthJob): MethodResult {
  const { outsideDiameter, wallThickness, profile } = job.input;
  if (profile === undefined) return outside('effective area', 'needs a depth profile');
  const flowStress = assessedFlowStress(job, job.flowStress);
  const input = { outsideDiameter, wallThickness, flowStress, profile };
  const { failurePressure } = step(job.recorder, 'pipe/effective-area', effectiveArea, input);
  return inside(job, 'effective area', failurePressure, flowStressNotes(job));
}

function byDnv(job: RemainingStrengthJob): MethodResult {
  const { outsideDiameter, wallThickness, defectDepth, defectLength, tensileStrength } = job.input;
  if (tensileStrength === undefined) return outside('DNV-RP-F101', 'needs the tensile strength');
  const input = { outsideDiameter, wallThickness, defectDepth, defectLength, tensileStrength };
  const failure = step(job.recorder, 'pipe/dnv-single-defect', dnvSingleDefect, input);
  const { maximumPressure } = job.input;
  const factors = { failurePressure: failure, safetyFactor: job.safetyFactor, maximumPressure, modellingFactor: 0.9 };
  const safe = step(job.recorder, 'pipe/safe-pressure', safePressure, factors, 'DNV-RP-F101');
  const notes = ['the modelling factor of 0.9, as recalled, is in this safe pressure'];
  if (leastWallPressureAlone(wallThickness, defectDepth))
    notes.push(
      'the depth is above 0.80 of the wall, where no other method answers and this one does to 0.85 because the case names it: less conservative than the least wall all round',
    );
  return { method: 'DNV-RP-F101', inside: true, failurePressure: failure, safePressure: safe, notes };
}

function inside(
  { input, recorder, safetyFactor }: RemainingStrengthJob,
  method: RemainingStrengthMethod,
  failurePressure: GaugePressure,
  notes: readonly string[],
): MethodInside {
  const { maximumPressure } = input;
  const factors = { failurePressure, safetyFactor, maximumPressure };
  const safe = step(recorder, 'pipe/safe-pressure', safePressure, factors, method);
  return { method, inside: true, failurePressure, safePressure: safe, notes };
}

export function outside(method: RemainingStrengthMethod, because: string): MethodOutside {
  return { method, inside: false, because };
}
