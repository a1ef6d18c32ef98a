import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** What sets the overlap. */
export type OverlapCriterion = 'geometry' | 'minimum' | 'adhesive' | 'hole';

export interface GoverningOverlapInput {
  readonly geometry: Length;
  readonly adhesive: Length;
  readonly minimum?: Length;
  readonly hole?: Length;
}

/** The longest overlap, and the criterion that asks for it. */
export interface GoverningOverlap {
  readonly overlap: Length;
  readonly governing: OverlapCriterion;
}

/**
 * Overlap by every criterion, and the one that governs.
 *
 * $$l = \max(l_{geo}, l_{min}, l_{adh}, l_{hole})$$
 *
 * @param input.geometry  l_geo, from the geometry of the pipe [m], > 0
 * @param input.adhesive  l_adh, from the adhesive [m], >= 0
 * @param input.minimum   l_min [m], 50 mm unless given
 * @param input.hole      l_hole, in diameters of a small hole [m]; 0 where it is not asked for
 * @returns the longest and its name; of equal ones the first
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function governingOverlap(input: GoverningOverlapInput): GoverningOverlap {
  const { geometry, adhesive, minimum = 0.05 as Length, hole = 0 as Length } = input;
  positive(geometry, 'geometry', 'm');
  nonNegative(adhesive, 'adhesive', 'm');
  nonNegative(minimum, 'minimum', 'm');
  nonNegative(hole, 'hole', 'm');
  let longest: GoverningOverlap = { overlap: geometry, governing: 'geometry' };
  if (minimum > longest.overlap) longest = { overlap: minimum, governing: 'minimum' };
  if (adhesive > longest.overlap) longest = { overlap: adhesive, governing: 'adhesive' };
  if (hole > longest.overlap) longest = { overlap: hole, governing: 'hole' };
  return longest;
}

export const governingOverlapFormula = /* @__PURE__ */ formula<GoverningOverlapInput, GoverningOverlap>({
  id: 'laminate/governing-overlap',
  title: 'Governing overlap',
  search: ['bond length', 'overlap length', 'how far past the defect'],
  compute: governingOverlap,
  equation: { expression: 'max(l_geo, l_min, l_adh, l_hole)' },
  inputs: {
    geometry: { symbol: 'l_geo', kind: 'length', name: 'overlap from geometry', sample: [0.01, 0.4] },
    adhesive: { symbol: 'l_adh', kind: 'length', name: 'overlap from the adhesive', sample: [0, 0.4] },
    minimum: { symbol: 'l_min', kind: 'length', name: 'least overlap', default: 0.05, sample: [0.025, 0.1] },
    hole: { symbol: 'l_hole', kind: 'length', name: 'overlap round the hole', default: 0, sample: [0, 0.2] },
  },
  output: {
    overlap: { symbol: 'l_over', kind: 'length', name: 'governing overlap' },
    governing: { symbol: 'criterion', kind: 'choice', name: 'governing criterion' },
  },
  sources: [
    { key: 'iso-24817', locator: '7.5.8, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' }, minimum: { tag: 'recalled' } },
  limits: [],
});
