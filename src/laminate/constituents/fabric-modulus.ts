import { finite, formula, positive, properFraction, within } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface FabricModulusInput {
  readonly orientationFactor: number;
  readonly lengthFactor: number;
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
}

/**
 * Modulus of a laminate of cloth or mat by the orientation of its fibres (Krenchel).
 *
 * $$E = \eta_0 \eta_L E_f V_f + E_m (1 - V_f)$$
 *
 * @param input.orientationFactor    eta_0, from `orientationFactor`, 0 to 1
 * @param input.lengthFactor         eta_L, about 1 for continuous fibre and strands of 50 mm, 0 to 1
 * @param input.fibreModulus         E_f [Pa], > 0
 * @param input.matrixModulus        E_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @returns modulus [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks It leaves out the yarns that lie across, so it is low for cloth: two plies of one direction at 0 and 90 degrees by
 *   `effectiveConstants`, less 5 to 15 % for crimp, are nearer.
 * @see Krenchel 1964, as recalled
 */
export function fabricModulus(input: FabricModulusInput): Modulus {
  const {
    orientationFactor: eta0,
    lengthFactor: etaL,
    fibreModulus: Ef,
    matrixModulus: Em,
    fibreVolumeFraction: V,
  } = input;
  within(eta0, 0, 1, 'orientationFactor', '');
  within(etaL, 0, 1, 'lengthFactor', '');
  positive(Ef, 'fibreModulus', 'Pa');
  positive(Em, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  const result = eta0 * etaL * Ef * V + Em * (1 - V);
  finite(result, 'modulus', 'Pa');
  return result as Modulus;
}

export const fabricModulusFormula = /* @__PURE__ */ formula<FabricModulusInput, Modulus>({
  id: 'laminate/fabric-modulus',
  title: 'Modulus of a cloth or mat',
  search: ['woven', 'chopped strand mat'],
  compute: fabricModulus,
  equation: { expression: 'eta_0 * eta_L * E_f * V_f + E_m * (1 - V_f)' },
  inputs: {
    orientationFactor: { symbol: 'eta_0', kind: 'number', name: 'orientation factor', sample: [0.2, 1] },
    lengthFactor: { symbol: 'eta_L', kind: 'number', name: 'length factor', sample: [0.8, 1] },
    fibreModulus: { symbol: 'E_f', kind: 'modulus', name: 'modulus of the fibre along it', sample: [70e9, 240e9] },
    matrixModulus: { symbol: 'E_m', kind: 'modulus', name: 'modulus of the matrix', sample: [2e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
  },
  output: { symbol: 'E', kind: 'modulus', name: 'modulus' },
  sources: [{ key: 'krenchel', locator: 'efficiency of reinforcement, as recalled' }],
  evidence: { form: { tag: 'recalled', derived: 'fibres of one direction each carry by their own strain' } },
  limits: [],
});
