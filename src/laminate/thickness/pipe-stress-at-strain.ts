import { finite, formula, positive } from '../../formula/index.js';
import type { Modulus, Strain, Stress } from '../../quantity/index.js';

export interface PipeStressAtStrainInput {
  readonly limitStress: Stress;
  readonly substrateModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Stress that the pipe under a laminate comes to before either of the two is at its limit.
 *
 * $$s_h = \min(s,\, E_s \varepsilon)$$
 *
 * @param input.limitStress       s, of the pipe: its allowable stress, or its yield strength where it may yield [Pa], > 0
 * @param input.substrateModulus  E_s [Pa], > 0
 * @param input.allowableStrain   eps, of the laminate in this direction, > 0
 * @returns stress of the pipe [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Pipe and laminate strain alike. Where the laminate reaches its strain first, the pipe under it has not come to
 *   its own limit, and counts with what it carries at that strain.
 */
export function pipeStressAtStrain(input: PipeStressAtStrainInput): Stress {
  const { limitStress: s, substrateModulus: Es, allowableStrain: eps } = input;
  positive(s, 'limitStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const atStrain = Es * eps;
  finite(atStrain, 'stress at the allowable strain', 'Pa');
  return Math.min(s, atStrain) as Stress;
}

export const pipeStressAtStrainFormula = /* @__PURE__ */ formula<PipeStressAtStrainInput, Stress>({
  id: 'laminate/pipe-stress-at-strain',
  title: 'Stress of the pipe when pipe or laminate is at its limit',
  compute: pipeStressAtStrain,
  equation: { expression: 'min(s, E_s * eps)' },
  inputs: {
    limitStress: {
      symbol: 's',
      kind: 'stress',
      name: 'allowable stress or yield strength of the pipe',
      sample: [8e7, 5e8],
    },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    allowableStrain: {
      symbol: 'eps',
      kind: 'strain',
      name: 'allowable strain of the laminate',
      sample: [0.0005, 0.004],
    },
  },
  output: { symbol: 's_h', kind: 'stress', name: 'stress of the pipe' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'elastic-plastic march of pipe and laminate at equal strain' } },
  limits: [],
});
