import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface DnvTensileStrengthInput {
  readonly tensileStrength: Stress;
  readonly derating?: Stress;
  readonly strengthFactor: number;
}

/**
 * Tensile strength to be used in DNV-RP-F101, Part A.
 *
 * $$f_u = (\mathrm{SMTS} - f_{u,temp})\,\alpha_u$$
 *
 * @param input.tensileStrength  SMTS, specified minimum tensile strength [Pa], > 0
 * @param input.derating         f_temp, loss of strength at the temperature [Pa], >= 0 and < SMTS; 0 by default
 * @param input.strengthFactor   alpha_u, > 0: 0.96, or 1 where the strength is better known
 * @returns tensile strength to be used [Pa]
 * @throws CalculationError `invalid-input`
 * @see DNV-RP-F101, Part A
 */
export function dnvTensileStrength(input: DnvTensileStrengthInput): Stress {
  const { tensileStrength: S, derating = 0, strengthFactor: alpha } = input;
  positive(S, 'tensileStrength', 'Pa');
  nonNegative(derating, 'derating', 'Pa');
  below(derating, S, 'the tensile strength', 'derating', 'Pa');
  positive(alpha, 'strengthFactor', '');
  const strength = (S - derating) * alpha;
  finite(strength, 'tensile strength to be used', 'Pa');
  return strength as Stress;
}

export const dnvTensileStrengthFormula = /* @__PURE__ */ formula<DnvTensileStrengthInput, Stress>({
  id: 'pipe/dnv-tensile-strength',
  title: 'Tensile strength to be used in DNV-RP-F101, Part A',
  compute: dnvTensileStrength,
  equation: { expression: '(SMTS - f_temp) * alpha_u' },
  inputs: {
    tensileStrength: {
      symbol: 'SMTS',
      kind: 'stress',
      name: 'specified minimum tensile strength',
      sample: [300e6, 800e6],
    },
    derating: {
      symbol: 'f_temp',
      kind: 'stress',
      name: 'loss of strength at the temperature',
      sample: [0, 60e6],
      default: 0,
    },
    strengthFactor: { symbol: 'alpha_u', kind: 'number', name: 'material strength factor', sample: [0.9, 1] },
  },
  output: { symbol: 'f_u', kind: 'stress', name: 'tensile strength to be used' },
  sources: [{ key: 'dnv-rp-f101', locator: 'Part A' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
