import { heading, step } from '../../formula/index.js';
import { metalLossDepth } from '../../pipe/index.js';
import type { Length, Time, Volume } from '../../quantity/index.js';
import { collarVolume, defectVolume, massWithWaste } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type { Filler } from '../case/case.js';
import type { MixDesign } from '../design/design-work.js';
import { leavesHollow } from '../found/hollow.js';
import { assume, type Workbook } from '../job/workbook.js';
import { planBatches } from './batches.js';
import { checkLift } from './lift.js';

/** What is built up under the laminate. */
export interface FillerDemand {
  readonly outsideDiameter: Length;
  /** Length that is built up: the defect, never the bonded overlap. */
  readonly axialLength: Length;
  readonly defectLength: Length;
  readonly workingTime: Time;
}

/** Filler to mix, in batches that can be used up. */
export function planFiller(work: Workbook, filler: Filler, demand: FillerDemand): MixDesign | undefined {
  const { recorder } = work;
  heading(recorder, 'Filler');
  const depth = pocketDepth(work);
  checkLift(work, filler, depth);
  const volume = step(recorder, 'resin/collar-volume', collarVolume, {
    outsideDiameter: demand.outsideDiameter,
    thickness: filler.thickness,
    axialLength: demand.axialLength,
    patchLength: Math.min(demand.defectLength, demand.axialLength) as Length,
    patchWidth: work.case.defect.circumferentialWidth,
    patchThickness: filler.thicknessOverDefect,
    defectVolume: cavityOf(work, demand.defectLength, depth),
  });
  const mass = step(recorder, 'resin/mass-with-waste', massWithWaste, {
    volume,
    density: filler.density,
    waste: assume(work, filler.waste, practice.mixWaste),
  });
  const plan = planBatches(work, filler, mass, demand.workingTime);
  if (plan === undefined) return undefined;
  const { batches, batchMass, base, hardener, limitedBy, kits } = plan;
  return { material: filler.name, volume, mass, batches, batchMass, base, hardener, limitedBy, kits };
}

/** An external pit is filled too, round a hole as well; nothing of it on a pipe that is corroded from inside. */
function pocketDepth({ recorder, case: { defect, pipe } }: Workbook): Length {
  if (!leavesHollow(defect)) return 0 as Length;
  return step(recorder, 'pipe/metal-loss-depth', metalLossDepth, {
    wallThickness: pipe.wallThickness,
    remainingWall: defect.remainingWall,
  });
}

/** The pit is taken with its deepest depth all over, since filler left over costs little. */
function cavityOf({ recorder, case: { defect } }: Workbook, length: Length, depth: Length): Volume {
  if (depth === 0) return 0 as Volume;
  return step(recorder, 'resin/defect-volume', defectVolume, {
    length,
    width: defect.circumferentialWidth,
    depth,
    shape: 'flat-bottomed',
  });
}
