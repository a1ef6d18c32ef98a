import { step } from '../../formula/index.js';
import { designFactorOfSafetyFactor, hoopStress, liquidDesignPressure, mawp } from '../../pipe/index.js';
import { exactly, type GaugePressure, type Length, roundedDown, type Stress } from '../../quantity/index.js';
import { type Workbook, warnCrew } from '../job/workbook.js';
import { namesMethodOnMetal, refuseToShare } from './counts-on-metal.js';
import { neededFactors, type StrengthFactors, statedFactors } from './strength-factors.js';

/** Hoop stress beside the defect, where the overlaps lie: the sound pipe has to carry the pressure by itself. */
export function stressOfSoundPipe(work: Workbook, outsideDiameter: Length): Stress {
  const { pipe, service } = work.case;
  const { yieldStrength, allowableStress } = pipe.material;
  const ring = { pressure: service.designPressure, outsideDiameter, wallThickness: pipe.wallThickness };
  const stress = step(work.recorder, 'pipe/hoop-stress', hoopStress, ring, 'sound pipe');
  if (stress > yieldStrength) {
    work.reasons.push({
      text: 'the sound pipe beside the defect would yield at the design pressure: no repair of the defect mends that',
      found: exactly('hoop stress of the sound pipe', 'stress', stress),
      limit: roundedDown('yield strength', 'stress', yieldStrength),
    });
  } else if (allowableStress === undefined) {
    judgeByFactor(work, outsideDiameter);
  } else if (stress > allowableStress) {
    refuseToShare(
      work,
      'its allowable stress',
      exactly('stress of the sound pipe', 'stress', stress),
      roundedDown('allowable stress', 'stress', allowableStress),
    );
    warnCrew(
      work,
      'permit',
      'The hoop stress of the sound pipe beside the defect is above its allowable stress at the design pressure: check the pressure of the line.',
    );
  }
  return stress;
}

/** Without an allowable stress the factor on the yield strength speaks for the code of the line. */
function judgeByFactor(work: Workbook, outsideDiameter: Length): void {
  const factors = namesMethodOnMetal(work)
    ? neededFactors(
        work,
        'the method counts on the thinned pipe, up to its yield strength where it may yield, and without an allowable stress only the design factor of the line or a safety factor tells whether the sound pipe has anything to give',
      )
    : statedFactors(work);
  if (factors === undefined) return;
  const { designPressure } = work.case.service;
  const limit = pressureOfSoundPipe(work, outsideDiameter, factors);
  if (designPressure <= limit) return;
  refuseToShare(
    work,
    'what its code allows',
    exactly('design pressure', 'gauge pressure', designPressure),
    roundedDown('pressure of the sound pipe by its code', 'gauge pressure', limit),
  );
  warnCrew(
    work,
    'permit',
    'The hoop stress of the sound pipe beside the defect is above the design stress of its code at the design pressure: check the pressure of the line.',
  );
}

/** What the sound pipe carries: by its allowable stress where the case gives one, else by the factor on its strength. */
export function pressureOfSoundPipe(
  work: Workbook,
  outsideDiameter: Length,
  { designFactor, safetyFactor }: StrengthFactors,
): GaugePressure {
  const { recorder, case: repairCase } = work;
  const { wallThickness, material } = repairCase.pipe;
  const { allowableStress, yieldStrength } = material;
  if (allowableStress !== undefined) {
    const ring = { outsideDiameter, wallThickness, jointFactor: 1, allowableStress };
    return step(recorder, 'pipe/mawp', mawp, ring, 'sound pipe').mawp;
  }
  const factor =
    designFactor ??
    step(recorder, 'pipe/design-factor-of-safety-factor', designFactorOfSafetyFactor, {
      safetyFactor: safetyFactor as number,
    });
  const ring = { outsideDiameter, wallThickness, jointFactor: 1, yieldStrength, designFactor: factor };
  return step(recorder, 'pipe/liquid-design-pressure', liquidDesignPressure, ring, 'sound pipe');
}
