import type { Defect, NeighbouringLoss } from './case.js';

/** The losses near a defect, as a list; of the case that is designed for those that do not act with it. */
export function neighboursOf({ neighbours }: Defect): readonly NeighbouringLoss[] {
  return neighbours === undefined || neighbours === 'none' ? [] : neighbours;
}
