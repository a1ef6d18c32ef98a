import { step } from '../../formula/index.js';
import { ringMomentOfSoil } from '../../laminate/index.js';
import { stressUnderSoil } from '../../pipe/index.js';
import { exactly, type GaugePressure, type Length, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { AsFound } from '../design/design.js';
import type { Workbook } from '../job/workbook.js';
import { heldFromOutside } from './pipe-from-outside.js';

const WHAT = 'neighbouring loss';

/**
 * No laminate keeps a neighbour round: its own wall has to, with the factor that a laminate is asked for, the least wall
 * taken all round and along, since how much a small loss weakens the ring is not known here.
 */
export function checkNeighbourFromOutside(work: Workbook, found: AsFound, wall: Length, factor: number): void {
  const { outsidePressure, soilPressure = 0 as GaugePressure } = found;
  if (outsidePressure === undefined) return;
  const held = wall === 0 ? (0 as GaugePressure) : heldByNeighbour(work, found, wall);
  if (held < outsidePressure)
    work.reasons.push({
      text: 'a neighbouring loss that this repair does not cover does not bear what presses from outside until the end of its life, its least wall taken all round: repair it first, by a case of its own, and leave it out here, or state one defect that holds both',
      found: roundedDown('pressure from outside that the neighbouring loss bears', 'gauge pressure', held),
      limit: exactly('pressure from outside', 'gauge pressure', outsidePressure),
    });
  if (soilPressure > 0 && wall > 0) checkBentBySoil(work, found, wall, soilPressure, factor);
}

function heldByNeighbour(work: Workbook, { outsideDiameter }: AsFound, wall: Length): GaugePressure {
  const { value: factor } = practice.neighbourCollapseFactor;
  return heldFromOutside(work, outsideDiameter, wall, factor, WHAT);
}

/** Soil beside the pipe may hold it round: what that is worth is not known here, so that nothing is refused for good. */
function checkBentBySoil(
  work: Workbook,
  { outsideDiameter }: AsFound,
  wallThickness: Length,
  onTop: GaugePressure,
  factor: number,
): void {
  const ringMoment = step(
    work.recorder,
    'laminate/ring-moment-of-soil',
    ringMomentOfSoil,
    { soilPressure: onTop, outsideDiameter },
    WHAT,
  );
  const { designPressure: pressure } = work.case.service;
  const bent = { pressure, outsideDiameter, wallThickness, ringMoment, factor };
  const stress = step(work.recorder, 'pipe/stress-under-soil', stressUnderSoil, bent, WHAT);
  const { yieldStrength } = work.case.pipe.material;
  if (stress <= yieldStrength) return;
  work.notCovered.push({
    text: 'a neighbouring loss that this repair does not cover would yield at its least wall where soil and traffic bend the pipe, with nothing beside the pipe to hold it round: have it assessed with the soil that is there, or repair it first, by a case of its own, and leave it out here',
    found: roundedUp('hoop stress at the neighbouring loss, with its factor', 'stress', stress),
    limit: exactly('yield strength', 'stress', yieldStrength),
  });
}
