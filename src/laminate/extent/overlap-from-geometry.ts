import { below, finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface OverlapFromGeometryInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly coefficient?: number;
  readonly divisor?: number;
}

/**
 * Overlap on sound pipe beyond each end of the defect, from the length over which a shell disturbance dies out.
 *
 * $$l = k \sqrt{\frac{D t}{m}}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, nominal wall of the sound pipe [m], > 0 and < D/2
 * @param input.coefficient      k of the rule set; 2 unless given
 * @param input.divisor          m of the rule set; 1 unless given
 * @returns overlap [m]
 * @throws CalculationError `invalid-input`
 * @remarks 2 sqrt(D t) is the longer of the two recalled forms; the other, 2.5 sqrt(D t/2), is 12 % shorter.
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function overlapFromGeometry(input: OverlapFromGeometryInput): Length {
  const { outsideDiameter: D, wallThickness: t, coefficient: k = 2, divisor: m = 1 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(k, 'coefficient', '');
  positive(m, 'divisor', '');
  const l = k * Math.sqrt((D * t) / m);
  finite(l, 'overlap', 'm');
  return l as Length;
}

export const overlapFromGeometryFormula = /* @__PURE__ */ formula<OverlapFromGeometryInput, Length>({
  id: 'laminate/overlap-from-geometry',
  title: 'Overlap from the geometry of the pipe',
  search: ['bond length', 'transfer length', '2.5 root dt'],
  compute: overlapFromGeometry,
  equation: { expression: 'k * sqrt(D * t / m)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'nominal wall', sample: [0.001, 0.04] },
    coefficient: { symbol: 'k', kind: 'number', name: 'coefficient', default: 2, sample: [1.5, 3] },
    divisor: { symbol: 'm', kind: 'number', name: 'divisor', default: 1, sample: [1, 2] },
  },
  output: { symbol: 'l_geo', kind: 'length', name: 'overlap from geometry' },
  sources: [
    { key: 'iso-24817', locator: '7.5.8, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' }, coefficient: { tag: 'recalled' }, divisor: { tag: 'recalled' } },
  limits: [],
});
