import { finite, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Energy, GaugePressure, Length, Modulus, Volume } from '../../quantity/index.js';

export interface LiquidTestEnergy {
  readonly total: Energy;
  readonly liquid: Energy;
  readonly wall: Energy;
}

export interface LiquidTestEnergyInput {
  readonly pressure: GaugePressure;
  readonly volume: Volume;
  readonly bulkModulus?: Modulus | undefined;
  readonly insideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus?: Modulus | undefined;
  readonly poissonRatio?: number | undefined;
}

/**
 * Stored energy of a test with liquid: in the liquid, and in the wall that it stretches.
 *
 * $$E = \frac{P^2 V}{2 B} + P^2 V \frac{d}{2 t E_s} \left(\frac{5}{4} - \nu\right)$$
 *
 * @param input.pressure       P, test pressure [Pa], >= 0
 * @param input.volume         V, volume under test [m3], > 0
 * @param input.bulkModulus    B, bulk modulus of the liquid [Pa], > 0; 2.2e9, water, when not given
 * @param input.insideDiameter d, inside diameter [m], > 0
 * @param input.wallThickness  t, wall thickness [m], > 0
 * @param input.modulus        E_s, modulus of the pipe [Pa], > 0; 207e9 when not given
 * @param input.poissonRatio   nu, 0 to 0.5; 0.3 when not given
 * @returns energy in all, of the liquid and of the wall with closed ends [J]
 * @throws CalculationError `invalid-input`
 * @remarks Without gas: a pocket of air adds its own energy, hundreds of times that of as much water.
 */
export function liquidTestEnergy(input: LiquidTestEnergyInput): LiquidTestEnergy {
  const { pressure: P, volume: V, insideDiameter: d, wallThickness: t } = input;
  const { bulkModulus: B = 2.2e9 as Modulus, modulus: Es = 207e9 as Modulus, poissonRatio: nu = 0.3 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(V, 'volume', 'm3');
  positive(B, 'bulkModulus', 'Pa');
  positive(d, 'insideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  positive(Es, 'modulus', 'Pa');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const liquid = (P * P * V) / (2 * B);
  const wall = P * P * V * (d / (2 * t * Es)) * (1.25 - nu);
  const total = liquid + wall;
  finite(total, 'energy of the test', 'J');
  return { total: total as Energy, liquid: liquid as Energy, wall: wall as Energy };
}

export const liquidTestEnergyFormula = /* @__PURE__ */ formula<LiquidTestEnergyInput, LiquidTestEnergy>({
  id: 'acceptance/liquid-test-energy',
  title: 'Stored energy of a test with liquid',
  search: ['hydrotest'],
  compute: liquidTestEnergy,
  equation: { expression: 'P^2 * V / (2 * B) + P^2 * V * (d / (2 * t * E_s)) * (1.25 - nu)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'test pressure', sample: [0, 20e6] },
    volume: { symbol: 'V', kind: 'volume', name: 'volume under test', sample: [0.01, 1000] },
    bulkModulus: {
      symbol: 'B',
      kind: 'modulus',
      name: 'bulk modulus of the liquid',
      sample: [1e9, 2.5e9],
      default: 2.2e9,
    },
    insideDiameter: { symbol: 'd', kind: 'length', name: 'inside diameter', sample: [0.05, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.002, 0.025] },
    modulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [190e9, 215e9], default: 207e9 },
    poissonRatio: {
      symbol: 'nu',
      kind: 'number',
      name: "Poisson's ratio of the pipe",
      sample: [0.25, 0.35],
      default: 0.3,
    },
  },
  output: {
    total: { symbol: 'E', kind: 'energy', name: 'stored energy' },
    liquid: { symbol: 'E_l', kind: 'energy', name: 'energy of the liquid' },
    wall: { symbol: 'E_w', kind: 'energy', name: 'energy of the wall' },
  },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'work of pumping against the liquid and the thin closed cylinder' },
    bulkModulus: { tag: 'practice', note: 'water' },
    modulus: { tag: 'practice', note: 'carbon steel' },
    poissonRatio: { tag: 'practice', note: '0.3 for steel' },
  },
  limits: [],
});
