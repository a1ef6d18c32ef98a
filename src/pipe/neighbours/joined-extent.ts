import { finite, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface JoinedExtentInput {
  readonly extent: Length;
  readonly farthest: Length;
  readonly second?: Length;
}

/**
 * Extent of a metal loss with the neighbours that act with it, along the pipe or round it.
 *
 * $$e_j = e + r_1 + r_2$$
 *
 * @param input.extent    e, of the loss alone [m], >= 0
 * @param input.farthest  r_1, the farthest reach of a neighbour beyond it [m], >= 0
 * @param input.second    r_2, the farthest but one [m], >= 0; 0 unless given
 * @returns extent [m]
 * @throws CalculationError `invalid-input`
 * @remarks On which side each neighbour lies is not asked: at worst the two that reach farthest lie on opposite ones, and all
 *   others within them.
 * @see common practice: the envelope of defects that act as one
 */
export function joinedExtent(input: JoinedExtentInput): Length {
  const { extent: e, farthest: r1, second: r2 = 0 } = input;
  nonNegative(e, 'extent', 'm');
  nonNegative(r1, 'farthest', 'm');
  nonNegative(r2, 'second', 'm');
  const joined = e + r1 + r2;
  finite(joined, 'joined extent', 'm');
  return joined as Length;
}

export const joinedExtentFormula = /* @__PURE__ */ formula<JoinedExtentInput, Length>({
  id: 'pipe/joined-extent',
  title: 'Extent of losses that act as one',
  compute: joinedExtent,
  equation: { expression: 'e + r_1 + r_2' },
  inputs: {
    extent: { symbol: 'e', kind: 'length', name: 'extent of the loss alone', sample: [0, 1] },
    farthest: { symbol: 'r_1', kind: 'length', name: 'farthest reach', sample: [0, 1] },
    second: { symbol: 'r_2', kind: 'length', name: 'farthest reach but one', sample: [0, 1], default: 0 },
  },
  output: { symbol: 'e_j', kind: 'length', name: 'joined extent' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
