import { finite, formula, nonNegative, oneOf } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

const edges = ['pulled', 'pushed'] as const;

export interface StressAtEdgeInput {
  readonly longitudinalStress: Stress;
  readonly bendingStress: Stress;
  readonly edge: (typeof edges)[number];
}

/**
 * Longitudinal stress at the side of a pipe that bending pulls, or pushes.
 *
 * $$S_e = S_L \pm S_B$$
 *
 * @param input.longitudinalStress  S_L, of all but bending [Pa], tension positive
 * @param input.bendingStress       S_B, size of the stress of bending [Pa], >= 0
 * @param input.edge                'pulled', where bending adds, or 'pushed', where it takes off
 * @returns longitudinal stress [Pa], tension positive
 * @throws CalculationError `invalid-input`
 */
export function stressAtEdge(input: StressAtEdgeInput): Stress {
  const { longitudinalStress: SL, bendingStress: SB, edge } = input;
  finite(SL, 'longitudinalStress', 'Pa');
  nonNegative(SB, 'bendingStress', 'Pa');
  oneOf(edge, edges, 'edge');
  const stress = edge === 'pulled' ? SL + SB : SL - SB;
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const stressAtEdgeFormula = /* @__PURE__ */ formula<StressAtEdgeInput, Stress>({
  id: 'pipe/stress-at-edge',
  title: 'Longitudinal stress at the side of a bent pipe',
  compute: stressAtEdge,
  equation: { branches: [{ when: 'edge == "pulled"', expression: 'S_L + S_B' }, { expression: 'S_L - S_B' }] },
  inputs: {
    longitudinalStress: { symbol: 'S_L', kind: 'stress', name: 'stress without bending', sample: [-200e6, 300e6] },
    bendingStress: { symbol: 'S_B', kind: 'stress', name: 'stress of bending', sample: [0, 300e6] },
    edge: { symbol: 'edge', kind: 'choice', name: 'side of the bent pipe', choices: ['pulled', 'pushed'] },
  },
  output: { symbol: 'S_e', kind: 'stress', name: 'longitudinal stress' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'sum of stresses that act together' } },
  limits: [],
});
