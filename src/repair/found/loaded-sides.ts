import { step } from '../../formula/index.js';
import {
  axialForceStress,
  bendingStress,
  longitudinalStressSum,
  shearStress,
  stressAtEdge,
  thinLongitudinalStress,
  trescaStress,
  trescaStressWithShear,
} from '../../pipe/index.js';
import type { Force, GaugePressure, Length, Stress } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';
import { otherLoadsOf } from './external-force.js';

/** A side of the bent pipe that bears more along itself than the pressure alone puts on it. */
export interface Side {
  /** Along the pipe, the end load of the pressure with it on the pulled side. */
  readonly along: Stress;
  readonly combined: Stress;
}

/** The sides of the sound pipe that the stated loads pull or push; none where nothing is stated. */
export function loadedSides(work: Workbook, outsideDiameter: Length, hoopStress: Stress): Side[] {
  const { pull, push } = work.along;
  const { bendingMoment, torque, shearForce } = otherLoadsOf(work.case);
  const sheared = torque > 0 || shearForce > 0;
  const sides: Side[] = [];
  if (pull > 0 || bendingMoment > 0 || sheared) sides.push(sideOf(work, outsideDiameter, hoopStress, pull, 'pulled'));
  if (push < 0 || bendingMoment > 0) sides.push(sideOf(work, outsideDiameter, hoopStress, push, 'pushed'));
  return sides;
}

function sideOf(
  work: Workbook,
  outsideDiameter: Length,
  hoopStress: Stress,
  axialForce: Force,
  edge: 'pulled' | 'pushed',
): Side {
  const { recorder, case: repairCase } = work;
  const { wallThickness } = repairCase.pipe;
  const { bendingMoment, torque, shearForce } = otherLoadsOf(repairCase);
  const pressure = edge === 'pulled' ? repairCase.service.designPressure : (0 as GaugePressure);
  const ofPressure = { pressure, outsideDiameter, wallThickness };
  const ofForce = { axialForce, outsideDiameter, wallThickness };
  const where = `sound pipe, ${edge} side`;
  const straight = step(
    recorder,
    'pipe/longitudinal-stress-sum',
    longitudinalStressSum,
    {
      pressureStress: step(recorder, 'pipe/thin-longitudinal-stress', thinLongitudinalStress, ofPressure, where),
      axialForceStress: step(recorder, 'pipe/axial-force-stress', axialForceStress, ofForce, where),
    },
    where,
  );
  const along = bendingMoment === 0 ? straight : bent(work, outsideDiameter, straight, edge);
  if (torque === 0 && shearForce === 0) {
    const principal = { first: hoopStress, second: along, third: 0 as Stress };
    return { along, combined: step(recorder, 'pipe/tresca-stress', trescaStress, principal, where) };
  }
  const inPlane = { hoopStress, longitudinalStress: along, shearStress: shearIn(work, outsideDiameter) };
  return { along, combined: step(recorder, 'pipe/tresca-stress-with-shear', trescaStressWithShear, inPlane, where) };
}

function bent(work: Workbook, outsideDiameter: Length, longitudinalStress: Stress, edge: 'pulled' | 'pushed'): Stress {
  const { bendingMoment } = otherLoadsOf(work.case);
  const ring = { bendingMoment, outsideDiameter, wallThickness: work.case.pipe.wallThickness };
  const ofBending = step(work.recorder, 'pipe/bending-stress', bendingStress, ring, 'sound pipe');
  const stresses = { longitudinalStress, bendingStress: ofBending, edge };
  return step(work.recorder, 'pipe/stress-at-edge', stressAtEdge, stresses, `sound pipe, ${edge} side`);
}

function shearIn(work: Workbook, outsideDiameter: Length): Stress {
  const { torque, shearForce } = otherLoadsOf(work.case);
  const { wallThickness } = work.case.pipe;
  const ring = { shearForce, torque, outsideDiameter, wallThickness };
  return step(work.recorder, 'pipe/shear-stress', shearStress, ring, 'sound pipe');
}
