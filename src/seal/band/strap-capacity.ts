import { finite, formula, positive, within } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface StrapCapacityInput {
  readonly strength: Stress;
  readonly bandWidth: Length;
  readonly bandThickness: Length;
  readonly factor: number;
}

/**
 * Highest tension of a strap by its strength and a stated factor.
 *
 * $$T_s = \frac{S w t}{f}$$
 *
 * @param input.strength S, strength of the strap that the factor counts from [Pa], > 0
 * @param input.bandWidth w, width of the band [m], > 0
 * @param input.bandThickness t, thickness of the band [m], > 0
 * @param input.factor f, factor on the strength of the strap, 1 or more; no default
 * @returns tension that the strap may bear [N]
 * @throws CalculationError `invalid-input`
 * @remarks Yield is the strength to count from: a strap that yields loses its grip.
 */
export function strapCapacity(input: StrapCapacityInput): Force {
  const { strength: S, bandWidth: w, bandThickness: t, factor: f } = input;
  positive(S, 'strength', 'Pa');
  positive(w, 'bandWidth', 'm');
  positive(t, 'bandThickness', 'm');
  within(f, 1, 100, 'factor', '');
  const tension = (S * w * t) / f;
  positive(tension, 'tension', 'N');
  finite(tension, 'tension', 'N');
  return tension as Force;
}

export const strapCapacityFormula = /* @__PURE__ */ formula<StrapCapacityInput, Force>({
  id: 'seal/strap-capacity',
  title: 'Tension that a strap may bear',
  search: ['banding', 'breaking load'],
  compute: strapCapacity,
  equation: { expression: 'S * w * t / f' },
  inputs: {
    strength: {
      symbol: 'S',
      kind: 'stress',
      name: 'strength of the strap that the factor counts from',
      sample: [100e6, 1e9],
    },
    bandWidth: { symbol: 'w', kind: 'length', name: 'width of the band', sample: [0.005, 0.1] },
    bandThickness: { symbol: 't', kind: 'length', name: 'thickness of the band', sample: [3e-4, 0.002] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the strength of the strap', sample: [1, 4] },
  },
  output: { symbol: 'T_s', kind: 'force', name: 'tension that the strap may bear' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the strap stress' } },
  limits: [],
});
