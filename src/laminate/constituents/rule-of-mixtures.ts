import { finite, formula, positive, properFraction, within } from '../../formula/index.js';
import type { Modulus } from '../../quantity/index.js';

export interface RuleOfMixturesInput {
  readonly fibreModulus: Modulus;
  readonly matrixModulus: Modulus;
  readonly fibreVolumeFraction: number;
  readonly voidFraction: number;
}

/**
 * Modulus of a ply along its fibres, by the rule of mixtures; voids carry nothing.
 *
 * $$E_1 = E_f V_f + E_m (1 - V_f - V_v)$$
 *
 * @param input.fibreModulus         E_f [Pa], > 0
 * @param input.matrixModulus        E_m [Pa], > 0
 * @param input.fibreVolumeFraction  V_f, from 0 up to, not including, 1
 * @param input.voidFraction         V_v, from 0 up to 1 - V_f
 * @returns modulus along the fibres [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks For screening, and to split the weight of a fabric into thickness: a measured laminate goes before it.
 * @see Chamis, NASA TM-83320, 1983
 */
export function ruleOfMixtures(input: RuleOfMixturesInput): Modulus {
  const { fibreModulus: Ef, matrixModulus: Em, fibreVolumeFraction: V, voidFraction: Vv } = input;
  positive(Ef, 'fibreModulus', 'Pa');
  positive(Em, 'matrixModulus', 'Pa');
  properFraction(V, 'fibreVolumeFraction');
  properFraction(Vv, 'voidFraction');
  within(V + Vv, 0, 1, 'fibreVolumeFraction + voidFraction', '');
  const result = Ef * V + Em * (1 - V - Vv);
  finite(result, 'modulus along the fibres', 'Pa');
  return result as Modulus;
}

export const ruleOfMixturesFormula = /* @__PURE__ */ formula<RuleOfMixturesInput, Modulus>({
  id: 'laminate/rule-of-mixtures',
  title: 'Modulus along the fibres',
  search: ['micromechanics', 'volume fraction'],
  compute: ruleOfMixtures,
  equation: { expression: 'E_f * V_f + E_m * (1 - V_f - V_v)' },
  inputs: {
    fibreModulus: { symbol: 'E_f', kind: 'modulus', name: 'modulus of the fibre along it', sample: [70e9, 240e9] },
    matrixModulus: { symbol: 'E_m', kind: 'modulus', name: 'modulus of the matrix', sample: [2e9, 4e9] },
    fibreVolumeFraction: { symbol: 'V_f', kind: 'number', name: 'fibre volume fraction', sample: [0.2, 0.7] },
    voidFraction: { symbol: 'V_v', kind: 'number', name: 'void fraction', sample: [0, 0.05] },
  },
  output: { symbol: 'E_1', kind: 'modulus', name: 'modulus along the fibres' },
  sources: [{ key: 'nasa-tm-83320', locator: 'ply properties, example 4.1' }],
  evidence: { form: { tag: 'secondary', derived: 'fibre and matrix side by side at one strain' } },
  limits: [],
});
