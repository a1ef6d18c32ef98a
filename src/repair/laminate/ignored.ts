import { step } from '../../formula/index.js';
import { type EndLoadRelief, pressureIgnoredHoop, relievingForce, thicknessIgnoredHoop } from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { forceOnSide, pressureLeft } from '../found/external-force.js';
import type { Workbook } from '../job/workbook.js';
import { axialResistances, axialThicknesses } from './ignored-axial.js';
import type { ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';

const HOOP: LaminateCriterion = 'hoop strain, substrate ignored';

/**
 * The laminate carries everything: neither the remaining wall nor the pressure during the work enters (ISO 24817, 7.5.5;
 * PCC-2, Eq. 8 and 9).
 */
export const substrateIgnored: ThicknessRecord = {
  needs: () => undefined,
  thickness: (work, job) => {
    const candidates = [hoopThickness(work, job)];
    for (const axial of axialThicknesses(work, job)) candidates.push(axial);
    return candidates;
  },
  resistance: (work, job, laminateThickness) => {
    const candidates = [hoopResistance(work, job, laminateThickness)];
    for (const axial of axialResistances(work, job, laminateThickness)) candidates.push(axial);
    return candidates;
  },
};

function hoopThickness(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion> {
  return { criterion: HOOP, value: thicknessWithRelief(work, job, pushAlong(work, job, 'left out')) };
}

/** The hoop line with a force along the pipe: a pull relieves it, a push adds to it. */
export function thicknessWithRelief(work: Workbook, job: ThicknessJob, axialForce: Force): Length {
  return step(work.recorder, 'laminate/thickness-ignored-hoop', thicknessIgnoredHoop, {
    pressure: job.hoop.pressure,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    allowableStrain: job.hoop.strain,
    axialForce,
  });
}

function hoopResistance(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure, LaminateCriterion> {
  const value = step(work.recorder, 'laminate/pressure-ignored-hoop', pressureIgnoredHoop, {
    laminateThickness,
    hoopModulus: job.hoop.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    outsideDiameter: job.hoop.diameter,
    allowableStrain: job.hoop.strain,
    axialForce: pushAlong(work, job, 'left out'),
  });
  return { criterion: HOOP, value: pressureLeft(work, job.axial.diameter, value) };
}

/** A push along the pipe, or on the pushed side of a bent one, bulges the laminate and always counts; a pull never saves a ply of a design. */
export function pushAlong(work: Workbook, job: ThicknessJob, endLoad: EndLoadRelief): Force {
  return step(work.recorder, 'laminate/relieving-force', relievingForce, {
    pressure: work.case.service.designPressure,
    outsideDiameter: job.axial.diameter,
    axialForce: forceOnSide(work, job.axial.diameter, 'pushed'),
    endLoad,
  });
}
