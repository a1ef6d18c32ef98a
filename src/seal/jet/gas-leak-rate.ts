import { atMost, finite, formula, positive } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type {
  AbsolutePressure,
  Area,
  MassFlow,
  MolarHeatCapacity,
  MolarMass,
  Ratio,
  Temperature,
} from '../../quantity/index.js';
import { criticalPressureRatio } from './critical-pressure-ratio.js';

/** Mass flow, and whether the gas leaves at the speed of sound. */
export interface GasLeakRate {
  readonly massFlow: MassFlow;
  readonly regime: 'choked' | 'unchoked';
  readonly criticalRatio: Ratio;
}

export interface GasLeakRateInput {
  readonly insidePressure: AbsolutePressure;
  readonly outsidePressure: AbsolutePressure;
  readonly temperature: Temperature;
  readonly molarMass: MolarMass;
  readonly heatCapacityRatio: number;
  readonly holeArea: Area;
  readonly dischargeCoefficient?: number | undefined;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Mass flow of an ideal gas out of a hole, choked or not.
 *
 * $$\dot m = C_d A p_1 \sqrt{\frac{M}{R T}} \begin{cases} \sqrt{k} \left(\frac{2}{k+1}\right)^{\frac{k+1}{2(k-1)}} & r \le r_c \\ \sqrt{\frac{2k}{k-1}\left(r^{2/k} - r^{(k+1)/k}\right)} & r > r_c \end{cases}$$
 *
 * @param input.insidePressure p_1, absolute pressure inside [Pa], > 0
 * @param input.outsidePressure p_2, absolute pressure outside [Pa], > 0, at most p_1
 * @param input.temperature T, temperature of the gas inside [K], > 0
 * @param input.molarMass M, molar mass of the gas [kg/mol], > 0
 * @param input.heatCapacityRatio k, ratio of the heat capacities, 1.01 to 1.67
 * @param input.holeArea A, area of the hole [m2], > 0
 * @param input.dischargeCoefficient C_d, discharge coefficient of the hole, > 0, at most 1; 1, the most, when not
 *   given
 * @param input.gasConstant R, molar gas constant [J/(mol K)], > 0
 * @returns mass flow [kg/s], `choked` or `unchoked`, and the critical pressure ratio
 * @throws CalculationError `invalid-input`
 * @remarks Ideal gas, no liquid in it, no heat taken up in the hole. About 0.61 for a sharp hole, 0.80 for a short
 *   tube, 0.98 for a nozzle; nobody measured a corroded hole, so the default of 1 overstates rather than
 *   understates.
 * @see choked flow, on public web pages
 */
export function gasLeakRate(input: GasLeakRateInput): GasLeakRate {
  const { insidePressure: p1, outsidePressure: p2, temperature: T, molarMass: M, heatCapacityRatio: k } = input;
  const { holeArea: A, dischargeCoefficient: Cd = 1, gasConstant: R = molarGasConstant } = input;
  positive(p1, 'insidePressure', 'Pa');
  positive(p2, 'outsidePressure', 'Pa');
  atMost(p2, p1, 'the pressure inside', 'outsidePressure', 'Pa');
  positive(T, 'temperature', 'K');
  positive(M, 'molarMass', 'kg/mol');
  positive(A, 'holeArea', 'm2');
  positive(Cd, 'dischargeCoefficient', '');
  atMost(Cd, 1, 'the ideal flow', 'dischargeCoefficient', '');
  positive(R, 'gasConstant', 'J/(mol K)');
  const criticalRatio = criticalPressureRatio({ heatCapacityRatio: k });
  const regime = p2 <= criticalRatio * p1 ? 'choked' : 'unchoked';
  const massFlow =
    Cd * A * p1 * Math.sqrt(M / (R * T)) * (regime === 'choked' ? chokedFlow(k) : unchokedFlow(k, p2 / p1));
  finite(massFlow, 'leak rate', 'kg/s');
  return { massFlow: massFlow as MassFlow, regime, criticalRatio };
}

/** Flow function at the speed of sound. */
function chokedFlow(k: number): number {
  return Math.sqrt(k) * Math.exp((-(k + 1) / (2 * (k - 1))) * Math.log1p((k - 1) / 2));
}

/** Flow function below it; expm1 keeps the digits where the two pressures are close. */
function unchokedFlow(k: number, r: number): number {
  const ln = Math.log(r);
  return Math.sqrt(((2 * k) / (k - 1)) * Math.exp((2 * ln) / k) * (0 - Math.expm1(((k - 1) / k) * ln)));
}

export const gasLeakRateFormula = /* @__PURE__ */ formula<GasLeakRateInput, GasLeakRate>({
  id: 'seal/gas-leak-rate',
  title: 'Leak rate of a gas',
  search: ['choked flow', 'orifice'],
  compute: gasLeakRate,
  equation: {
    where: [
      { symbol: 'r_c', kind: 'ratio', expression: '(2 / (k + 1))^(k / (k - 1))' },
      { symbol: 'r', kind: 'ratio', expression: 'p_2 / p_1' },
    ],
    branches: [
      {
        when: 'p_2 <= r_c * p_1',
        expression: 'C_d * A * p_1 * sqrt(M / (R * T)) * sqrt(k) * (2 / (k + 1))^((k + 1) / (2 * (k - 1)))',
      },
      {
        expression: 'C_d * A * p_1 * sqrt(M / (R * T)) * sqrt(2 * k / (k - 1) * (r^(2 / k) - r^((k + 1) / k)))',
      },
    ],
  },
  inputs: {
    insidePressure: {
      symbol: 'p_1',
      kind: 'absolute pressure',
      name: 'absolute pressure inside',
      sample: [110e3, 400e3],
    },
    outsidePressure: {
      symbol: 'p_2',
      kind: 'absolute pressure',
      name: 'absolute pressure outside',
      sample: [90e3, 110e3],
    },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the gas inside', sample: [250, 450] },
    molarMass: { symbol: 'M', kind: 'molar mass', name: 'molar mass of the gas', sample: [0.002, 0.06] },
    heatCapacityRatio: { symbol: 'k', kind: 'number', name: 'ratio of the heat capacities', sample: [1.05, 1.667] },
    holeArea: { symbol: 'A', kind: 'area', name: 'area of the hole', sample: [1e-6, 0.001] },
    dischargeCoefficient: {
      symbol: 'C_d',
      kind: 'number',
      name: 'discharge coefficient of the hole',
      sample: [0.5, 1],
      default: 1,
    },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
  },
  output: {
    massFlow: { symbol: 'm_g', kind: 'mass flow', name: 'leak rate' },
    regime: { symbol: 'regime', kind: 'choice', name: 'kind of flow' },
    criticalRatio: { symbol: 'r_c', kind: 'ratio', name: 'critical pressure ratio' },
  },
  sources: [{ key: 'web-seal-examples', locator: 'choked flow' }],
  evidence: {
    form: { tag: 'secondary', derived: 'greatest isentropic flow over the pressure in the hole' },
    dischargeCoefficient: { tag: 'chosen', note: 'default: the most that a hole can pass' },
    R: { tag: 'secondary', derived: 'product of two defined constants' },
  },
  limits: [],
});
