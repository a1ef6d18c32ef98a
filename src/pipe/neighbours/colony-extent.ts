import { atLeast, formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ColonyExtentInput {
  readonly farthest: Length;
  readonly nearest: Length;
}

/**
 * Extent of neighbouring metal losses that act as one with each other and not with the defect, all on the same side of it.
 *
 * $$e = r - g$$
 *
 * @param input.farthest  r, farthest reach of one of them beyond the edge of the defect [m], >= g
 * @param input.nearest   g, the least gap between the defect and one of them [m], >= 0
 * @returns extent, along the pipe or round it [m]
 * @throws CalculationError `invalid-input`
 * @see common practice: the envelope of defects that act as one
 */
export function colonyExtent(input: ColonyExtentInput): Length {
  const { farthest: r, nearest: g } = input;
  nonNegative(g, 'nearest', 'm');
  atLeast(r, g, 'the least gap', 'farthest', 'm');
  return (r - g) as Length;
}

export const colonyExtentFormula = /* @__PURE__ */ formula<ColonyExtentInput, Length>({
  id: 'pipe/colony-extent',
  title: 'Extent of neighbours that act with each other',
  search: ['cluster', 'interaction'],
  compute: colonyExtent,
  equation: { expression: 'r - g' },
  inputs: {
    farthest: { symbol: 'r', kind: 'length', name: 'farthest reach', sample: [1, 2], usual: [0, 5] },
    nearest: { symbol: 'g', kind: 'length', name: 'least gap', sample: [0, 1] },
  },
  output: { symbol: 'e', kind: 'length', name: 'extent of the colony' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
