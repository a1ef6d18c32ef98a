import { below, finite, formula, positive, properFraction } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type {
  ActivationEnergy,
  MolarHeatCapacity,
  RateConstant,
  Ratio,
  Temperature,
  Time,
} from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';
import { timeBetween } from './rate-integral.js';

export interface TwoBranchTimeInput {
  readonly temperature: Temperature;
  readonly conversion: Ratio;
  readonly firstFactor?: RateConstant | undefined;
  readonly secondFactor?: RateConstant | undefined;
  readonly thirdFactor?: RateConstant | undefined;
  readonly firstEnergy?: ActivationEnergy | undefined;
  readonly secondEnergy?: ActivationEnergy | undefined;
  readonly thirdEnergy?: ActivationEnergy | undefined;
  readonly switchAt?: Ratio | undefined;
  readonly ceiling?: Ratio | undefined;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Time to a degree of cure by the two-branch law of an autoclave epoxy, at one temperature.
 *
 * $$\frac{da}{dt} = (k_1 + k_2 a)(1-a)(B-a) \text{ up to } a_s, \quad k_3 (1-a) \text{ beyond}, \qquad k_i = A_i e^{-E_i/RT}$$
 *
 * @param input.temperature  T [K], > 0
 * @param input.conversion   a, from 0 up to, not including, 1
 * @param input.firstFactor  A_1 [1/s]; A_2 may be negative
 * @param input.firstEnergy  E_1 [J/mol]
 * @param input.switchAt     a_s, 0.3 when absent
 * @param input.ceiling      B, 0.47 when absent, above a_s
 * @returns time from the start [s]
 * @throws CalculationError `invalid-input`; `no-solution` where the first branch stalls, below about 7 degC with these constants
 * @remarks The rate jumps at a_s, so each branch is integrated by itself. An autoclave resin: here to check the method,
 *   and the only public law of this kind.
 * @see Lee, Loos and Springer 1982, as two public programs carry it
 */
export function twoBranchTime(input: TwoBranchTimeInput): Time {
  const {
    temperature: T,
    conversion: a,
    switchAt: as = 0.3,
    ceiling: B = 0.47,
    gasConstant: R = molarGasConstant,
  } = input;
  const { firstFactor: A1 = 35016666.666666664, firstEnergy: E1 = 80700 } = input;
  const { secondFactor: A2 = -33566666.666666664, secondEnergy: E2 = 77800 } = input;
  const { thirdFactor: A3 = 3266.6666666666665, thirdEnergy: E3 = 56600 } = input;
  positive(T, 'temperature', 'K');
  properFraction(a, 'conversion');
  positive(A1, 'firstFactor', '1/s');
  finite(A2, 'secondFactor', '1/s');
  positive(A3, 'thirdFactor', '1/s');
  positive(E1, 'firstEnergy', 'J/mol');
  positive(E2, 'secondEnergy', 'J/mol');
  positive(E3, 'thirdEnergy', 'J/mol');
  positive(R, 'gasConstant', 'J/(mol K)');
  properFraction(as, 'switchAt');
  properFraction(B, 'ceiling');
  below(as, B, 'the ceiling of the first branch', 'switchAt', '');
  const k1 = A1 * Math.exp(-E1 / (R * T));
  const k2 = A2 * Math.exp(-E2 / (R * T));
  const k3 = A3 * Math.exp(-E3 / (R * T));
  const first = timeBetween((x, left) => (k1 + k2 * x) * left * (B - x), 0, Math.min(a, as));
  const t = a <= as ? first : first + Math.log((1 - as) / (1 - a)) / k3;
  finite(t, 'temperature', 'K');
  return t as Time;
}

export const twoBranchTimeFormula = /* @__PURE__ */ formula<TwoBranchTimeInput, Time>({
  id: 'cure/two-branch-time',
  title: 'Time to a degree of cure, two-branch law',
  compute: twoBranchTime,
  equation: {
    algorithm:
      'Integral of 1/((k_1 + k_2 a)(1 - a)(B - a)) up to a_s by adaptive Simpson, then log((1 - a_s)/(1 - a))/k_3; each k is A exp(-E/(R T)).',
  },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [353.15, 453.15] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0.05, 0.98] },
    firstFactor: {
      symbol: 'A_1',
      kind: 'rate constant',
      name: 'first frequency factor',
      sample: [3.5e7, 3.51e7],
      default: 35016666.666666664,
    },
    secondFactor: {
      symbol: 'A_2',
      kind: 'rate constant',
      name: 'second frequency factor',
      sample: [-3.36e7, -3.35e7],
      default: -33566666.666666664,
    },
    thirdFactor: {
      symbol: 'A_3',
      kind: 'rate constant',
      name: 'third frequency factor',
      sample: [3200, 3300],
      default: 3266.6666666666665,
    },
    firstEnergy: {
      symbol: 'E_1',
      kind: 'activation energy',
      name: 'first activation energy',
      sample: [80600, 80700],
      default: 80700,
    },
    secondEnergy: {
      symbol: 'E_2',
      kind: 'activation energy',
      name: 'second activation energy',
      sample: [77800, 77900],
      default: 77800,
    },
    thirdEnergy: {
      symbol: 'E_3',
      kind: 'activation energy',
      name: 'third activation energy',
      sample: [56000, 57000],
      default: 56600,
    },
    switchAt: {
      symbol: 'a_s',
      kind: 'ratio',
      name: 'degree of cure at the switch',
      sample: [0.28, 0.32],
      default: 0.3,
    },
    ceiling: { symbol: 'B', kind: 'ratio', name: 'ceiling of the first branch', sample: [0.45, 0.49], default: 0.47 },
    gasConstant,
  },
  output: { symbol: 't', kind: 'time', name: 'time' },
  sources: [
    { key: 'lee-loos-springer-1982', locator: 'cure kinetics' },
    { key: 'cure-solver-decks', locator: 'constants per minute: 2.101e9, -2.014e9, 1.960e5' },
  ],
  evidence: {
    form: { tag: 'secondary' },
    A_1: { tag: 'secondary', note: 'one of the two decks has 2.102e9 per minute' },
    A_2: { tag: 'secondary' },
    A_3: { tag: 'secondary' },
    E_1: { tag: 'secondary' },
    E_2: { tag: 'secondary' },
    E_3: { tag: 'secondary' },
    a_s: { tag: 'secondary' },
    B: { tag: 'secondary' },
  },
  limits: [],
});
