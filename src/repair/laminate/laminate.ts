import { heading, step } from '../../formula/index.js';
import { plyCount, thinLaminateLimit } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { ThicknessMethod } from '../case/case.js';
import type { AsFound, Candidate, LaminateDesign } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { use, type Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { checkHoleSize, type LeakOutcome, resistanceOverHole, thicknessForLeak } from './leak.js';
import { prepareThickness, type ThicknessJob } from './loads.js';
import { alternativesTo, chooseMethod, needFor, thicknessBy } from './methods.js';
import { resistanceByMethod } from './resistance.js';

/** How thick the laminate is, by every criterion that applies, and how many plies that takes. */
export function designLaminate(
  work: Workbook,
  { found, strains }: { found: AsFound; strains: Strains },
): LaminateDesign | Open {
  const method = chooseMethod(work, found.throughWall);
  const job = prepareThickness(work, found, strains);
  const outcome = method === undefined ? undefined : thicknessBy(work, method, job);
  if (outcome !== undefined && 'needs' in outcome) needFor(work, outcome);
  // The leak is looked at even if the method failed, so that the reader learns of all that is missing at once.
  const leak = found.throughWall ? thicknessForLeak(work, found, strains) : undefined;
  if (method === undefined || outcome === undefined || 'needs' in outcome) return open;
  if (found.throughWall && leak === undefined) return open;

  const candidates: Candidate<Length>[] = [...outcome];
  if (leak !== undefined) candidates.push({ criterion: 'leak through the hole', value: leak.thickness });
  const governing = candidates.reduce((most, candidate) => (candidate.value > most.value ? candidate : most));
  const alternatives = alternativesTo(work, method, job);
  heading(work.recorder, 'Plies');
  const leastPlies = Math.max(
    use(work, 'least number of plies', work.rules.leastPlies),
    work.case.laminate.qualifiedPlies ?? 0,
  );
  const plies = step(work.recorder, 'laminate/ply-count', plyCount, {
    requiredThickness: governing.value,
    plyThickness: work.case.laminate.plyThickness,
    leastPlies,
  });
  checkThin(work, job, plies.thickness);
  checkHoleSize(work, found, plies.thickness);
  return {
    method,
    hoopStrain: strains.hoop,
    axialStrain: strains.axial,
    wrappedDiameter: job.wrappedDiameter,
    thickness: { candidates, governing: governing.criterion, value: governing.value },
    alternatives,
    plies: plies.plies,
    leastPlies,
    laidThickness: plies.thickness,
    resistance: resistanceOf(work, method, job, leak, plies.thickness),
  };
}

function checkThin(work: Workbook, job: ThicknessJob, laid: Length): void {
  const { rules, recorder } = work;
  const limit = step(recorder, 'laminate/thin-laminate-limit', thinLaminateLimit, {
    outsideDiameter: job.found.outsideDiameter,
    ratio: use(work, 'thin-laminate limit', rules.thinLaminateRatio),
  });
  if (laid < limit) return;
  work.reasons.push({
    text: 'the laminate would be too thick for the equations of a thin one',
    found: { name: 'laid thickness', kind: 'length', value: laid },
    limit: { name: 'thin-laminate limit', kind: 'length', value: limit },
    clause: rules.thinLaminateRatio.clause,
  });
}

/** The pressure that any laid thickness resists, by the method of the design; nothing where the equations do not reach it. */
export function rateLaid(
  work: Workbook,
  found: AsFound,
  strains: Strains,
  method: ThicknessMethod,
  laid: Length,
): LaminateDesign['resistance'] | undefined {
  const leak = found.throughWall ? thicknessForLeak(work, found, strains) : undefined;
  if (found.throughWall && leak === undefined) return undefined;
  checkHoleSize(work, found, laid);
  if (work.notCovered.length > 0) return undefined;
  return resistanceOf(work, method, prepareThickness(work, found, strains), leak, laid);
}

/** The lowest pressure among those that the laid thickness resists by the lines of the method, and over the hole. */
function resistanceOf(
  work: Workbook,
  method: ThicknessMethod,
  job: ThicknessJob,
  leak: LeakOutcome | undefined,
  laid: Length,
): LaminateDesign['resistance'] {
  const candidates = resistanceByMethod(work, method, job, laid);
  if (leak !== undefined) {
    candidates.push({ criterion: 'leak through the hole', value: resistanceOverHole(work, leak.resistance, laid) });
  }
  const lowest = candidates.reduce((least, candidate) => (candidate.value < least.value ? candidate : least));
  return { candidates, governing: lowest.criterion, value: lowest.value };
}
