import { step } from '../../formula/index.js';
import { pressureIgnoredAxial, pressureIgnoredAxialHasLimit, thicknessIgnoredAxial } from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import type { ThicknessJob } from './loads.js';

const WITH_PRESSURE: LaminateCriterion = 'axial strain, substrate ignored';
const WITHOUT_PRESSURE: LaminateCriterion = 'axial strain, external force without pressure';

/** The axial lines with the pipe ignored: with the pressure, and the external force while the line is without pressure. */
export function axialThicknesses(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion>[] {
  const { designPressure } = work.case.service;
  const value = axialThickness(work, job, job.axial.force, designPressure, 'with the design pressure');
  const candidates = [{ criterion: WITH_PRESSURE, value }];
  const { forceWithoutPressure } = job.axial;
  if (forceWithoutPressure === 0) return candidates;
  const purpose = 'external force while the line is without pressure';
  const alone = axialThickness(work, job, forceWithoutPressure, 0 as GaugePressure, purpose);
  candidates.push({ criterion: WITHOUT_PRESSURE, value: alone });
  return candidates;
}

function axialThickness(
  work: Workbook,
  job: ThicknessJob,
  axialForce: Force,
  pressure: GaugePressure,
  purpose: string,
): Length {
  const input = {
    outsideDiameter: job.axial.diameter,
    hoopModulus: job.hoop.modulus,
    axialModulus: job.axial.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    allowableStrain: job.axial.strain,
    axialForce,
    pressure,
  };
  return step(work.recorder, 'laminate/thickness-ignored-axial', thicknessIgnoredAxial, input, purpose);
}

/** The pressure by the axial line; none where the hoop load relieves the axial strain as fast as the end load adds to it. */
export function axialResistances(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure, LaminateCriterion>[] {
  const input = {
    laminateThickness,
    hoopModulus: job.hoop.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
    outsideDiameter: job.axial.diameter,
    axialModulus: job.axial.modulus,
    allowableStrain: job.axial.strain,
    externalForce: job.axial.forceWithoutPressure,
  };
  if (!pressureIgnoredAxialHasLimit(input)) return [];
  const value = step(work.recorder, 'laminate/pressure-ignored-axial', pressureIgnoredAxial, input);
  return [{ criterion: WITH_PRESSURE, value }];
}
