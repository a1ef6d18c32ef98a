import { finite, formula, positive } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface FlowStressMultipleInput {
  readonly yieldStrength: Stress;
  readonly multiple?: number;
}

/**
 * Flow stress as a multiple of the yield strength, 1.1 by default: the stress at which a strained ligament gives way.
 *
 * $$S_{flow} = 1.1\,S_y$$
 *
 * @param input.yieldStrength  S_y, specified minimum yield strength [Pa], > 0
 * @param input.multiple       k, > 0; 1.1 by default
 * @returns flow stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Below yield plus 69 MPa for every grade under 690 MPa. Not above the tensile strength.
 * @see ASME B31G, Level 1
 */
export function flowStressMultiple(input: FlowStressMultipleInput): Stress {
  const { yieldStrength: S, multiple: k = 1.1 } = input;
  positive(S, 'yieldStrength', 'Pa');
  positive(k, 'multiple', '');
  const flow = k * S;
  finite(flow, 'flow stress', 'Pa');
  return flow as Stress;
}

export const flowStressMultipleFormula = /* @__PURE__ */ formula<FlowStressMultipleInput, Stress>({
  id: 'pipe/flow-stress-multiple',
  title: 'Flow stress as a multiple of the yield strength',
  search: ['smys'],
  compute: flowStressMultiple,
  equation: { expression: 'k * S_y' },
  inputs: {
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'specified minimum yield strength', sample: [150e6, 700e6] },
    multiple: { symbol: 'k', kind: 'number', name: 'multiple of yield', sample: [1, 1.2], default: 1.1 },
  },
  output: { symbol: 'S_flow', kind: 'stress', name: 'flow stress' },
  sources: [{ key: 'asme-b31g', locator: 'flow stress, Level 1' }],
  evidence: { form: { tag: 'secondary' }, multiple: { tag: 'secondary' } },
  limits: [],
});
