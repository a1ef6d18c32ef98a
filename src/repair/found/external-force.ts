import { step } from '../../formula/index.js';
import { equivalentAxialForce, equivalentPressure, forceAtEdge, pressureOfEquivalent } from '../../laminate/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** The other loads on a section across the pipe: of each its size, none is zero. */
export function otherLoadsOf({ loads }: RepairCase): {
  readonly bendingMoment: Moment;
  readonly torque: Moment;
  readonly shearForce: Force;
} {
  return {
    bendingMoment: sizeOf(loads.bendingMoment),
    torque: sizeOf(loads.torsion),
    shearForce: sizeOf(loads.shearForce),
  };
}

function sizeOf<Q extends number>(load: Q | 'none'): Q {
  return (load === 'none' ? 0 : Math.max(load, -load)) as Q;
}

/** ISO 24817, 7.5: end load of the closed pipe and all stated loads as one pull, a push counted as a pull. */
export function forceAlong(work: Workbook, outsideDiameter: Length, pressure: GaugePressure, purpose: string): Force {
  const { bendingMoment, torque, shearForce } = otherLoadsOf(work.case);
  const { pull, push } = work.along;
  const axialForce = Math.max(pull, -push) as Force;
  const loads = { pressure, outsideDiameter, axialForce, shearForce, bendingMoment, torque };
  return step(work.recorder, 'laminate/equivalent-axial-force', equivalentAxialForce, loads, purpose);
}

/** The pull of what acts along the pipe, or its push where nothing pulls; with bending, torsion or shear beside it all of them as one pull. */
export function pullOfLoads(work: Workbook, outsideDiameter: Length, purpose: string): Force {
  const { pull, push } = work.along;
  if (isAlone(work)) return pull > 0 ? pull : push;
  return forceAlong(work, outsideDiameter, 0 as GaugePressure, purpose);
}

/** What acts along a thinned wall as one pull: a push adds to the hoop stress, and is as bad as a pull of its size. */
export function forceOnThinned(work: Workbook, outsideDiameter: Length, purpose: string): Force {
  const { pull, push } = work.along;
  if (isAlone(work)) return Math.max(pull, -push) as Force;
  return forceAlong(work, outsideDiameter, 0 as GaugePressure, purpose);
}

/** Whether nothing bends, twists or shears the pipe beside the force along it. */
function isAlone(work: Workbook): boolean {
  const { bendingMoment, torque, shearForce } = otherLoadsOf(work.case);
  return bendingMoment === 0 && torque === 0 && shearForce === 0;
}

/**
 * The force on the side of the pipe that bending pulls, or pushes. Each load may be absent, so that a pull takes nothing off
 * the pushed side, nor a push off the pulled one.
 */
export function forceOnSide(work: Workbook, outsideDiameter: Length, edge: 'pulled' | 'pushed'): Force {
  const { bendingMoment } = otherLoadsOf(work.case);
  const { pull, push } = work.along;
  const axialForce = edge === 'pulled' ? pull : push;
  if (bendingMoment === 0) return axialForce;
  const bent = { axialForce, bendingMoment, outsideDiameter, edge };
  return step(work.recorder, 'laminate/force-at-edge', forceAtEdge, bent, `on the ${edge} side of the bent pipe`);
}

/** The pressure that stands for a pressure with shear and torsion in every line round the pipe (ISO 24817, 7.5). */
export function pressureRound(work: Workbook, outsideDiameter: Length, pressure: GaugePressure): GaugePressure {
  const { torque, shearForce } = otherLoadsOf(work.case);
  if (torque === 0 && shearForce === 0) return pressure;
  const loads = { pressure, outsideDiameter, shearForce, torque };
  return step(work.recorder, 'laminate/equivalent-pressure', equivalentPressure, loads);
}

/** Of a pressure that a line round the pipe holds, what is left beside shear and torsion. */
export function pressureLeft(work: Workbook, outsideDiameter: Length, held: GaugePressure): GaugePressure {
  const { torque, shearForce } = otherLoadsOf(work.case);
  if (torque === 0 && shearForce === 0) return held;
  const loads = { equivalentPressure: held, outsideDiameter, shearForce, torque };
  return step(work.recorder, 'laminate/pressure-of-equivalent', pressureOfEquivalent, loads);
}
