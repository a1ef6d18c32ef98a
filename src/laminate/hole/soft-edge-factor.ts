import { finite, formula, positive } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface SoftEdgeFactorInput {
  readonly stripModulus: Modulus;
  readonly shearModulus: Modulus;
}

/**
 * Release of the half crack at the edge of a hole or a slot under a laminate that is soft through its thickness, over that under
 * one that is alike in all directions.
 *
 * $$h = \sqrt{\frac{r (r + \sqrt{r})}{2}}, \qquad r = \max\left(1, \frac{E'}{2 G}\right)$$
 *
 * @param input.stripModulus  E', of `stripModulus` in the direction across the edge [Pa], > 0
 * @param input.shearModulus  G, of the laminate [Pa], > 0
 * @returns edge factor, >= 1
 * @throws CalculationError `invalid-input`
 * @remarks The crack opens through the thickness, where the resin has the word, and not across the opening: the energy of a
 *   crack in an orthotropic body (Sih, Paris and Irwin), with the modulus through the thickness at its low bound of 2 G and no
 *   contraction. Against finite elements a narrow slot under stiff fibres is up to 1.9 times weaker than with h = 1, a small
 *   hole up to 2.1 times.
 * @see Sih, Paris, Irwin, On cracks in rectilinearly anisotropic bodies, Int. J. Fract. Mech. 1, 1965, as recalled
 */
export function softEdgeFactor(input: SoftEdgeFactorInput): number {
  const { stripModulus: Ep, shearModulus: G } = input;
  positive(Ep, 'stripModulus', 'Pa');
  positive(G, 'shearModulus', 'Pa');
  const r = Math.max(1, Ep / (2 * G));
  const factor = Math.sqrt((r * (r + Math.sqrt(r))) / 2);
  finite(factor, 'edge factor', '');
  return factor;
}

export const softEdgeFactorFormula = /* @__PURE__ */ formula<SoftEdgeFactorInput, number>({
  id: 'laminate/soft-edge-factor',
  title: 'Release at the edge of an opening under a laminate soft through its thickness',
  compute: softEdgeFactor,
  equation: {
    where: [{ symbol: 'r', kind: 'number', expression: 'max(1, E_p / (2 * G))' }],
    expression: 'sqrt(r * (r + sqrt(r)) / 2)',
  },
  inputs: {
    stripModulus: { symbol: 'E_p', kind: 'modulus', name: 'modulus of the strip', sample: [8e9, 90e9] },
    shearModulus: { symbol: 'G', kind: 'modulus', name: 'shear modulus of the laminate', sample: [1e9, 4e9] },
  },
  output: { symbol: 'h', kind: 'number', name: 'edge factor' },
  sources: [{ key: 'sih-paris-irwin', locator: 'release of a crack in an orthotropic body' }],
  evidence: {
    form: { tag: 'recalled', derived: 'finite elements of an orthotropic layer on a rigid base' },
    'modulus through the thickness': { tag: 'chosen', note: '2 G, a low bound: a case does not state it' },
  },
  limits: [],
});
