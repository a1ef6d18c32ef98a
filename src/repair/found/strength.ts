import { type DepthPoint, type RemainingStrength, remainingStrength } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { StrengthMethod } from '../case/case.js';
import { type Trial, trial, type Workbook } from '../job/workbook.js';
import { forceOnThinned } from './external-force.js';
import { pressureOfSoundPipe } from './sound-pipe.js';
import type { StrengthFactors } from './strength-factors.js';

/** The metal loss that is judged: as it is today, or as it will be. */
export interface MetalLoss {
  readonly outsideDiameter: Length;
  readonly depth: Length;
  readonly length: Length;
  readonly width: Length;
  readonly profile: readonly DepthPoint[] | undefined;
  /** From its edge to the nearest attachment on the pipe, where somebody looked. */
  readonly toAttachment: Length | undefined;
}

/**
 * Remaining strength of the pipe with a metal loss, by the method that is named or the lowest inside its limits. That no
 * method reaches the loss decides nothing here: the refusals are handed back.
 */
export function strengthWith(
  work: Workbook,
  what: string,
  loss: MetalLoss,
  factors: StrengthFactors,
  method: StrengthMethod | undefined,
): Trial<RemainingStrength> {
  const { pipe, assessment } = work.case;
  return trial(work, what, () =>
    remainingStrength(
      {
        outsideDiameter: loss.outsideDiameter,
        wallThickness: pipe.wallThickness,
        defectDepth: loss.depth,
        defectLength: loss.length,
        defectWidth: loss.width,
        axialForce: forceOnThinned(work, loss.outsideDiameter, 'stated loads on the thinned pipe, as one pull'),
        yieldStrength: pipe.material.yieldStrength,
        tensileStrength: pipe.material.tensileStrength,
        maximumPressure: pressureOfSoundPipe(work, loss.outsideDiameter, factors),
        profile: loss.profile,
        distanceToAttachment: loss.toAttachment,
        method,
        flowStress: assessment?.flowStress,
        safetyFactor: factors.safetyFactor,
        designFactor: factors.designFactor,
      },
      work.recorder,
    ),
  );
}
