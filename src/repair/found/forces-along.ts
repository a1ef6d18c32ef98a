import { heading, step } from '../../formula/index.js';
import { forceOfHeldLine } from '../../pipe/index.js';
import type { Force, Temperature } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { diameterOf } from '../case/diameter.js';
import { assume, type ForcesAlong, type Workbook } from '../job/workbook.js';
import { coldestEver, hottestEver } from '../limits/hottest-and-coldest.js';
import { pipeModulus } from './pipe-modulus.js';

/** The stated force; in a held line with the pull of its coldest steel, and the push of its hottest. */
export function forcesAlongOf(work: Omit<Workbook, 'along'>): ForcesAlong {
  const { axialForce, heldLine } = work.case.loads;
  const stated = axialForce === 'none' ? (0 as Force) : axialForce;
  const [pull, push] = [Math.max(stated, 0) as Force, Math.min(stated, 0) as Force];
  if (heldLine === undefined || heldLine === 'none') return { pull, push };
  heading(work.recorder, 'Held line');
  const { pipe } = work.case;
  const line = {
    outsideDiameter: diameterOf(pipe),
    wallThickness: pipe.wallThickness,
    modulus: pipeModulus(work),
    expansion: assume(work, pipe.material.thermalExpansion, practice.expansionOfSteel),
    tieInTemperature: heldLine.tieInTemperature,
  };
  const forceAt = (axial: Force, temperature: Temperature, purpose: string): Force =>
    step(
      work.recorder,
      'pipe/force-of-held-line',
      forceOfHeldLine,
      { axialForce: axial, ...line, temperature },
      purpose,
    );
  return {
    pull: Math.max(pull, forceAt(pull, coldestEver(work.case), 'pull of the coldest steel')) as Force,
    push: Math.min(push, forceAt(push, hottestEver(work.case), 'push of the hottest steel')) as Force,
  };
}
