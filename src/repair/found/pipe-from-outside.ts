import { step } from '../../formula/index.js';
import { exactly, type GaugePressure, type Length, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { pipeUnderBand } from '../../seal/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { pipeModulus } from './pipe-modulus.js';

/**
 * The steel under pressure from outside: the sound pipe beside the repair, which the laminate does not reach, and the
 * thinned pipe until the laminate has cured.
 */
export function checkPipeFromOutside(
  work: Workbook,
  outsideDiameter: Length,
  wallToday: Length,
  outsidePressure: GaugePressure,
): void {
  const { wallThickness } = work.case.pipe;
  const sound = heldFromOutside(work, outsideDiameter, wallThickness, 1, 'sound pipe');
  if (sound < outsidePressure) {
    work.reasons.push({
      text: 'the sound pipe beside the defect would collapse under the pressure from outside: no repair of the defect mends that',
      found: exactly('pressure from outside', 'gauge pressure', outsidePressure),
      limit: roundedDown('collapse of the sound pipe', 'gauge pressure', sound),
    });
    return;
  }
  if (wallToday === 0) {
    warnUnheld(work, 0 as GaugePressure);
    return;
  }
  const factor = practice.leastSafetyFactor.value;
  const thinned = heldFromOutside(
    work,
    outsideDiameter,
    wallToday,
    factor,
    'thinned pipe before the laminate has cured',
  );
  if (thinned < outsidePressure) warnUnheld(work, thinned);
}

/** What a wall of the pipe bears from outside, taken all round and along. */
export function heldFromOutside(
  work: Workbook,
  outsideDiameter: Length,
  wallThickness: Length,
  factor: number,
  purpose: string,
): GaugePressure {
  const ring = {
    outsideDiameter,
    wallThickness,
    modulus: pipeModulus(work),
    poissonRatio: practice.poissonRatioOfSteel.value,
    yieldStrength: work.case.pipe.material.yieldStrength,
    factor,
  };
  return step(work.recorder, 'seal/pipe-under-band', pipeUnderBand, ring, purpose).pressure;
}

function warnUnheld(work: Workbook, held: GaugePressure): void {
  warnCrew(
    work,
    'permit',
    line(
      'Until the laminate has cured the thinned pipe bears {0} from outside, less than the case states: no vacuum, and no soil or water over it, before that.',
      roundedDown('pressure from outside', 'gauge pressure', held),
    ),
  );
}
