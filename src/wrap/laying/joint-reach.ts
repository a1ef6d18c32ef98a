import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface JointReachInput {
  readonly transferLength: Length;
  readonly leastReach: Length;
}

/**
 * How far to either side of the joint of one layer that layer counts as carrying nothing along the pipe.
 *
 * $$l_j = \max(l_0, l_\tau)$$
 *
 * @param input.transferLength l_tau, length over which the bond brings a ply to its whole force [m], >= 0
 * @param input.leastReach     l_0, least reach [m], > 0
 * @returns reach of a joint to either side [m]
 * @throws CalculationError `invalid-input`
 * @remarks Own form. It holds for butted and for lapped bands: with a lap, each band is whole again this far from its edge,
 *   so that the stretch without a whole one is never longer than twice the reach.
 */
export function jointReach(input: JointReachInput): Length {
  const { transferLength, leastReach } = input;
  nonNegative(transferLength, 'transferLength', 'm');
  positive(leastReach, 'leastReach', 'm');
  return Math.max(leastReach, transferLength) as Length;
}

export const jointReachFormula = /* @__PURE__ */ formula<JointReachInput, Length>({
  id: 'wrap/joint-reach',
  title: 'Reach of a joint along the pipe',
  search: ['seam', 'butt joint'],
  compute: jointReach,
  equation: { expression: 'max(l_0, l_tau)' },
  inputs: {
    transferLength: {
      symbol: 'l_tau',
      kind: 'length',
      name: 'length over which the bond brings a ply to its whole force',
      sample: [0.002, 0.1],
    },
    leastReach: { symbol: 'l_0', kind: 'length', name: 'least reach', sample: [0.01, 0.05] },
  },
  output: { symbol: 'l_j', kind: 'length', name: 'reach of a joint to either side' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
