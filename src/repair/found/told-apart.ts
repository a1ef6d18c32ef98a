import { decide, type Recorder } from '../../formula/index.js';
import { exactly, type Length, line } from '../../quantity/index.js';
import type { NeighbouringLoss, RepairCase } from '../case/case.js';
import { type Colony, coloniesOf } from './colonies.js';
import { ALONG, type BothWays, farthest, gapPast, gapsThen, isWithin, ROUND } from './gaps.js';

/** The losses that act as one with the defect, with their reaches beyond its edges, and those that do not. */
export interface Told {
  readonly joined: readonly NeighbouringLoss[];
  readonly reachesAlong: readonly Length[];
  readonly reachesRound: readonly Length[];
  /** Each with the gap that is left to it past those that joined; those that act as one with each other as one. */
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
  let rest = coloniesOf(repairCase, neighbours, spacing, recorder);
  for (;;) {
    const reach = { along: farthest(reachesAlong), round: farthest(reachesRound) };
    const next = rest.find(({ asOne }) => isWithin(gapsFromDefect(repairCase, asOne, reach, recorder), spacing));
    if (next === undefined)
      return { joined, reachesAlong, reachesRound, apart: rest.map(({ asOne }) => past(asOne, reach, recorder)) };
    joined.push(...next.members);
    reachesAlong.push(...next.reachesAlong);
    reachesRound.push(...next.reachesRound);
    rest = rest.filter((each) => each !== next);
    decideJoined(next, recorder);
  }
}

function decideJoined({ asOne: { gapAlong, gapRound } }: Colony, recorder: Recorder | undefined): void {
  decide(
    recorder,
    line(
      'a neighbour {0} along the pipe and {1} round it is one defect with this one',
      exactly('gap along the pipe', 'length', gapAlong),
      exactly('gap round the pipe', 'length', gapRound),
    ),
    'by the end of the life of the repair it is too near, both ways, to act alone',
  );
}

function gapsFromDefect(
  repairCase: RepairCase,
  loss: NeighbouringLoss,
  reach: BothWays,
  recorder: Recorder | undefined,
): BothWays {
  const { gapAlong, gapRound } = past(loss, reach, recorder);
  return gapsThen(repairCase, { along: gapAlong, round: gapRound }, recorder);
}

/** A neighbour as it lies beside all that joined so far. */
function past(loss: NeighbouringLoss, reach: BothWays, recorder: Recorder | undefined): NeighbouringLoss {
  if (reach.along === 0) return loss;
  return {
    ...loss,
    gapAlong: gapPast(recorder, loss.gapAlong, reach.along, ALONG),
    gapRound: gapPast(recorder, loss.gapRound, reach.round, ROUND),
  };
}
