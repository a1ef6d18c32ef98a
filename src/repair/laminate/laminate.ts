import { heading, step } from '../../formula/index.js';
import { type PlyCount, plyCount } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { AsFound, LaminateDesign } from '../design/design.js';
import type { SealDesign } from '../design/design-work.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { alternativesTo } from './alternatives.js';
import { largest } from './candidates.js';
import { factorOfFitting, onFitting } from './fitting.js';
import { footprintUnder } from './footprint.js';
import { joinBands } from './joints.js';
import { thicknessForLeak } from './leak.js';
import { leakCriterion } from './leak-resistance.js';
import { prepareThickness, type ThicknessJob } from './loads.js';
import { chooseMethod, thicknessByChosen } from './methods.js';
import type { PlyModuli } from './ply-moduli.js';
import { resistanceOf } from './resistance.js';
import { secondOpinion } from './second-opinion.js';
import { checkHoleSize, checkThin, thicknessForSize } from './validity.js';

/**
 * How thick the laminate is, by every criterion that applies, how many plies that takes, and what they resist (ISO 24817,
 * 7.5.4 to 7.5.7; PCC-2, 401-3.4).
 */
export function designLaminate(
  work: Workbook,
  { found, seal, strains }: { found: AsFound; seal: SealDesign | 'none'; strains: Strains },
): LaminateDesign | Open {
  const method = chooseMethod(work, found.throughWall);
  const job = prepareThickness(work, found, strains);
  const candidates = method === undefined || job === undefined ? undefined : thicknessByChosen(work, method, job);
  // The leak is looked at even if the method failed, so that the reader learns of all that is missing at once.
  const footprint = footprintUnder(work, found, seal);
  const leak = found.throughWall
    ? thicknessForLeak(work, found.outsideDiameter, footprint, found.designSlot, strains, pliesOver(work, job))
    : undefined;
  if (candidates === undefined || method === undefined || job === undefined) return open;
  if (found.throughWall && leak === undefined) return open;

  if (leak !== undefined) {
    candidates.push({ criterion: leakCriterion(leak.resistance), value: leak.thickness });
    const forSize = thicknessForSize(work, found);
    if (forSize !== undefined) candidates.push({ criterion: 'size of the hole', value: forSize });
  }
  const factor = factorOfFitting(work, found.outsideDiameter);
  if (factor === undefined) return open;
  const onPipe = onFitting(work, factor, candidates);
  const governing = largest(onPipe);
  const alternatives = alternativesTo(work, method, job);
  const leastPlies = leastPliesOf(work);
  const byCriteria = pliesFor(work, governing.value, leastPlies);
  const joints = joinBands(work, found, byCriteria, footprint, onPipe);
  const { plies, thickness: laidThickness } = joints === undefined ? byCriteria : joints.laid;
  checkThin(work, found.outsideDiameter, laidThickness);
  checkHoleSize(work, found, laidThickness);
  const design: { -readonly [K in keyof LaminateDesign]: LaminateDesign[K] } = {
    method,
    hoopStrain: strains.hoop,
    axialStrain: strains.axial,
    wrappedDiameter: job.hoop.diameter,
    thickness: { candidates: onPipe, governing: governing.criterion, value: governing.value },
    alternatives,
    plies,
    leastPlies,
    laidThickness,
    resistance: resistanceOf(
      work,
      method,
      job,
      leak?.resistance,
      laidThickness,
      joints?.design,
      work.case.laminate.plyThickness,
    ),
  };
  if (factor > 1) design.fittingFactor = factor;
  if (footprint !== undefined) design.footprint = footprint;
  if (joints !== undefined) design.joints = joints.design;
  if (method === 'substrate sharing load') {
    const opinion = secondOpinion(work, job, laidThickness);
    if (opinion !== undefined) design.thickOverThin = opinion;
  }
  return design;
}

/** Where no tape can be laid, the plies as tested only tell what else is missing. */
function pliesOver({ case: { laminate } }: Workbook, job: ThicknessJob | undefined): PlyModuli {
  return job?.asTested ?? { hoop: laminate.hoopModulus, axial: laminate.axialModulus };
}

/** The fewest plies that the rule set and the qualification of the system allow (minimum thickness). */
function leastPliesOf(work: Workbook): number {
  const { rules, case: repairCase } = work;
  return Math.max(use(work, 'least number of plies', rules.leastPlies), repairCase.laminate.qualifiedPlies ?? 0);
}

function pliesFor(work: Workbook, requiredThickness: Length, leastPlies: number): PlyCount {
  heading(work.recorder, 'Plies');
  const { plyThickness } = work.case.laminate;
  return step(work.recorder, 'laminate/ply-count', plyCount, { requiredThickness, plyThickness, leastPlies });
}
