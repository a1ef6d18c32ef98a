import { decide, heading, type Recorder, step } from '../../formula/index.js';
import { circumference, joinedExtent, neighbourSpacingAlong, neighbourSpacingRound } from '../../pipe/index.js';
import type { Length } from '../../quantity/index.js';
import type { Defect, NeighbouringLoss, RepairCase } from '../case/case.js';
import { diameterOf } from '../case/diameter.js';
import { ALONG, farthest, gapPast, ROUND, twoFarthest } from './gaps.js';
import { type Told, toldApart } from './told-apart.js';

/**
 * The case that a repair is sized by where losses lie near each other: those that act as one with the defect by the end of
 * the life of the repair are one defect with it, of their envelope and their least wall (DNV-RP-F101, interaction). Of the
 * others those that act as one with each other stand in it as one.
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
  const told = toldApart(stated, shorterWayRound(stated, neighbours, recorder), spacing, recorder);
  const left = told.apart.length === 0 ? 'none' : told.apart;
  if (told.joined.length === 0) return { ...stated, defect: { ...stated.defect, neighbours: left } };
  if (profile !== undefined)
    decide(recorder, 'profile left out', 'it runs over the defect alone, and not over the neighbours that act with it');
  const width = extentWith(defect.circumferentialWidth, told.reachesRound, recorder, ROUND);
  return {
    ...stated,
    defect: {
      ...defect,
      ...attachmentPast(defect, told, recorder),
      cause: told.joined.every(({ cause }) => cause === defect.cause) ? defect.cause : 'unknown',
      axialLength: extentWith(defect.axialLength, told.reachesAlong, recorder, ALONG),
      circumferentialWidth: Math.min(width, circumference({ outsideDiameter })) as Length,
      remainingWall: leastWall(defect, told.joined),
      neighbours: left,
    },
  };
}

/** A gap may have been measured the long way round the pipe: what acts as one is near the other way. */
function shorterWayRound(
  { pipe, defect }: RepairCase,
  neighbours: readonly NeighbouringLoss[],
  recorder: Recorder | undefined,
): readonly NeighbouringLoss[] {
  const allRound = circumference({ outsideDiameter: diameterOf(pipe) });
  return neighbours.map((neighbour) => {
    const { gapRound, circumferentialWidth: second } = neighbour;
    const taken = { extent: defect.circumferentialWidth, farthest: gapRound, second };
    const behind = (written: Recorder | undefined): Length =>
      gapPast(written, allRound, step(written, 'pipe/joined-extent', joinedExtent, taken, ROUND), ROUND);
    return behind(undefined) < gapRound ? { ...neighbour, gapRound: behind(recorder) } : neighbour;
  });
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
  return step(recorder, 'pipe/joined-extent', joinedExtent, { extent, ...twoFarthest(reaches) }, purpose);
}

/** What stands beside the defect may stand nearer to its neighbours. */
function attachmentPast(
  { nearestAttachment: gap }: Pick<Defect, 'nearestAttachment'>,
  { reachesAlong }: Told,
  recorder: Recorder | undefined,
): Pick<Defect, 'nearestAttachment'> {
  if (gap === undefined) return {};
  return { nearestAttachment: gapPast(recorder, gap, farthest(reachesAlong), 'nearest attachment') };
}
