import { below, finite, formula, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface OverlapFromHoleInput {
  readonly holeDiameter: Length;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly multiple?: number;
  readonly share?: number;
}

/**
 * Overlap round a small hole, in diameters of the hole.
 *
 * $$l = n d \quad \text{for} \quad d < r \sqrt{D t}$$
 *
 * @param input.holeDiameter     d [m], > 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, nominal wall of the sound pipe [m], > 0 and < D/2
 * @param input.multiple         n, 4 unless given
 * @param input.share            r, 0.5 unless given
 * @returns overlap [m]
 * @throws CalculationError `invalid-input`; `outside-validity` for a larger hole
 * @remarks Never longer than 2 sqrt(D t), which it meets at the limit: beside that overlap it governs nothing, in its place
 *   it is the less conservative choice.
 * @see ISO 24817:2017, 7.5.8, as recalled
 */
export function overlapFromHole(input: OverlapFromHoleInput): Length {
  const { holeDiameter: d, outsideDiameter: D, wallThickness: t, multiple: n = 4, share: r = 0.5 } = input;
  positive(d, 'holeDiameter', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(n, 'multiple', '');
  positive(r, 'share', '');
  if (overlapFromHoleBeyondShare(input)) {
    const limit = r * Math.sqrt(D * t);
    refuse({
      code: 'outside-validity',
      parameter: 'holeDiameter',
      value: d,
      unit: 'm',
      constraint: 'must be below {limit}; a larger hole takes the overlap from the geometry of the pipe',
      limit: limit,
      source: 'after ISO 24817:2017, 7.5.8, as recalled',
    });
  }
  const l = n * d;
  finite(l, 'overlap', 'm');
  return l as Length;
}

/** Whether a hole is so large that its overlap follows from the geometry of the pipe alone. */
export function overlapFromHoleBeyondShare(input: OverlapFromHoleInput): boolean {
  return input.holeDiameter >= (input.share ?? 0.5) * Math.sqrt(input.outsideDiameter * input.wallThickness);
}

export const overlapFromHoleFormula = /* @__PURE__ */ formula<OverlapFromHoleInput, Length>({
  id: 'laminate/overlap-from-hole',
  title: 'Overlap round a small hole',
  search: ['bond length', 'leak'],
  compute: overlapFromHole,
  equation: { expression: 'n * d' },
  inputs: {
    holeDiameter: { symbol: 'd', kind: 'length', name: 'hole diameter', sample: [0.001, 0.04] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.005, 0.04] },
    multiple: { symbol: 'n', kind: 'number', name: 'diameters of overlap', default: 4, sample: [3, 5] },
    share: { symbol: 'r', kind: 'number', name: 'share of sqrt(D t)', default: 0.5, sample: [0.4, 0.6] },
  },
  output: { symbol: 'l_hole', kind: 'length', name: 'overlap round the hole' },
  sources: [{ key: 'iso-24817', locator: '7.5.8, as recalled' }],
  evidence: { form: { tag: 'recalled' }, multiple: { tag: 'recalled' }, share: { tag: 'recalled' } },
  limits: [{ sort: 'stop', text: 'only for holes below half of sqrt(D t)' }],
});
