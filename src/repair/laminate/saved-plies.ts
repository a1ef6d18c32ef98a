import { decide, heading, step } from '../../formula/index.js';
import { strainYieldedHoop, thicknessYieldedLive } from '../../laminate/index.js';
import { type Length, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { Candidate, Unavailable } from '../design/design.js';
import { pipeModulus } from '../found/pipe-modulus.js';
import { pressureAtWork } from '../found/pressure-at-work.js';
import { trial, type Workbook } from '../job/workbook.js';
import { pushAlong, thicknessWithRelief } from './ignored.js';
import type { ThicknessJob } from './loads.js';
import { whyNot } from './why-not.js';

/**
 * Hoop lines that the rule sets know and no design here takes: a design that saved plies by them would resist less than its
 * design pressure once the end load is gone, or once the pipe has yielded.
 */
const RELIEVED = 'hoop line of substrate ignored, with relief by the end load';
const CREDITED = 'hoop line of substrate yielded, with credit for pressure during application';

/** Poisson relief of the hoop line by the end load: only while that load is surely there. */
export function withRelief(work: Workbook, job: ThicknessJob): Candidate<Length> {
  heading(work.recorder, `For comparison: ${RELIEVED}`);
  return { criterion: RELIEVED, value: thicknessWithRelief(work, job, pushAlong(work, job, 'counted')) };
}

/** Once the pipe has yielded, equilibrium gives the laminate more strain than this line admits, a third more in the check case. */
export function withCredit(work: Workbook, job: ThicknessJob): Candidate<Length> | Unavailable {
  if (job.found.throughWall)
    return { criterion: CREDITED, needs: { text: 'metal that carries load; the defect goes through the wall' } };
  const livePressure = pressureAtWork(work.case.line);
  if (livePressure === 0) return { criterion: CREDITED, needs: { text: 'pressure in the line during the work' } };
  heading(work.recorder, `For comparison: ${CREDITED}`);
  const { result, refusals } = trial(work, CREDITED, () =>
    step(work.recorder, 'laminate/thickness-yielded-live', thicknessYieldedLive, {
      yieldStrength: work.case.pipe.material.yieldStrength,
      remainingWall: job.found.wallAtEndOfLife,
      outsideDiameter: job.hoop.diameter,
      pressure: job.hoop.pressure,
      hoopModulus: job.hoop.modulus,
      allowableStrain: job.hoop.strain,
      livePressure,
      substrateModulus: pipeModulus(work),
    }),
  );
  if (result === undefined) return { criterion: CREDITED, needs: whyNot(refusals) };
  if (result > 0) showStrain(work, job, result);
  return { criterion: CREDITED, value: result };
}

/** What the credit really costs, on the sheet: the strain of such a laminate at the design pressure, beside the allowable one. */
function showStrain(work: Workbook, job: ThicknessJob, laminateThickness: Length): void {
  const strain = step(work.recorder, 'laminate/strain-yielded-hoop', strainYieldedHoop, {
    pressure: job.hoop.pressure,
    outsideDiameter: job.hoop.diameter,
    yieldStrength: work.case.pipe.material.yieldStrength,
    remainingWall: job.found.wallAtEndOfLife,
    substrateModulus: pipeModulus(work),
    hoopModulus: job.hoop.modulus,
    laminateThickness,
  });
  decide(
    work.recorder,
    'credit for pressure during application not taken',
    line(
      'at the design pressure such a laminate strains {0}, where {1} is allowed',
      roundedUp('hoop strain', 'strain', strain),
      roundedDown('allowable hoop strain', 'strain', job.hoop.strain),
    ),
  );
}
