import { decide, type Recorder, step } from '../../formula/index.js';
import { circumference, colonyExtent, joinedExtent } from '../../pipe/index.js';
import { exactly, type Length, line } from '../../quantity/index.js';
import type { NeighbouringLoss, RepairCase } from '../case/case.js';
import { diameterOf } from '../case/diameter.js';
import {
  ALONG,
  type BothWays,
  farthest,
  gapPast,
  gapsThen,
  gapThen,
  isWithin,
  ROUND,
  reachOf,
  twoFarthest,
} from './gaps.js';

/** Neighbours that act as one with each other, whether the defect is one of them or not; one alone is a colony too. */
export interface Colony {
  readonly members: readonly NeighbouringLoss[];
  /** The one loss that they count as: their envelope, with the least wall of all. */
  readonly asOne: NeighbouringLoss;
  /** How far each member reaches beyond the edge of the defect. */
  readonly reachesAlong: readonly Length[];
  readonly reachesRound: readonly Length[];
}

/** The colonies that some neighbours make: a chain acts as one, however long it is. */
export function coloniesOf(
  repairCase: RepairCase,
  neighbours: readonly NeighbouringLoss[],
  spacing: BothWays,
  recorder: Recorder | undefined,
): readonly Colony[] {
  let colonies: readonly Colony[] = [];
  for (const neighbour of neighbours) {
    let colony = alone(neighbour, recorder);
    for (;;) {
      const near = colonies.find((each) => isWithin(gapsBetween(repairCase, each, colony, undefined), spacing));
      if (near === undefined) break;
      // The step of every pair that does not act as one would fill the sheet: only the gaps that decide are written.
      gapsBetween(repairCase, near, colony, recorder);
      colonies = colonies.filter((each) => each !== near);
      colony = together(repairCase, near, colony, spacing, recorder);
    }
    colonies = [...colonies, colony];
  }
  return colonies;
}

function alone(loss: NeighbouringLoss, recorder: Recorder | undefined): Colony {
  return {
    members: [loss],
    asOne: loss,
    reachesAlong: [reachOf(recorder, loss.gapAlong, loss.axialLength, ALONG)],
    reachesRound: [reachOf(recorder, loss.gapRound, loss.circumferentialWidth, ROUND)],
  };
}

/**
 * The gaps between two colonies by the end of the life. On which side of the defect each lies is not asked: they are nearest
 * to each other on the same one.
 */
function gapsBetween(repairCase: RepairCase, one: Colony, other: Colony, recorder: Recorder | undefined): BothWays {
  const between = (gaps: readonly [Length, Length], reaches: readonly [Length, Length], way: string): Length =>
    Math.max(gapPast(recorder, gaps[0], reaches[1], way), gapPast(recorder, gaps[1], reaches[0], way)) as Length;
  const today = {
    along: between(
      [one.asOne.gapAlong, other.asOne.gapAlong],
      [farthest(one.reachesAlong), farthest(other.reachesAlong)],
      ALONG,
    ),
    round: between(
      [one.asOne.gapRound, other.asOne.gapRound],
      [farthest(one.reachesRound), farthest(other.reachesRound)],
      ROUND,
    ),
  };
  return gapsThen(repairCase, today, recorder);
}

function together(
  repairCase: RepairCase,
  one: Colony,
  other: Colony,
  spacing: BothWays,
  recorder: Recorder | undefined,
): Colony {
  const members = [...one.members, ...other.members];
  const reachesAlong = [...one.reachesAlong, ...other.reachesAlong];
  const reachesRound = [...one.reachesRound, ...other.reachesRound];
  const gapsAlong = members.map(({ gapAlong }) => gapAlong);
  const gapsRound = members.map(({ gapRound }) => gapRound);
  const { axialLength: length, circumferentialWidth: width } = repairCase.defect;
  const along = envelope(repairCase, length, gapsAlong, reachesAlong, spacing.along, recorder, ALONG);
  const round = envelope(repairCase, width, gapsRound, reachesRound, spacing.round, recorder, ROUND);
  const asOne: NeighbouringLoss = {
    cause: one.asOne.cause === other.asOne.cause ? one.asOne.cause : 'unknown',
    gapAlong: least(gapsAlong),
    gapRound: least(gapsRound),
    axialLength: along,
    circumferentialWidth: widthRound(repairCase, round, reachesRound, spacing.round, recorder),
    remainingWall: least(members.map(({ remainingWall }) => remainingWall)),
  };
  decide(
    recorder,
    line(
      'neighbours {0} and {1} along the pipe beside the defect act as one with each other',
      exactly('gap along the pipe', 'length', one.asOne.gapAlong),
      exactly('gap along the pipe', 'length', other.asOne.gapAlong),
    ),
    'by the end of the life of the repair they may be too near, both ways, to act alone',
  );
  return { members, asOne, reachesAlong, reachesRound };
}

/**
 * One way. All lie on the same side of the defect where the defect is too long for two of them to act as one across it;
 * else, at worst, the two that reach farthest lie on opposite sides.
 */
function envelope(
  repairCase: RepairCase,
  extent: Length,
  gaps: readonly Length[],
  reaches: readonly Length[],
  spacing: Length,
  recorder: Recorder | undefined,
  way: string,
): Length {
  const nearest = least(gaps);
  const next = least(gaps.toSpliced(gaps.indexOf(nearest), 1));
  const across = step(recorder, 'pipe/joined-extent', joinedExtent, { extent, farthest: nearest, second: next }, way);
  if (nearest > 0 && gapThen(repairCase, across, recorder, way) > spacing)
    return step(recorder, 'pipe/colony-extent', colonyExtent, { farthest: farthest(reaches), nearest }, way);
  return step(recorder, 'pipe/joined-extent', joinedExtent, { extent, ...twoFarthest(reaches) }, way);
}

/** Those that come near each other behind the pipe may act as one there, and leave no sound metal all the way round. */
function widthRound(
  repairCase: RepairCase,
  width: Length,
  reaches: readonly Length[],
  spacing: Length,
  recorder: Recorder | undefined,
): Length {
  const allRound = circumference({ outsideDiameter: diameterOf(repairCase.pipe) });
  const extent = repairCase.defect.circumferentialWidth;
  const span = step(recorder, 'pipe/joined-extent', joinedExtent, { extent, ...twoFarthest(reaches) }, ROUND);
  const behind = gapThen(repairCase, gapPast(recorder, allRound, span, ROUND), recorder, ROUND);
  return (behind <= spacing ? allRound : Math.min(width, allRound)) as Length;
}

function least(lengths: readonly Length[]): Length {
  return Math.min(...lengths) as Length;
}
