import { finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface PressurePerKelvinInput {
  readonly startPressure: GaugePressure;
  readonly endPressure: GaugePressure;
  readonly startTemperature: Temperature;
  readonly endTemperature: Temperature;
  readonly step?: TemperatureDifference | undefined;
}

/**
 * How far the pressure of a blocked line moves for one kelvin, from its pressures at two temperatures.
 *
 * $$P' = \frac{P_2 - P_1}{T_2 - T_1} \Delta T$$
 *
 * @param input.startPressure    P_1, at T_1 [Pa], >= 0
 * @param input.endPressure      P_2, at T_2 [Pa], >= 0
 * @param input.startTemperature T_1 [K], > 0
 * @param input.endTemperature   T_2 [K], > 0, another than T_1
 * @param input.step             dT, for which the change is stated [K], > 0; 1 K when not given
 * @returns change of pressure with warming, below 0 in water colder than about 4 degC [Pa]
 * @throws CalculationError `invalid-input`
 */
export function pressurePerKelvin(input: PressurePerKelvinInput): GaugePressure {
  const { startPressure: P1, endPressure: P2, startTemperature: T1, endTemperature: T2 } = input;
  const { step: dT = 1 as TemperatureDifference } = input;
  nonNegative(P1, 'startPressure', 'Pa');
  nonNegative(P2, 'endPressure', 'Pa');
  positive(T1, 'startTemperature', 'K');
  positive(T2, 'endTemperature', 'K');
  positive(dT, 'step', 'K');
  if (T1 === T2) {
    const constraint = 'must be another than at the start: one temperature tells no change';
    refuse({ code: 'invalid-input', parameter: 'endTemperature', value: T2, unit: 'K', constraint });
  }
  const change = ((P2 - P1) / (T2 - T1)) * dT;
  finite(change, 'change of pressure', 'Pa');
  return change as GaugePressure;
}

export const pressurePerKelvinFormula = /* @__PURE__ */ formula<PressurePerKelvinInput, GaugePressure>({
  id: 'acceptance/pressure-per-kelvin',
  title: 'Change of pressure for one kelvin',
  search: ['hydrotest', 'psi per degree', 'thermal'],
  compute: pressurePerKelvin,
  equation: { expression: '(P_2 - P_1) / (T_2 - T_1) * dT' },
  inputs: {
    startPressure: { symbol: 'P_1', kind: 'gauge pressure', name: 'pressure at the start', sample: [1e6, 15e6] },
    endPressure: { symbol: 'P_2', kind: 'gauge pressure', name: 'pressure at the end', sample: [1e6, 15e6] },
    startTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature at the start', sample: [275, 290] },
    endTemperature: { symbol: 'T_2', kind: 'temperature', name: 'temperature at the end', sample: [291, 310] },
    step: {
      symbol: 'dT',
      kind: 'temperature difference',
      name: 'warming for which it is stated',
      sample: [0.5, 2],
      default: 1,
    },
  },
  output: { symbol: 'dP', kind: 'gauge pressure', name: 'change of pressure' },
  sources: [],
  evidence: { form: { tag: 'chosen' }, step: { tag: 'chosen' } },
  limits: [],
});
