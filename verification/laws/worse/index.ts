import { atWork } from './at-work.js';
import { leftOut } from './left-out.js';
import { byNeighbours } from './neighbours.js';
import { byShape } from './shapes.js';
import { bySize } from './sizes.js';
import { slips } from './slips.js';
import type { Worsening } from './worsening.js';

export type { Worsening } from './worsening.js';

/** All the ways in which a case gets worse. */
export const worsenings: readonly Worsening[] = [
  ...bySize,
  ...atWork,
  ...leftOut,
  ...slips,
  ...byShape,
  ...byNeighbours,
];
