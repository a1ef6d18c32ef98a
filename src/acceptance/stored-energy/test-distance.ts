import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Energy, Length, Mass, SpecificEnergy } from '../../quantity/index.js';

export interface TestDistanceInput {
  readonly energy: Energy;
  readonly specificEnergy?: SpecificEnergy | undefined;
  readonly scaledDistance?: Length | undefined;
  readonly referenceMass?: Mass | undefined;
  readonly lowEnergy?: Energy | undefined;
  readonly highEnergy?: Energy | undefined;
  readonly lowDistance?: Length | undefined;
  readonly highDistance?: Length | undefined;
}

/**
 * Distance to keep from a pressure test.
 *
 * $$R = R_s \sqrt[3]{\frac{2 E}{q\, m_0}}, \quad \text{at least 30 m up to 135.5 MJ, at least 60 m up to 271 MJ}$$
 *
 * @param input.energy         E, stored energy [J], >= 0
 * @param input.specificEnergy q, energy of TNT [J/kg], > 0; 4.26692 MJ/kg when not given
 * @param input.scaledDistance R_s, distance from the reference mass of TNT [m], > 0; 20 when not given, and no less by the
 *   source
 * @param input.referenceMass  m_0 [kg], > 0; 1 when not given
 * @param input.lowEnergy      E_1, up to which the lower floor holds [J], > 0 and < E_2; 135.5 MJ when not given
 * @param input.highEnergy     E_2, up to which the upper floor holds [J], > 0; 271 MJ when not given
 * @param input.lowDistance    R_1, floor up to E_1 [m], >= 0; 30 when not given
 * @param input.highDistance   R_2, floor up to E_2 [m], >= 0; 60 when not given
 * @returns distance [m]
 * @throws CalculationError `invalid-input`
 * @remarks From blast alone: fragments of a pipe fly further. For a liquid test it is the floor that counts.
 * @see ASME PCC-2, article 501, appendix III, as quoted on a piping page
 */
export function testDistance(input: TestDistanceInput): Length {
  const { energy: E, specificEnergy: q = 4266920 as SpecificEnergy, scaledDistance: Rs = 20 as Length } = input;
  const { referenceMass: m0 = 1 as Mass, lowEnergy: E1 = 135.5e6 as Energy, highEnergy: E2 = 271e6 as Energy } = input;
  const { lowDistance: R1 = 30 as Length, highDistance: R2 = 60 as Length } = input;
  nonNegative(E, 'energy', 'J');
  positive(q, 'specificEnergy', 'J/kg');
  positive(Rs, 'scaledDistance', 'm');
  positive(m0, 'referenceMass', 'kg');
  positive(E1, 'lowEnergy', 'J');
  positive(E2, 'highEnergy', 'J');
  below(E1, E2, 'the upper energy', 'lowEnergy', 'J');
  nonNegative(R1, 'lowDistance', 'm');
  nonNegative(R2, 'highDistance', 'm');
  const blast = Rs * Math.cbrt((2 * E) / (q * m0));
  finite(blast, 'distance', 'm');
  if (E <= E1) return Math.max(R1, blast) as Length;
  return (E <= E2 ? Math.max(R2, blast) : blast) as Length;
}

/** Whether the stored energy is above what the rule takes without a study of its own. */
export function testDistanceEnergyAboveRule(input: TestDistanceInput): boolean {
  return input.energy > (input.highEnergy ?? 271e6);
}

/** Whether the distance is taken closer than the source allows. */
export function testDistanceCloserThanRule(input: TestDistanceInput): boolean {
  return (input.scaledDistance ?? 20) < 20 * Math.cbrt(input.referenceMass ?? 1);
}

export const testDistanceFormula = /* @__PURE__ */ formula<TestDistanceInput, Length>({
  id: 'acceptance/test-distance',
  title: 'Distance from a pressure test',
  search: ['safe distance', 'exclusion zone', 'pneumatic test'],
  compute: testDistance,
  equation: {
    where: [{ symbol: 'R_b', kind: 'length', expression: 'R_s * cbrt(2 * E / (q * m_0))' }],
    branches: [
      { when: 'E <= E_1', expression: 'max(R_1, R_b)' },
      { when: 'E <= E_2', expression: 'max(R_2, R_b)' },
      { expression: 'R_b' },
    ],
  },
  inputs: {
    energy: { symbol: 'E', kind: 'energy', name: 'stored energy', sample: [1e3, 500e6] },
    specificEnergy: {
      symbol: 'q',
      kind: 'specific energy',
      name: 'energy of TNT',
      sample: [4.1e6, 4.7e6],
      default: 4266920,
    },
    scaledDistance: {
      symbol: 'R_s',
      kind: 'length',
      name: 'distance from the reference mass of TNT',
      sample: [20, 40],
      default: 20,
    },
    referenceMass: { symbol: 'm_0', kind: 'mass', name: 'reference mass of TNT', sample: [0.9, 1.1], default: 1 },
    lowEnergy: {
      symbol: 'E_1',
      kind: 'energy',
      name: 'energy up to which the lower floor holds',
      sample: [100e6, 150e6],
      default: 135.5e6,
    },
    highEnergy: {
      symbol: 'E_2',
      kind: 'energy',
      name: 'energy up to which the upper floor holds',
      sample: [200e6, 300e6],
      default: 271e6,
    },
    lowDistance: { symbol: 'R_1', kind: 'length', name: 'lower floor', sample: [20, 100], default: 30 },
    highDistance: { symbol: 'R_2', kind: 'length', name: 'upper floor', sample: [50, 200], default: 60 },
  },
  output: { symbol: 'R', kind: 'length', name: 'distance to keep' },
  sources: [{ key: 'test-energy-page', locator: 'article 501, appendix III' }],
  evidence: {
    form: { tag: 'secondary' },
    scaledDistance: { tag: 'secondary' },
    lowEnergy: { tag: 'secondary' },
    highEnergy: { tag: 'secondary' },
    lowDistance: { tag: 'secondary' },
    highDistance: { tag: 'secondary' },
    specificEnergy: { tag: 'secondary' },
  },
  limits: [
    {
      sort: 'note',
      text: 'Stored energy above 271 MJ: split the volume, test with liquid, or have a blast study made.',
      beyond: testDistanceEnergyAboveRule,
      source: { key: 'test-energy-page', locator: 'article 501, appendix III' },
    },
    {
      sort: 'note',
      text: 'Scaled distance below 20 m for a kilogram, the least of the source.',
      beyond: testDistanceCloserThanRule,
      source: { key: 'test-energy-page', locator: 'article 501, appendix III' },
    },
  ],
});
