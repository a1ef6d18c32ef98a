import { step } from '../../formula/index.js';
import { metalLossDepth } from '../../pipe/index.js';
import { exactly, type GaugePressure, type Length, roundedDown } from '../../quantity/index.js';
import type { NeighbouringLoss } from '../case/case.js';
import { neighboursOf } from '../case/neighbours-of.js';
import type { AsFound } from '../design/design.js';
import { need, type Workbook } from '../job/workbook.js';
import type { GrowthRates } from './growth.js';
import { lengthThen, wallThen, widthThen } from './loss-then.js';
import { checkNeighbourFromOutside } from './neighbour-from-outside.js';
import { strengthWith } from './strength.js';
import { factorAtWork, leastWallToday, type PressureLimit } from './wall-today.js';

/** A metal loss with the wall that it leaves. */
interface Loss {
  readonly remainingWall: Length;
  readonly axialLength: Length;
  readonly circumferentialWidth: Length;
}

/** What the steps of one are called. */
const WHAT = 'neighbouring loss';

/** The crew stands beside a neighbour too: the lowest of their safe pressures today, and of what limits the line at the defect. */
export function lowestBeside(work: Workbook, found: AsFound, atDefect: PressureLimit): PressureLimit {
  const neighbours = neighboursOf(work.case.defect);
  if (neighbours.length === 0) return atDefect;
  const factor = factorAtWork(work);
  if (factor === undefined) throw new Error('a limit at the defect stands on no factor: a fault of this library');
  let lowest = atDefect;
  for (const neighbour of neighbours) {
    const highestPressure = safePressureOf(work, found, asItIs(work, neighbour), factor);
    if (highestPressure < lowest.highestPressure)
      lowest = { highestPressure, limitedBy: 'safe pressure of a neighbouring loss' };
  }
  return lowest;
}

/** Test and service put on a neighbour all that acts on the pipe: it bears that until the end of the life, or is repaired first. */
export function checkNeighboursBear(work: Workbook, found: AsFound, growth: GrowthRates): void {
  const { defect, service } = work.case;
  const { designPressure } = service;
  const neighbours = neighboursOf(defect);
  const factor = neighbours.length === 0 ? undefined : factorAtWork(work);
  if (factor === undefined) return;
  for (const neighbour of neighbours) {
    if (defect.growth === 'none' && neighbour.cause !== 'mechanical damage') {
      need(
        work,
        'defect.growth',
        'a neighbouring loss lies outside the repair, where corrosion and erosion go on from either side: whether it bears the design pressure until the end of the life depends on the rates (that nothing grows can be stated as a rate of zero, but has to be stated)',
        'the inspection records: wall measured at two dates',
      );
      return;
    }
    const then = grown(work, asItIs(work, neighbour), growth, found);
    checkNeighbourFromOutside(work, found, then.remainingWall, factor);
    const pressure = safePressureOf(work, found, then, factor);
    if (pressure >= designPressure) continue;
    work.reasons.push({
      text: 'a neighbouring loss that this repair does not cover does not bear the design pressure until the end of its life: repair it first, by a case of its own, and leave it out here, or state one defect that holds both',
      found: roundedDown('safe pressure of the neighbouring loss', 'gauge pressure', pressure),
      limit: exactly('design pressure', 'gauge pressure', designPressure),
    });
  }
}

/** By the lowest of the methods; nothing where none of them reaches it. */
function safePressureOf(work: Workbook, { outsideDiameter }: AsFound, loss: Loss, safetyFactor: number): GaugePressure {
  const { remainingWall } = loss;
  if (remainingWall === 0) return 0 as GaugePressure;
  const walls = { wallThickness: work.case.pipe.wallThickness, remainingWall };
  const judged = {
    outsideDiameter,
    depth: step(work.recorder, 'pipe/metal-loss-depth', metalLossDepth, walls, WHAT),
    length: loss.axialLength,
    width: loss.circumferentialWidth,
    profile: undefined,
    // Only the defect was looked round.
    toAttachment: undefined,
  };
  const factors = { designFactor: undefined, safetyFactor };
  const { result } = strengthWith(work, 'remaining strength of a neighbouring loss', judged, factors, undefined);
  return result?.safePressure ?? (0 as GaugePressure);
}

function asItIs(work: Workbook, neighbour: NeighbouringLoss): Loss {
  return { ...neighbour, remainingWall: leastWallToday(work, neighbour.remainingWall, WHAT) };
}

function grown(work: Workbook, loss: Loss, growth: GrowthRates, { outsideDiameter }: AsFound): Loss {
  return {
    remainingWall: wallThen(work, loss.remainingWall, growth, WHAT),
    axialLength: lengthThen(work, loss.axialLength, growth, WHAT),
    circumferentialWidth: widthThen(work, loss.circumferentialWidth, growth, outsideDiameter, WHAT),
  };
}
