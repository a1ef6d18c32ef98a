import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface StrapStressInput {
  readonly tension: Force;
  readonly bandWidth: Length;
  readonly bandThickness: Length;
}

/**
 * Tensile stress in a strap under its tension.
 *
 * $$\sigma_s = \frac{T}{w t}$$
 *
 * @param input.tension T, highest tension in the strap, at the fastener [N], >= 0
 * @param input.bandWidth w, width of the band [m], > 0
 * @param input.bandThickness t, thickness of the band [m], > 0
 * @returns tensile stress of the strap [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Without the holes or slots of a worm band: take the width that is left beside them.
 */
export function strapStress(input: StrapStressInput): Stress {
  const { tension: T, bandWidth: w, bandThickness: t } = input;
  nonNegative(T, 'tension', 'N');
  positive(w, 'bandWidth', 'm');
  positive(t, 'bandThickness', 'm');
  const stress = T / (w * t);
  finite(stress, 'strap stress', 'Pa');
  return stress as Stress;
}

export const strapStressFormula = /* @__PURE__ */ formula<StrapStressInput, Stress>({
  id: 'seal/strap-stress',
  title: 'Tensile stress of a strap',
  search: ['banding'],
  compute: strapStress,
  equation: { expression: 'T / (w * t)' },
  inputs: {
    tension: { symbol: 'T', kind: 'force', name: 'highest tension in the strap, at the fastener', sample: [10, 50e3] },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of the band', sample: [0.005, 0.1] },
    bandThickness: { symbol: 't', kind: 'length', name: 'thickness of the band', sample: [3e-4, 0.002] },
  },
  output: { symbol: 'sigma_s', kind: 'stress', name: 'tensile stress of the strap' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'force over section' } },
  limits: [],
});
