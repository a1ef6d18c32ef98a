import { step } from '../../formula/index.js';
import { longitudinalStressLimit, trescaStress } from '../../pipe/index.js';
import { exactly, type Length, line, roundedDown, type Stress } from '../../quantity/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { refuseToShare } from './counts-on-metal.js';
import { loadedSides, type Side } from './loaded-sides.js';

/**
 * The sound pipe beside the defect under the stated loads: it has to carry them with the pressure, by itself. A pull, and the
 * pulled side of bending, come on top of the end load of the pressure; under a push and on the pushed side that end load
 * may be absent and relieves nothing.
 */
export function checkSoundPipeAlong(work: Workbook, outsideDiameter: Length, hoopStress: Stress): void {
  const sides = loadedSides(work, outsideDiameter, hoopStress);
  let worst: Side | undefined;
  for (const side of sides) if (worst === undefined || side.combined > worst.combined) worst = side;
  if (worst === undefined) return;
  const { combined } = worst;
  const { material } = work.case.pipe;
  const { yieldStrength, allowableStress } = material;
  if (combined > yieldStrength) {
    work.reasons.push({
      text: 'the sound pipe beside the defect would yield under the stated loads with the design pressure: no repair of the defect mends that',
      found: exactly('combined stress of the sound pipe', 'stress', combined),
      limit: roundedDown('yield strength', 'stress', yieldStrength),
    });
  } else if (allowableStress === undefined) {
    warnAboveCode(work, sides);
  } else if (combined > allowableStress) {
    // Round the pipe alone it was said before.
    if (hoopStress <= allowableStress)
      refuseToShare(
        work,
        'its allowable stress',
        exactly('stress of the sound pipe', 'stress', combined),
        roundedDown('allowable stress', 'stress', allowableStress),
      );
    warnCrew(
      work,
      'permit',
      'The stress of the sound pipe beside the defect, by the stated loads with the design pressure, is above its allowable stress: check the loads of the line.',
    );
  }
}

/** Without an allowable stress the limit of the pipeline code along a line that is free speaks. */
function warnAboveCode(work: Workbook, sides: readonly Side[]): void {
  const { yieldStrength } = work.case.pipe.material;
  const limit = step(work.recorder, 'pipe/longitudinal-stress-limit', longitudinalStressLimit, {
    yieldStrength,
    restraint: 'unrestrained',
  });
  const alone = sides.map(({ along }) => trescaStress({ first: along, second: 0 as Stress, third: 0 as Stress }));
  const stress = Math.max(...alone) as Stress;
  if (stress <= limit) return;
  refuseToShare(
    work,
    'what its code allows',
    exactly('stress of the sound pipe along itself', 'stress', stress),
    roundedDown('limit along the pipe', 'stress', limit),
  );
  warnCrew(
    work,
    'permit',
    line(
      'The sound pipe beside the defect bears more along itself, by the stated loads, than the {0} that the pipeline code allows: check the loads of the line.',
      roundedDown('limit along the pipe', 'stress', limit),
    ),
  );
}
