import { finite, formula, listOfRows, nonNegative } from '../../formula/index.js';
import type { Mass } from '../../quantity/index.js';

/** A batch as it was weighed. */
export interface WeighedBatch {
  /** Mass of the base in it. */
  readonly base: Mass;
  /** Mass of the hardener in it. */
  readonly hardener: Mass;
}

export interface MixedMassInput {
  readonly batches: readonly WeighedBatch[];
}

/**
 * Mass of all batches together.
 *
 * $$m = \sum_i (m_{A,i} + m_{B,i})$$
 *
 * @param input.batches  base and hardener of each [kg], >= 0
 * @returns mass [kg]
 * @throws CalculationError `invalid-input`
 */
export function mixedMass(input: MixedMassInput): Mass {
  const { batches } = input;
  listOfRows(batches, 'batches');
  let m = 0;
  for (let i = 0; i < batches.length; i++) {
    const { base, hardener } = batches[i] as WeighedBatch;
    nonNegative(base, `batches[${i}].base`, 'kg');
    nonNegative(hardener, `batches[${i}].hardener`, 'kg');
    m += base + hardener;
  }
  finite(m, 'mass', 'kg');
  return m as Mass;
}

export const mixedMassFormula = /* @__PURE__ */ formula<MixedMassInput, Mass>({
  id: 'resin/mixed-mass',
  title: 'Mass of all batches',
  compute: mixedMass,
  equation: { algorithm: 'Sum of base and hardener over the batches.' },
  inputs: {
    batches: {
      symbol: 'batches',
      kind: 'list',
      name: 'batches as weighed',
      columns: { base: 'mass', hardener: 'mass' },
    },
  },
  output: { symbol: 'm', kind: 'mass', name: 'mass of all batches' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
