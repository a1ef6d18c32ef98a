import { finite, formula, positive } from '../../formula/index.js';
import type { Mass } from '../../quantity/index.js';

export interface BatchSplit {
  readonly massA: Mass;
  readonly massB: Mass;
}

export interface BatchSplitInput {
  readonly batchMass: Mass;
  readonly partsA: number;
  readonly partsB: number;
}

/**
 * Masses of A and B to weigh out for a batch.
 *
 * $$m_A = m \frac{P_A}{P_A + P_B}$$
 *
 * @param input.batchMass m, mass of the batch [kg], > 0
 * @param input.partsA P_A, parts of A by mass, > 0
 * @param input.partsB P_B, parts of B by mass, > 0
 * @returns mass of A and mass of B [kg]
 * @throws CalculationError `invalid-input`
 */
export function batchSplit(input: BatchSplitInput): BatchSplit {
  const { batchMass: m, partsA: PA, partsB: PB } = input;
  positive(m, 'batchMass', 'kg');
  positive(PA, 'partsA', '');
  positive(PB, 'partsB', '');
  const parts = PA + PB;
  finite(parts, 'partsA', '');
  const [massA, massB] = [(m * PA) / parts, (m * PB) / parts];
  positive(massA, 'massA', 'kg');
  positive(massB, 'massB', 'kg');
  return { massA: massA as Mass, massB: massB as Mass };
}

export const batchSplitFormula = /* @__PURE__ */ formula<BatchSplitInput, BatchSplit>({
  id: 'resin/batch-split',
  title: 'Masses of A and B in a batch',
  search: ['part a', 'part b', 'mix ratio'],
  compute: batchSplit,
  equation: { expression: 'm * P_A / (P_A + P_B)' },
  inputs: {
    batchMass: { symbol: 'm', kind: 'mass', name: 'mass of the batch', sample: [0.05, 20] },
    partsA: { symbol: 'P_A', kind: 'number', name: 'parts of A by mass', sample: [1, 100] },
    partsB: { symbol: 'P_B', kind: 'number', name: 'parts of B by mass', sample: [1, 100] },
  },
  output: {
    massA: { symbol: 'm_A', kind: 'mass', name: 'mass of A' },
    massB: { symbol: 'm_B', kind: 'mass', name: 'mass of B' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'the two masses make the batch in the stated ratio' } },
  limits: [],
});
