import { step } from '../../formula/index.js';
import {
  axialForceStress,
  longitudinalStressLimit,
  longitudinalStressSum,
  thinLongitudinalStress,
  trescaStress,
} from '../../pipe/index.js';
import { exactly, type GaugePressure, type Length, line, roundedDown, type Stress } from '../../quantity/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { externalForceOf } from './external-force.js';

/**
 * The sound pipe beside the defect under a stated force: it has to carry that with the pressure, by itself. A pull comes on
 * top of the end load of the pressure; under a push that end load may be absent and relieves nothing.
 */
export function checkSoundPipeAlong(work: Workbook, outsideDiameter: Length, hoopStress: Stress): void {
  const axialForce = externalForceOf(work.case);
  if (axialForce === 0) return;
  const { recorder, case: repairCase } = work;
  const { wallThickness, material } = repairCase.pipe;
  const ofForce = { axialForce, outsideDiameter, wallThickness };
  const along = step(recorder, 'pipe/longitudinal-stress-sum', longitudinalStressSum, {
    pressureStress: step(recorder, 'pipe/thin-longitudinal-stress', thinLongitudinalStress, {
      pressure: axialForce > 0 ? repairCase.service.designPressure : (0 as GaugePressure),
      outsideDiameter,
      wallThickness,
    }),
    axialForceStress: step(recorder, 'pipe/axial-force-stress', axialForceStress, ofForce, 'sound pipe'),
  });
  const principal = { first: hoopStress, second: along, third: 0 as Stress };
  const combined = step(recorder, 'pipe/tresca-stress', trescaStress, principal, 'sound pipe');
  const { yieldStrength, allowableStress } = material;
  if (combined > yieldStrength) {
    work.reasons.push({
      text: 'the sound pipe beside the defect would yield under the stated force with the design pressure: no repair of the defect mends that',
      found: exactly('combined stress of the sound pipe', 'stress', combined),
      limit: roundedDown('yield strength', 'stress', yieldStrength),
    });
  } else if (allowableStress === undefined) {
    warnAboveCode(work, along);
  } else if (combined > allowableStress) {
    warnCrew(
      work,
      'permit',
      'The stress of the sound pipe beside the defect, by the stated force with the design pressure, is above its allowable stress: check the loads of the line.',
    );
  }
}

/** Without an allowable stress the limit of the pipeline code along a line that is free speaks. */
function warnAboveCode(work: Workbook, along: Stress): void {
  const { yieldStrength } = work.case.pipe.material;
  const limit = step(work.recorder, 'pipe/longitudinal-stress-limit', longitudinalStressLimit, {
    yieldStrength,
    restraint: 'unrestrained',
  });
  const alone = { first: along, second: 0 as Stress, third: 0 as Stress };
  if (trescaStress(alone) <= limit) return;
  warnCrew(
    work,
    'permit',
    line(
      'The sound pipe beside the defect bears more along itself, by the stated force, than the {0} that the pipeline code allows: check the loads of the line.',
      roundedDown('limit along the pipe', 'stress', limit),
    ),
  );
}
