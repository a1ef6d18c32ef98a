import { formula, positive } from '../../formula/index.js';
import type {
  ActivationEnergy,
  MolarHeatCapacity,
  RateConstant,
  SpecificEnergy,
  SpecificHeat,
  Temperature,
  Time,
} from '../../quantity/index.js';

export interface InductionTimeInput {
  readonly specificHeat: SpecificHeat;
  readonly temperature: Temperature;
  readonly heatOfReaction: SpecificEnergy;
  readonly rateConstant: RateConstant;
  readonly activationEnergy: ActivationEnergy;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Time in which a mass that loses no heat runs away: a floor for the pot life of a large batch.
 *
 * $$t_{ad} = \frac{c_p R T_0^2}{H k_0 E}$$
 *
 * @param input.specificHeat c_p, specific heat of the mix [J/(kg K)], > 0
 * @param input.temperature T_0, temperature at the start [K], > 0
 * @param input.heatOfReaction H, heat of reaction per mass of resin [J/kg], > 0
 * @param input.rateConstant k_0, rate constant at the start [1/s], > 0
 * @param input.activationEnergy E, activation energy [J/mol], > 0
 * @param input.gasConstant R, molar gas constant [J/(mol K)], > 0; 8.31446261815324 when not given
 * @returns induction time [s]
 * @throws CalculationError `invalid-input`
 * @remarks Zero-order kinetics; a warning, not a pot life.
 * @see Townsend and Tou 1980, as recalled
 */
export function inductionTime(input: InductionTimeInput): Time {
  const {
    specificHeat: cP,
    temperature: T0,
    heatOfReaction: H,
    rateConstant: k0,
    activationEnergy: E,
    gasConstant: R = 8.31446261815324 as MolarHeatCapacity,
  } = input;
  positive(cP, 'specificHeat', 'J/(kg K)');
  positive(T0, 'temperature', 'K');
  positive(H, 'heatOfReaction', 'J/kg');
  positive(k0, 'rateConstant', '1/s');
  positive(E, 'activationEnergy', 'J/mol');
  positive(R, 'gasConstant', 'J/(mol K)');
  const t = (cP * R * T0 * T0) / (H * k0 * E);
  positive(t, 'inductionTime', 's');
  return t as Time;
}

export const inductionTimeFormula = /* @__PURE__ */ formula<InductionTimeInput, Time>({
  id: 'resin/induction-time',
  title: 'Adiabatic induction time',
  search: ['exotherm', 'runaway'],
  compute: inductionTime,
  equation: { expression: 'c_p * R * T_0^2 / (H * k_0 * E)' },
  inputs: {
    specificHeat: { symbol: 'c_p', kind: 'specific heat', name: 'specific heat of the mix', sample: [800, 2500] },
    temperature: { symbol: 'T_0', kind: 'temperature', name: 'temperature at the start', sample: [273.15, 323.15] },
    heatOfReaction: {
      symbol: 'H',
      kind: 'specific energy',
      name: 'heat of reaction per mass of resin',
      sample: [50000.0, 600000.0],
    },
    rateConstant: { symbol: 'k_0', kind: 'rate constant', name: 'rate constant at the start', sample: [1e-6, 0.001] },
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [30000.0, 90000.0] },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
  },
  output: { symbol: 't_ad', kind: 'time', name: 'adiabatic induction time' },
  sources: [{ key: 'townsend-tou-1980', locator: 'time to maximum rate' }],
  evidence: { form: { tag: 'recalled', derived: 'energy balance marched in time' }, R: { tag: 'secondary' } },
  limits: [],
});
