import { atMost, below, formula, nonNegative, positive, refuse, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import { bestOffsets } from './joint-offsets.js';

/** Plies of a wrap in bands, and how many of them carry along the pipe at the worst place. */
export interface PliesWithJoints {
  readonly plies: number;
  readonly carrying: number;
  readonly lost: number;
  /** Places over one pitch of the bands on which the joints of the layers are shared out. */
  readonly places: number;
}

export interface PliesWithJointsInput {
  readonly leastPlies: number;
  readonly carryingPlies: number;
  readonly sheetWidth: Length;
  readonly sideLap: Length;
  readonly reach: Length;
}

/**
 * The fewest plies of sheet in bands of which enough carry along the pipe wherever joints lie.
 *
 * $$n_a = n - \max_x \; \#\{\text{layers with a joint from } x - l_j \text{ to } x + l_j\}$$
 *
 * @param input.leastPlies    n_0, plies that are laid in any case, whole, 1 to 1000
 * @param input.carryingPlies n_r, plies that have to carry along the pipe, whole, >= 0, at most 1000
 * @param input.sheetWidth    w, width of the sheet [m], > 0
 * @param input.sideLap       s, overlap of neighbouring bands of one layer [m], >= 0 and < w
 * @param input.reach         l_j, reach of a joint to either side [m], > 0
 * @returns plies, those that carry along the pipe at the worst place, those that are lost there, and the places of the joints
 * @throws CalculationError `invalid-input`; `no-solution` where no number of plies up to 1000 leaves enough
 * @remarks Own form. The joints of the layers lie on evenly spaced places over the pitch w - s of the bands, as many of them, up
 *   to 12, as lose least. A joint earns nothing for its lap. The count is that of an endless row of bands, which no shorter row exceeds.
 */
export function pliesWithJoints(input: PliesWithJointsInput): PliesWithJoints {
  const { leastPlies: n0, carryingPlies: nr, sheetWidth: w, sideLap: s, reach } = input;
  wholeNumber(n0, 1, 'leastPlies');
  atMost(n0, 1000, 'the most that a wrap is planned for', 'leastPlies', '');
  wholeNumber(nr, 0, 'carryingPlies');
  atMost(nr, 1000, 'the most that a wrap is planned for', 'carryingPlies', '');
  positive(w, 'sheetWidth', 'm');
  nonNegative(s, 'sideLap', 'm');
  below(s, w, 'the sheet width', 'sideLap', 'm');
  positive(reach, 'reach', 'm');
  const pitch = w - s;
  if (nr === 0 || 2 * reach < pitch) {
    for (let plies = n0; plies <= 1000; plies++) {
      const { lost, places } = bestOffsets(plies, pitch, reach);
      if (plies - lost >= nr) return { plies, carrying: plies - lost, lost, places };
    }
  }
  refuse({
    code: 'no-solution',
    parameter: 'sheetWidth',
    value: w,
    unit: 'm',
    constraint:
      'must be more than {limit}, the lap and twice the reach of a joint, by so much that enough plies carry along the pipe; take a wider sheet',
    limit: s + 2 * reach,
  });
}

export const pliesWithJointsFormula = /* @__PURE__ */ formula<PliesWithJointsInput, PliesWithJoints>({
  id: 'wrap/plies-with-joints',
  title: 'Plies of sheet in bands that carry along the pipe',
  compute: pliesWithJoints,
  equation: {
    algorithm:
      'Ply after ply from n_0, until n less the lost layers reach n_r: the joints of the layers on G evenly spaced places over w - s, one after another, lost is the most layers with a joint in a window of 2 l_j, and G from 1 to n, at most 12, the first that loses fewest.',
    winner: { name: 'those that carry and those that are lost', equation: { expression: 'n_a + n_lost' } },
  },
  inputs: {
    leastPlies: { symbol: 'n_0', kind: 'count', name: 'plies that are laid in any case', sample: [2, 20] },
    carryingPlies: { symbol: 'n_r', kind: 'count', name: 'plies that have to carry along the pipe', sample: [0, 10] },
    sheetWidth: { symbol: 'w', kind: 'length', name: 'width of the sheet', sample: [0.15, 1.3] },
    sideLap: { symbol: 's', kind: 'length', name: 'overlap of neighbouring bands', sample: [0, 0.03] },
    reach: { symbol: 'l_j', kind: 'length', name: 'reach of a joint to either side', sample: [0.01, 0.03] },
  },
  output: {
    plies: { symbol: 'n', kind: 'count', name: 'plies' },
    carrying: { symbol: 'n_a', kind: 'count', name: 'plies that carry along the pipe' },
    lost: { symbol: 'n_lost', kind: 'count', name: 'plies lost at the worst place' },
    places: { symbol: 'G', kind: 'count', name: 'places of the joints over one pitch' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'joints counted place by place' } },
  limits: [{ sort: 'stop', text: 'the pitch of the bands is longer than twice the reach of a joint' }],
});
