import { finite, formula, positive } from '../formula/index.js';
import type { Length, Strain } from '../quantity/index.js';

export interface StripBendingStrainInput {
  readonly thickness: Length;
  readonly radius: Length;
}

/**
 * Strain in the outer fibre of a strip or wire bent on a round surface.
 *
 * $$\varepsilon = \frac{t}{2R + t}$$
 *
 * @param input.thickness t, thickness of the strip [m], > 0
 * @param input.radius R, radius of the surface that the strip is bent on [m], > 0
 * @returns strain in the outer fibre [1]
 * @throws CalculationError `invalid-input`
 * @remarks The middle of the strip lies at R + t/2 and keeps its length. Geometry alone: holds beyond yield too.
 * @see Gere, Mechanics of Materials, problems 5.4-1 and 5.5-2
 */
export function stripBendingStrain(input: StripBendingStrainInput): Strain {
  const { thickness: t, radius: R } = input;
  positive(t, 'thickness', 'm');
  positive(R, 'radius', 'm');
  const strain = t / (2 * R + t);
  finite(strain, 'strain', '');
  return strain as Strain;
}

export const stripBendingStrainFormula = /* @__PURE__ */ formula<StripBendingStrainInput, Strain>({
  id: 'mechanics/strip-bending-strain',
  title: 'Strain of a strip bent on a radius',
  search: ['minimum bend radius', 'bend a sheet'],
  compute: stripBendingStrain,
  equation: { expression: 't / (2 * R + t)' },
  inputs: {
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the strip', sample: [2e-4, 0.003] },
    radius: {
      symbol: 'R',
      kind: 'length',
      name: 'radius of the surface that the strip is bent on',
      sample: [0.02, 0.6],
    },
  },
  output: { symbol: 'epsilon', kind: 'strain', name: 'strain in the outer fibre' },
  sources: [{ key: 'gere', locator: 'problems 5.4-1 and 5.5-2' }],
  evidence: { form: { tag: 'secondary', derived: 'length of the outer fibre over that of the middle' } },
  limits: [],
});
