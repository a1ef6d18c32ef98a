import { step } from '../../formula/index.js';
import { equivalentAxialForce } from '../../laminate/index.js';
import type { Force, GaugePressure, Length, Moment } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';

/** The stated force along the pipe, a pull above 0, a push below; none is a force of zero. */
export function externalForceOf({ loads }: RepairCase): Force {
  return loads.axialForce === 'none' ? (0 as Force) : loads.axialForce;
}

/** ISO 24817, 7.5: end load of the closed pipe and the stated force, a push counted as a pull. */
export function forceAlong(work: Workbook, outsideDiameter: Length, pressure: GaugePressure, purpose: string): Force {
  const loads = {
    pressure,
    outsideDiameter,
    axialForce: externalForceOf(work.case),
    shearForce: 0 as Force,
    bendingMoment: 0 as Moment,
    torque: 0 as Moment,
  };
  return step(work.recorder, 'laminate/equivalent-axial-force', equivalentAxialForce, loads, purpose);
}
