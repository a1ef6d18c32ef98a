import { formula } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';
import { acrossModulus, alongModulus, poissonRatio, shearModulus } from './declared-inputs.js';
import { allFinite, checkPly, type PlyConstants } from './ply.js';
import { reducedOf } from './turning.js';

export type ReducedStiffnessInput = PlyConstants;

/** Stiffness of a ply in its own axes. */
export interface ReducedStiffness {
  readonly q11: Modulus;
  readonly q12: Modulus;
  readonly q22: Modulus;
  readonly q66: Modulus;
}

/**
 * Stiffness of a ply in plane stress, in its own axes.
 *
 * $$Q_{11} = \frac{E_1}{1 - \nu_{12}\nu_{21}},\quad Q_{12} = \nu_{12} Q_{22},\quad Q_{22} = \frac{E_2}{1 - \nu_{12}\nu_{21}},
 * \quad Q_{66} = G_{12},\quad \nu_{21} = \nu_{12}\frac{E_2}{E_1}$$
 *
 * @param input.alongModulus   E_1 [Pa], > 0
 * @param input.acrossModulus  E_2 [Pa], > 0
 * @param input.shearModulus   G_12 [Pa], > 0
 * @param input.poissonRatio   nu_12, from 0 to below 1 and sqrt(E_1/E_2)
 * @returns Q_11, Q_12, Q_22 and Q_66 [Pa]
 * @throws CalculationError `invalid-input`
 * @see Nettles, NASA RP-1351, 1994; Kaw, Mechanics of Composite Materials, chapter 2
 */
export function reducedStiffness(input: ReducedStiffnessInput): ReducedStiffness {
  checkPly(input);
  const [q11, q12, q22, q66] = reducedOf(input);
  const stiffness = { q11: q11 as Modulus, q12: q12 as Modulus, q22: q22 as Modulus, q66: q66 as Modulus };
  allFinite(Object.values(stiffness), 'stiffness', 'Pa');
  return stiffness;
}

export const reducedStiffnessFormula = /* @__PURE__ */ formula<ReducedStiffnessInput, ReducedStiffness>({
  id: 'laminate/reduced-stiffness',
  title: 'Stiffness of a ply in its own axes',
  compute: reducedStiffness,
  equation: {
    algorithm: 'Q_11 = E_1/f, Q_12 = nu_12 E_2/f, Q_22 = E_2/f, Q_66 = G_12 with f = 1 - nu_12^2 E_2/E_1',
    winner: { name: 'stiffness along', equation: { expression: 'E_1 / (1 - nu_12^2 * E_2 / E_1)' } },
  },
  inputs: { alongModulus, acrossModulus, shearModulus, poissonRatio },
  output: {
    q11: { symbol: 'Q_11', kind: 'modulus', name: 'stiffness along' },
    q12: { symbol: 'Q_12', kind: 'modulus', name: 'stiffness that couples both' },
    q22: { symbol: 'Q_22', kind: 'modulus', name: 'stiffness across' },
    q66: { symbol: 'Q_66', kind: 'modulus', name: 'stiffness in shear' },
  },
  sources: [
    { key: 'nasa-rp-1351', locator: 'stiffness of a lamina' },
    { key: 'kaw', locator: 'chapter 2, as quoted' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the compliance of an orthotropic lamina' } },
  limits: [],
});
