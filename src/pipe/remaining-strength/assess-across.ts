import { step } from '../../formula/index.js';
import type { Force, GaugePressure, Moment, Stress } from '../../quantity/index.js';
import { circumference } from '../circumference.js';
import { axialFailureStress } from './axial-failure-stress.js';
import { axialLossPressure } from './axial-loss-pressure.js';
import { flowStressMultiple } from './flow-stress-multiple.js';
import { ACROSS, type MethodInside, type RemainingStrengthJob } from './remaining-strength-methods.js';
import { safePressure } from './safe-pressure.js';

/** Along the pipe, over the width of the loss: no method of the hoop direction sees it, so it counts beside each of them. */
export function assessAcross({ input, recorder, safetyFactor }: RemainingStrengthJob): MethodInside {
  const { outsideDiameter, wallThickness, defectDepth, defectWidth, maximumPressure } = input;
  const { axialForce = 0 as Force, bendingMoment = 0 as Moment } = input;
  const notes: string[] = [];
  if (defectWidth === undefined)
    notes.push('the width of the loss was not given: it is taken to go all round the pipe');
  const loss = {
    outsideDiameter,
    wallThickness,
    defectDepth,
    defectWidth: defectWidth ?? circumference({ outsideDiameter }),
    flowStress: flowStressOf({ input, recorder }),
  };
  const { failureStress } = step(recorder, 'pipe/axial-failure-stress', axialFailureStress, loss);
  const pressureAt = (factor: number, purpose: string): GaugePressure => {
    const loads = { failureStress, safetyFactor: factor, outsideDiameter, wallThickness, axialForce, bendingMoment };
    return step(recorder, 'pipe/axial-loss-pressure', axialLossPressure, loads, purpose);
  };
  const failurePressure = pressureAt(1, 'at failure');
  const factored = {
    failurePressure: pressureAt(safetyFactor, 'with the safety factor'),
    safetyFactor: 1,
    maximumPressure,
  };
  const safe = step(recorder, 'pipe/safe-pressure', safePressure, factored, ACROSS);
  return { method: ACROSS, inside: true, failurePressure, safePressure: safe, notes };
}

/** 1.1 SMYS, whatever the case chooses for the hoop direction, and never above the tensile strength. */
function flowStressOf({ input, recorder }: Pick<RemainingStrengthJob, 'input' | 'recorder'>): Stress {
  const { yieldStrength, tensileStrength } = input;
  const flow = step(recorder, 'pipe/flow-stress-multiple', flowStressMultiple, { yieldStrength });
  return tensileStrength !== undefined && tensileStrength < flow ? tensileStrength : flow;
}
