import type { NeighbouringLoss, RepairCase } from '../../../src/repair/index.js';
import { change, less, times, type Worsening } from './worsening.js';

/** A loss beside the defect, and one that is there already and is worse. */

/** A loss like the defect, from right beside it to well clear of it. */
function neighbourOf({ pipe, defect }: RepairCase, share: number): NeighbouringLoss {
  const spacing = Math.sqrt((pipe.outsideDiameter ?? 0) * pipe.wallThickness);
  return {
    cause: defect.cause,
    gapAlong: (4 * share * spacing) as never,
    gapRound: ((((7 * share) % 1) * 5 * spacing) / 2) as never,
    axialLength: times(defect.axialLength, 0.2 + ((3 * share) % 1)),
    circumferentialWidth: times(defect.circumferentialWidth, 0.5),
    remainingWall: Math.min(times(defect.remainingWall, 0.8 + ((5 * share) % 1)), pipe.wallThickness) as never,
  };
}

function withNeighbour(base: RepairCase, share: number): RepairCase {
  return change(base, 'defect', { neighbours: [neighbourOf(base, share)] });
}

/** The first neighbour, changed. */
function changed(base: RepairCase, by: (neighbour: NeighbouringLoss) => Partial<NeighbouringLoss>) {
  const { neighbours } = base.defect;
  if (neighbours === undefined || neighbours === 'none') return undefined;
  const [first, ...others] = neighbours as [NeighbouringLoss, ...NeighbouringLoss[]];
  return change(base, 'defect', { neighbours: [{ ...first, ...by(first) }, ...others] });
}

export const byNeighbours: readonly Worsening[] = [
  { name: 'a neighbouring loss', of: (base, factor) => withNeighbour(base, Math.min(factor - 1, 1)) },
  {
    name: 'one more neighbouring loss',
    from: withNeighbour,
    of: (base, factor) => {
      const { neighbours } = base.defect;
      if (neighbours === undefined || neighbours === 'none') return undefined;
      return change(base, 'defect', { neighbours: [...neighbours, neighbourOf(base, Math.min(factor - 1, 1))] });
    },
  },
  {
    name: 'a longer neighbouring loss',
    from: withNeighbour,
    of: (base, factor) => changed(base, ({ axialLength }) => ({ axialLength: times(axialLength, factor) })),
  },
  {
    name: 'a thinner neighbouring loss',
    from: withNeighbour,
    of: (base, factor) => changed(base, ({ remainingWall }) => ({ remainingWall: less(remainingWall, factor) })),
  },
];
