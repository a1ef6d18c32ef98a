import { formula, positive, refuse, wholeNumber } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Mass } from '../../quantity/index.js';

export interface BatchPlan {
  readonly batches: number;
  readonly batchMass: Mass;
  readonly kits: number;
  /** What the opened kits hold beyond the mass to mix. */
  readonly surplus: Mass;
  readonly governing: 'job' | 'kit' | 'working time';
}

export interface BatchPlanInput {
  readonly mass: Mass;
  readonly usableMass: Mass;
  readonly kitMass: Mass;
  readonly wholeKits: boolean;
}

/**
 * Batches of equal mass that neither the working time nor the kit exceeds, and the kits to open.
 *
 * @param input.mass m, mass to mix, with waste [kg], > 0
 * @param input.usableMass m_u, mass usable in the working time [kg], > 0
 * @param input.kitMass m_k, mass of mix in one kit [kg], > 0
 * @param input.wholeKits whole, kits are mixed whole, never split by weighing, `true` when the maker allows no
 *   splitting
 * @returns batches, mass of each, kits, mass left over or mixed beyond the need, and what limits the batch
 * @throws CalculationError `invalid-input`; `no-solution` when a whole kit is more than the working time allows
 * @remarks A kit that is mixed whole is one batch; a split kit gives equal batches no larger than the kit or the
 *   usable mass.
 */
export function batchPlan(input: BatchPlanInput): BatchPlan {
  const { mass: m, usableMass: mU, kitMass: mK, wholeKits: whole } = input;
  positive(m, 'mass', 'kg');
  positive(mU, 'usableMass', 'kg');
  positive(mK, 'kitMass', 'kg');
  if (whole && mK > mU) kitTooLarge(mK, mU);
  const limit = whole ? mK : Math.min(mU, mK);
  const batches = countUp(m / limit);
  const kits = countUp(m / mK);
  wholeNumber(batches, 1, 'batches');
  wholeNumber(kits, 1, 'kits');
  // Within the slack of the count the kits may be short by a billionth: that is no surplus, not a negative one.
  const surplus = Math.max(0, kits * mK - m);
  return {
    batches,
    batchMass: (whole ? mK : m / batches) as Mass,
    kits,
    surplus: surplus as Mass,
    governing: batches === 1 ? 'job' : whole || mK <= mU ? 'kit' : 'working time',
  };
}

function kitTooLarge(value: number, usable: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'kitMass',
    value,
    unit: 'kg',
    constraint:
      'must be at most the mass usable in the working time, {limit}, if kits are mixed whole; split the kit by weighing, cool it, or take a smaller one',
    limit: usable,
  });
}

export const batchPlanFormula = /* @__PURE__ */ formula<BatchPlanInput, BatchPlan>({
  id: 'resin/batch-plan',
  title: 'Batches and kits',
  search: ['mixing', 'how much to mix'],
  compute: batchPlan,
  equation: {
    algorithm:
      'Batches m over the lesser of usable mass and kit mass, rounded up; equal masses unless kits are mixed whole; kits m over kit mass, rounded up.',
    winner: {
      name: 'the batches',
      equation: {
        branches: [
          {
            when: 'whole',
            where: [{ symbol: 'x', kind: 'number', expression: 'm / m_k' }],
            expression: 'ceil(x - 1e-9 * max(1, x))',
          },
          {
            where: [{ symbol: 'x', kind: 'number', expression: 'm / min(m_u, m_k)' }],
            expression: 'ceil(x - 1e-9 * max(1, x))',
          },
        ],
      },
    },
  },
  inputs: {
    mass: { symbol: 'm', kind: 'mass', name: 'mass to mix, with waste', sample: [0.1, 30] },
    usableMass: { symbol: 'm_u', kind: 'mass', name: 'mass usable in the working time', sample: [0.5, 10] },
    kitMass: { symbol: 'm_k', kind: 'mass', name: 'mass of mix in one kit', sample: [0.2, 10] },
    wholeKits: { symbol: 'whole', kind: 'flag', name: 'kits are mixed whole, never split by weighing' },
  },
  output: {
    batches: { symbol: 'N', kind: 'count', name: 'batches' },
    batchMass: { symbol: 'm_b', kind: 'mass', name: 'mass of each batch' },
    kits: { symbol: 'N_k', kind: 'count', name: 'kits to open' },
    surplus: { symbol: 'm_s', kind: 'mass', name: 'mass in the opened kits beyond the need' },
    governing: { symbol: 'governing', kind: 'choice', name: 'what limits the batch' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'batches mixed one after another until the mass is reached' } },
  limits: [],
});
