import { step } from '../../formula/index.js';
import { pressureIgnoredHoop, relievingForce, thicknessIgnoredHoop } from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { type Workbook, warn } from '../job/workbook.js';
import { axialResistances, axialThicknesses } from './ignored-axial.js';
import { externalForceOf, type ThicknessJob } from './loads.js';
import type { ThicknessRecord } from './method.js';

const HOOP: LaminateCriterion = 'hoop strain, substrate ignored';

/**
 * The laminate carries everything: neither the remaining wall nor the pressure during the work enters (ISO 24817, 7.5.5;
 * PCC-2, Eq. 8 and 9).
 */
export const substrateIgnored: ThicknessRecord = {
  countsOnMetal: false,
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
  const { service, laminate, repair } = work.case;
  if (repair.axialRelief === true) {
    warn(
      work,
      'The hoop thickness counts on the relief by the end load, as the case asks: it holds only while that end load is surely there.',
    );
  }
  const value = step(work.recorder, 'laminate/thickness-ignored-hoop', thicknessIgnoredHoop, {
    pressure: service.designPressure,
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    poissonRatio: laminate.poissonRatio,
    allowableStrain: job.hoop.strain,
    axialForce: relief(work, job, service.designPressure, repair.axialRelief === true),
  });
  return { criterion: HOOP, value };
}

/** The relief by the end load grows with the pressure that is sought, so none is counted: the safe reading. */
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
    axialForce: relief(work, job, 0 as GaugePressure, false),
  });
  return { criterion: HOOP, value };
}

/** A push along the pipe bulges the laminate and always counts; a pull counts only where the case asks for its relief. */
function relief(work: Workbook, job: ThicknessJob, pressure: GaugePressure, counted: boolean): Force {
  return step(work.recorder, 'laminate/relieving-force', relievingForce, {
    pressure,
    outsideDiameter: job.axial.diameter,
    axialForce: externalForceOf(work.case),
    endLoad: counted ? 'counted' : 'left out',
  });
}
