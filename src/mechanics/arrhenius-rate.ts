import { formula, positive, refuse } from '../formula/index.js';
import type { ActivationEnergy, MolarHeatCapacity, RateConstant, Temperature } from '../quantity/index.js';
import { molarGasConstant } from './arrhenius-shift.js';

export interface ArrheniusRateInput {
  readonly frequencyFactor: RateConstant;
  readonly activationEnergy: ActivationEnergy;
  readonly temperature: Temperature;
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

/**
 * Rate constant of a thermally activated reaction (Arrhenius).
 *
 * $$k = A \exp\!\left(-\frac{E}{R T}\right)$$
 *
 * @param input.frequencyFactor  A [1/s], > 0
 * @param input.activationEnergy E [J/mol], > 0
 * @param input.temperature      T [K], > 0
 * @param input.gasConstant      R [J/(mol K)], > 0
 * @returns rate constant [1/s]
 * @throws CalculationError `invalid-input`; `outside-validity` when the rate is too small for a number
 * @remarks A and E belong to one fit and one kinetic law: never mix them between sets.
 * @see CODATA 2018 for R
 */
export function arrheniusRate(input: ArrheniusRateInput): RateConstant {
  const { frequencyFactor: A, activationEnergy: E, temperature: T, gasConstant: R = molarGasConstant } = input;
  positive(A, 'frequencyFactor', '1/s');
  positive(E, 'activationEnergy', 'J/mol');
  positive(T, 'temperature', 'K');
  positive(R, 'gasConstant', 'J/(mol K)');
  const k = A * Math.exp(-E / (R * T));
  if (!(k > 0)) {
    refuse({
      code: 'outside-validity',
      parameter: 'temperature',
      value: T,
      unit: 'K',
      constraint: 'must be high enough for a rate above 0',
    });
  }
  return k as RateConstant;
}

export const arrheniusRateFormula = /* @__PURE__ */ formula<ArrheniusRateInput, RateConstant>({
  id: 'mechanics/arrhenius-rate',
  title: 'Arrhenius rate constant',
  search: ['reaction rate', 'activation energy', 'temperature dependence'],
  compute: arrheniusRate,
  equation: { expression: 'A * exp(-E / (R * T))' },
  inputs: {
    frequencyFactor: { symbol: 'A', kind: 'rate constant', name: 'frequency factor', sample: [1e3, 1e10] },
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy', sample: [30e3, 110e3] },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [253.15, 453.15] },
    gasConstant: {
      symbol: 'R',
      kind: 'molar heat capacity',
      name: 'molar gas constant',
      sample: [8.314, 8.3145],
      default: 8.31446261815324,
    },
  },
  output: { symbol: 'k', kind: 'rate constant', name: 'rate constant' },
  sources: [{ key: 'codata-2018', locator: 'molar gas constant' }],
  evidence: { form: { tag: 'secondary' }, R: { tag: 'secondary', derived: 'product of two defined constants' } },
  limits: [],
});
