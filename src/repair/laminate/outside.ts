import { heading, step } from '../../formula/index.js';
import {
  outsidePressureHeld,
  pressureRingBending,
  ringMomentOfSoil,
  thicknessOutsidePressure,
  thicknessRingBending,
} from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import { exactly, type Force, type GaugePressure, type Length, roundedDown } from '../../quantity/index.js';
import type { LaminateCriterion } from '../design/criteria.js';
import type { Candidate } from '../design/design.js';
import { pressureLeft } from '../found/external-force.js';
import { type Workbook, warn, warnCrew } from '../job/workbook.js';
import { pushAlong } from './ignored.js';
import type { ThicknessJob } from './loads.js';

const BUCKLING: LaminateCriterion = 'ring buckling under pressure from outside';
const BENDING: LaminateCriterion = 'hoop strain with ring bending under soil';

/**
 * What keeps the laminate round while the line is empty, and its strain within bounds while soil bends it: by every method
 * the pipe below is not counted (ISO 24817, 7.5; PCC-2, 401-3.4, external loads).
 */
export function outsideThicknesses(work: Workbook, job: ThicknessJob): Candidate<Length, LaminateCriterion>[] {
  const { outsidePressure, soilPressure = 0 as GaugePressure } = job.found;
  if (outsidePressure === undefined) return [];
  heading(work.recorder, 'Thickness: pressure from outside');
  warnOfYears(work, soilPressure);
  const ring = ringOf(work, job);
  const alone = { ...ring, outsidePressure };
  const round = step(work.recorder, 'laminate/thickness-outside-pressure', thicknessOutsidePressure, alone);
  const candidates = [{ criterion: BUCKLING, value: round }];
  if (soilPressure === 0) return candidates;
  const bent = step(work.recorder, 'laminate/thickness-ring-bending', thicknessRingBending, {
    pressure: job.hoop.pressure,
    ringMoment: ringMoment(work, job, soilPressure),
    outsideDiameter: ring.outsideDiameter,
    hoopModulus: ring.hoopModulus,
    poissonRatio: ring.poissonRatio,
    allowableStrain: job.hoop.strain,
    axialForce: pushAlong(work, job, 'left out'),
  });
  candidates.push({ criterion: BENDING, value: bent });
  return candidates;
}

/** The pressure inside that is left beside ring bending; too little against pressure from outside speaks against the laminate. */
export function outsideResistances(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure, LaminateCriterion>[] {
  const { outsidePressure, soilPressure = 0 as GaugePressure } = job.found;
  if (outsidePressure === undefined) return [];
  const ring = ringOf(work, job);
  const held = step(work.recorder, 'laminate/outside-pressure-held', outsidePressureHeld, {
    ...ring,
    laminateThickness,
  });
  if (!reaches(held, outsidePressure)) {
    work.reasons.push({
      text: 'the laid thickness does not keep the pipe round under the pressure from outside',
      found: exactly('pressure from outside', 'gauge pressure', outsidePressure),
      limit: roundedDown('pressure from outside that the laminate bears', 'gauge pressure', held),
    });
  }
  if (soilPressure === 0) return [];
  const beside = step(work.recorder, 'laminate/pressure-ring-bending', pressureRingBending, {
    laminateThickness,
    ringMoment: ringMoment(work, job, soilPressure),
    outsideDiameter: ring.outsideDiameter,
    hoopModulus: ring.hoopModulus,
    poissonRatio: ring.poissonRatio,
    allowableStrain: job.hoop.strain,
    axialForce: pushAlong(work, job, 'left out'),
  });
  return [{ criterion: BENDING, value: pressureLeft(work, job.axial.diameter, beside) }];
}

/** What no line of a short test tells: soil and standing water press for years, and they press before the resin is hard. */
function warnOfYears(work: Workbook, soilPressure: GaugePressure): void {
  if (soilPressure === 0) return;
  warn(
    work,
    'The soil presses for years, and the modulus of the laminate is that of a short test: what it creeps is covered by the factor on the buckling pressure alone. Ask the maker for the modulus at the end of the life, and state that.',
  );
  warnCrew(
    work,
    'return',
    'Bury the line only after the hardness has passed, in layers that are packed at both sides alike: the soil bends a laminate that is soft.',
  );
}

function ringOf(work: Workbook, job: ThicknessJob) {
  return {
    outsideDiameter: job.hoop.diameter,
    hoopModulus: job.hoop.modulus,
    axialModulus: job.axial.modulus,
    poissonRatio: work.case.laminate.poissonRatio,
  };
}

function ringMoment(work: Workbook, job: ThicknessJob, soilPressure: GaugePressure): Force {
  const onTop = { soilPressure, outsideDiameter: job.hoop.diameter };
  return step(work.recorder, 'laminate/ring-moment-of-soil', ringMomentOfSoil, onTop);
}
