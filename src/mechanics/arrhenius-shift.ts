import { formula, positive, refuse } from '../formula/index.js';
import type { ActivationEnergy, MolarHeatCapacity, Ratio, Temperature } from '../quantity/index.js';

/** Molar gas constant: the Avogadro constant times the Boltzmann constant, 6.02214076e23 x 1.380649e-23, exact since 2019. */
export const molarGasConstant = 8.31446261815324 as MolarHeatCapacity;

export interface ArrheniusShiftInput {
  readonly activationEnergy: ActivationEnergy;
  readonly referenceTemperature: Temperature;
  readonly temperature: Temperature;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * How much faster a thermally activated process runs than at its reference temperature (Arrhenius).
 *
 * $$a_T = \exp\!\left[\frac{E}{R}\left(\frac{1}{T_{ref}} - \frac{1}{T}\right)\right]$$
 *
 * @param input.activationEnergy     E [J/mol], > 0
 * @param input.referenceTemperature T_ref [K], > 0
 * @param input.temperature          T [K], > 0
 * @param input.gasConstant          R [J/(mol K)], > 0
 * @returns rate at T over rate at T_ref
 * @throws CalculationError `invalid-input`; `outside-validity` when the factor is too large or too small for a number
 * @remarks Computed as E (T - T_ref)/(R T T_ref): the difference of two near temperatures is exact, that of their
 *   reciprocals is not. One activation energy holds only inside the span of temperature in which it was measured.
 * @see CODATA 2018 for R
 */
export function arrheniusShift(input: ArrheniusShiftInput): Ratio {
  const { activationEnergy: E, referenceTemperature: Tref, temperature: T, gasConstant: R = molarGasConstant } = input;
  positive(E, 'activationEnergy', 'J/mol');
  positive(Tref, 'referenceTemperature', 'K');
  positive(T, 'temperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const aT = Math.exp((E * (T - Tref)) / (R * T * Tref));
  if (!(aT > 1e-300 && aT < 1e300)) beyondNumbers(T);
  return aT as Ratio;
}

function beyondNumbers(T: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'temperature',
    value: T,
    unit: 'K',
    constraint: 'the shift factor against the reference temperature must lie between 1e-300 and 1e300',
  });
}

export const arrheniusShiftFormula = /* @__PURE__ */ formula<ArrheniusShiftInput, Ratio>({
  id: 'mechanics/arrhenius-shift',
  title: 'Arrhenius shift factor',
  search: ['acceleration factor', 'time temperature shift', 'activation energy'],
  compute: arrheniusShift,
  equation: { expression: 'exp(E / R * (1 / T_ref - 1 / T))' },
  inputs: {
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [30e3, 110e3] },
    referenceTemperature: {
      symbol: 'T_ref',
      kind: 'temperature',
      name: 'reference temperature',
      sample: [273.15, 373.15],
    },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [253.15, 453.15] },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
  },
  output: { symbol: 'a_T', kind: 'ratio', name: 'shift factor' },
  sources: [
    { key: 'astm-c1074', locator: 'equivalent age' },
    { key: 'codata-2018', locator: 'molar gas constant' },
  ],
  evidence: { form: { tag: 'secondary' }, R: { tag: 'secondary', derived: 'product of two defined constants' } },
  limits: [],
});
