import { decide, type Recorder, step } from '../../formula/index.js';
import { gapAtEndOfLife, gapPastNeighbours, neighbourReach } from '../../pipe/index.js';
import { type CorrosionRate, exactly, type Length, line } from '../../quantity/index.js';
import type { NeighbouringLoss, RepairCase } from '../case/case.js';

/** Along the pipe and round it. */
interface BothWays {
  readonly along: Length;
  readonly round: Length;
}

/** The losses that act as one with the defect, with their reaches beyond its edges, and those that do not. */
export interface Told {
  readonly joined: readonly NeighbouringLoss[];
  readonly reachesAlong: readonly Length[];
  readonly reachesRound: readonly Length[];
  /** Each with the gap that is left to it past those that joined. */
  readonly apart: readonly NeighbouringLoss[];
}

/** Two losses act as one unless they are far enough apart one way or the other; one that joins may bring the next within reach. */
export function toldApart(
  repairCase: RepairCase,
  neighbours: readonly NeighbouringLoss[],
  spacing: BothWays,
  recorder: Recorder | undefined,
): Told {
  const joined: NeighbouringLoss[] = [];
  const reachesAlong: Length[] = [];
  const reachesRound: Length[] = [];
  let rest = neighbours;
  for (;;) {
    const reach = { along: farthest(reachesAlong), round: farthest(reachesRound) };
    const next = rest.find((each) => isWithin(gapsThen(repairCase, past(each, reach, recorder), recorder), spacing));
    if (next === undefined)
      return { joined, reachesAlong, reachesRound, apart: rest.map((each) => past(each, reach, recorder)) };
    joined.push(next);
    reachesAlong.push(reachOf(recorder, next.gapAlong, next.axialLength, 'along the pipe'));
    reachesRound.push(reachOf(recorder, next.gapRound, next.circumferentialWidth, 'round the pipe'));
    rest = rest.filter((each) => each !== next);
    decide(
      recorder,
      line(
        'a neighbour {0} along the pipe and {1} round it is one defect with this one',
        exactly('gap along the pipe', 'length', next.gapAlong),
        exactly('gap round the pipe', 'length', next.gapRound),
      ),
      'by the end of the life of the repair it is too near, both ways, to act alone',
    );
  }
}

/** The farthest of some reaches; none reaches nowhere. */
export function farthest(reaches: readonly Length[]): Length {
  return Math.max(0, ...reaches) as Length;
}

function isWithin(gaps: BothWays, spacing: BothWays): boolean {
  return gaps.along <= spacing.along && gaps.round <= spacing.round;
}

/** A neighbour as it lies beside all that joined so far. */
function past(each: NeighbouringLoss, reach: BothWays, recorder: Recorder | undefined): NeighbouringLoss {
  if (reach.along === 0 && reach.round === 0) return each;
  const gap = (from: Length, to: Length, way: string): Length =>
    step(recorder, 'pipe/gap-past-neighbours', gapPastNeighbours, { gap: from, reach: to }, way);
  return {
    ...each,
    gapAlong: gap(each.gapAlong, reach.along, 'along the pipe'),
    gapRound: gap(each.gapRound, reach.round, 'round the pipe'),
  };
}

function gapsThen(
  { defect: { growth }, repair: { life } }: RepairCase,
  { gapAlong, gapRound }: NeighbouringLoss,
  recorder: Recorder | undefined,
): BothWays {
  const rate = growth === 'none' ? (0 as CorrosionRate) : growth.length;
  const gapThen = (gap: Length, way: string): Length =>
    step(recorder, 'pipe/gap-at-end-of-life', gapAtEndOfLife, { gap, rate, life }, way);
  return { along: gapThen(gapAlong, 'along the pipe'), round: gapThen(gapRound, 'round the pipe') };
}

function reachOf(recorder: Recorder | undefined, gap: Length, extent: Length, way: string): Length {
  return step(recorder, 'pipe/neighbour-reach', neighbourReach, { gap, extent }, way);
}
