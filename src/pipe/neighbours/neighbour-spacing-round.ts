import { below, finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface NeighbourSpacingRoundInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Gap round the pipe up to which two metal losses act as one, as an arc on its outside.
 *
 * $$s_c = \pi \sqrt{D t}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, of the sound pipe [m], > 0 and < D/2
 * @returns gap, measured along the outside [m]
 * @throws CalculationError `invalid-input`
 * @remarks The rule is recalled as an angle, 360 sqrt(t/D) degrees; a later edition is recalled with that angle over pi. The
 *   larger arc joins more, and stands here.
 * @see DNV-RP-F101, interaction of defects, as recalled
 */
export function neighbourSpacingRound(input: NeighbourSpacingRoundInput): Length {
  const { outsideDiameter: D, wallThickness: t } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const spacing = Math.PI * Math.sqrt(D * t);
  finite(spacing, 'spacing', 'm');
  return spacing as Length;
}

export const neighbourSpacingRoundFormula = /* @__PURE__ */ formula<NeighbourSpacingRoundInput, Length>({
  id: 'pipe/neighbour-spacing-round',
  title: 'Gap round the pipe up to which two losses act as one',
  search: ['interaction', 'interacting defects', 'colony'],
  compute: neighbourSpacingRound,
  equation: { expression: 'pi * sqrt(D * t)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 's_c', kind: 'length', name: 'gap round the pipe' },
  sources: [{ key: 'dnv-rp-f101', locator: 'interaction of defects' }],
  evidence: {
    form: { tag: 'recalled', note: 'a later edition is recalled with the angle over pi: the larger arc is taken' },
  },
  limits: [],
});
