import { formula, positive, refuse } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface FlowStressMeanInput {
  readonly yieldStrength: Stress;
  readonly tensileStrength: Stress;
}

/**
 * Flow stress as the mean of yield and tensile strength.
 *
 * $$S_{flow} = \frac{S_y + S_u}{2}$$
 *
 * @param input.yieldStrength    S_y, specified minimum yield strength [Pa], > 0
 * @param input.tensileStrength  S_u, specified minimum tensile strength [Pa], >= S_y
 * @returns flow stress [Pa]
 * @throws CalculationError `invalid-input`
 * @see ASME B31G, flow stress
 */
export function flowStressMean(input: FlowStressMeanInput): Stress {
  const { yieldStrength: S, tensileStrength: U } = input;
  positive(S, 'yieldStrength', 'Pa');
  positive(U, 'tensileStrength', 'Pa');
  if (U < S) {
    const constraint = `must be at least the yield strength, ${S} Pa`;
    refuse({ code: 'invalid-input', parameter: 'tensileStrength', value: U, unit: 'Pa', constraint });
  }
  return (S / 2 + U / 2) as Stress;
}

export const flowStressMeanFormula = /* @__PURE__ */ formula<FlowStressMeanInput, Stress>({
  id: 'pipe/flow-stress-mean',
  title: 'Flow stress as the mean of yield and tensile strength',
  search: ['smys', 'smts'],
  compute: flowStressMean,
  equation: { expression: '(S_y + S_u) / 2' },
  inputs: {
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'specified minimum yield strength', sample: [150e6, 600e6] },
    tensileStrength: {
      symbol: 'S_u',
      kind: 'stress',
      name: 'specified minimum tensile strength',
      sample: [300e6, 800e6],
    },
  },
  output: { symbol: 'S_flow', kind: 'stress', name: 'flow stress' },
  sources: [{ key: 'asme-b31g', locator: 'flow stress' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
