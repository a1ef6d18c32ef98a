import { below, finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface NeighbourSpacingAlongInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Gap along the pipe up to which two metal losses act as one.
 *
 * $$s_a = 2 \sqrt{D t}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, of the sound pipe [m], > 0 and < D/2
 * @returns gap [m]
 * @throws CalculationError `invalid-input`
 * @remarks The rule of DNV-RP-F101. ASME B31G is recalled with three walls, which is less on every pipe whose diameter is above
 *   2.25 walls; so the longer of the two stands here.
 * @see DNV-RP-F101, interaction of defects, as recalled
 */
export function neighbourSpacingAlong(input: NeighbourSpacingAlongInput): Length {
  const { outsideDiameter: D, wallThickness: t } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const spacing = 2 * Math.sqrt(D * t);
  finite(spacing, 'spacing', 'm');
  return spacing as Length;
}

export const neighbourSpacingAlongFormula = /* @__PURE__ */ formula<NeighbourSpacingAlongInput, Length>({
  id: 'pipe/neighbour-spacing-along',
  title: 'Gap along the pipe up to which two losses act as one',
  search: ['interaction', 'interacting defects', 'colony'],
  compute: neighbourSpacingAlong,
  equation: { expression: '2 * sqrt(D * t)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 's_a', kind: 'length', name: 'gap along the pipe' },
  sources: [{ key: 'dnv-rp-f101', locator: 'interaction of defects' }],
  evidence: { form: { tag: 'recalled', note: 'ASME B31G is recalled with 3 t: the longer is taken' } },
  limits: [],
});
