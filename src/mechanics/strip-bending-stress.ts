import { finite, formula, positive } from '../formula/index.js';
import type { Length, Modulus, Stress } from '../quantity/index.js';

export interface StripBendingStressInput {
  readonly modulus: Modulus;
  readonly thickness: Length;
  readonly radius: Length;
}

/**
 * Stress in the outer fibre of a strip or wire bent elastically on a round surface.
 *
 * $$\sigma = \frac{E t}{2R + t}$$
 *
 * @param input.modulus E, modulus of the strip [Pa], > 0
 * @param input.thickness t, thickness of the strip [m], > 0
 * @param input.radius R, radius of the surface that the strip is bent on [m], > 0
 * @returns stress in the outer fibre [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks As if the strip stayed elastic: above its yield the figure only says that it does not. A sheet too wide
 *   to curl at its edges is stiffer by 1/(1 - nu^2).
 * @see Gere, Mechanics of Materials, problems 5.4-1 and 5.5-2
 */
export function stripBendingStress(input: StripBendingStressInput): Stress {
  const { modulus: E, thickness: t, radius: R } = input;
  positive(E, 'modulus', 'Pa');
  positive(t, 'thickness', 'm');
  positive(R, 'radius', 'm');
  const stress = (E * t) / (2 * R + t);
  finite(stress, 'stress', 'Pa');
  return stress as Stress;
}

export const stripBendingStressFormula = /* @__PURE__ */ formula<StripBendingStressInput, Stress>({
  id: 'mechanics/strip-bending-stress',
  title: 'Elastic stress of a strip bent on a radius',
  search: ['minimum bend radius', 'bend a sheet'],
  compute: stripBendingStress,
  equation: { expression: 'E * t / (2 * R + t)' },
  inputs: {
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the strip', sample: [1e9, 210e9] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the strip', sample: [2e-4, 0.003] },
    radius: {
      symbol: 'R',
      kind: 'length',
      name: 'radius of the surface that the strip is bent on',
      sample: [0.02, 0.6],
    },
  },
  output: { symbol: 'sigma', kind: 'stress', name: 'stress in the outer fibre' },
  sources: [{ key: 'gere', locator: 'problems 5.4-1 and 5.5-2' }],
  evidence: { form: { tag: 'secondary', derived: 'modulus times the strain of the outer fibre' } },
  limits: [],
});
