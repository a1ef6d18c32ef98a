import { decide, heading, type Recorder, step } from '../../formula/index.js';
import {
  circumference,
  gapPastNeighbours,
  joinedExtent,
  neighbourSpacingAlong,
  neighbourSpacingRound,
} from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { Defect, NeighbouringLoss, RepairCase } from '../case/case.js';
import { diameterOf } from './diameter.js';
import { farthest, type Told, toldApart } from './told-apart.js';

/**
 * The case that a repair is sized by where losses lie near each other: those that act as one with the defect by the end of
 * the life of the repair are one defect with it, of their envelope and their least wall (DNV-RP-F101, interaction).
 */
export function withNeighboursJoined(stated: RepairCase, recorder: Recorder | undefined): RepairCase {
  const { neighbours, profile, ...defect } = stated.defect;
  if (neighbours === undefined || neighbours === 'none') return stated;
  heading(recorder, 'Neighbouring losses');
  const outsideDiameter = diameterOf(stated.pipe);
  const surface = { outsideDiameter, wallThickness: stated.pipe.wallThickness };
  const spacing = {
    along: step(recorder, 'pipe/neighbour-spacing-along', neighbourSpacingAlong, surface),
    round: step(recorder, 'pipe/neighbour-spacing-round', neighbourSpacingRound, surface),
  };
  const told = toldApart(stated, neighbours, spacing, recorder);
  if (told.joined.length === 0) return stated;
  if (profile !== undefined)
    decide(recorder, 'profile left out', 'it runs over the defect alone, and not over the neighbours that act with it');
  const width = extentWith(defect.circumferentialWidth, told.reachesRound, recorder, 'round the pipe');
  return {
    ...stated,
    defect: {
      ...defect,
      ...attachmentPast(defect, told, recorder),
      cause: told.joined.every(({ cause }) => cause === defect.cause) ? defect.cause : 'unknown',
      axialLength: extentWith(defect.axialLength, told.reachesAlong, recorder, 'along the pipe'),
      circumferentialWidth: Math.min(width, circumference({ outsideDiameter })) as Length,
      remainingWall: leastWall(defect, told.joined),
      neighbours: told.apart.length === 0 ? 'none' : told.apart,
    },
  };
}

function leastWall(defect: Pick<Defect, 'remainingWall'>, joined: readonly NeighbouringLoss[]): Length {
  return Math.min(defect.remainingWall, ...joined.map(({ remainingWall }) => remainingWall)) as Length;
}

/** The two that reach farthest may lie on opposite sides. */
function extentWith(
  extent: Length,
  reaches: readonly Length[],
  recorder: Recorder | undefined,
  purpose: string,
): Length {
  const first = farthest(reaches);
  const others = reaches.toSpliced(reaches.indexOf(first), 1);
  const joined = { extent, farthest: first, second: farthest(others) };
  return step(recorder, 'pipe/joined-extent', joinedExtent, joined, purpose);
}

/** What stands beside the defect may stand nearer to its neighbours. */
function attachmentPast(
  { nearestAttachment: gap }: Pick<Defect, 'nearestAttachment'>,
  { reachesAlong }: Told,
  recorder: Recorder | undefined,
): Pick<Defect, 'nearestAttachment'> {
  if (gap === undefined) return {};
  const past = { gap, reach: farthest(reachesAlong) };
  return {
    nearestAttachment: step(recorder, 'pipe/gap-past-neighbours', gapPastNeighbours, past, 'nearest attachment'),
  };
}
