import { finite, formula, positive } from '../../formula/index.js';
import type { Modulus, Stress, Temperature, ThermalExpansion } from '../../quantity/index.js';

export interface RestrainedThermalStressInput {
  readonly modulus: Modulus;
  readonly expansion: ThermalExpansion;
  readonly tieInTemperature: Temperature;
  readonly operatingTemperature: Temperature;
}

/**
 * Longitudinal stress of a temperature change in a line that cannot move along its axis.
 *
 *$$S_T = E \alpha (T_1 - T_2)$$
 *
 * @param input.modulus               E of the pipe [Pa], > 0
 * @param input.expansion             alpha of the pipe [1/K], > 0
 * @param input.tieInTemperature      T_1, when the line was tied in [K], > 0
 * @param input.operatingTemperature  T_2 [K], > 0
 * @returns longitudinal stress [Pa], tension positive: a line hotter than at tie-in is in compression
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, full restraint.
 * @see ASME B31.8, 833; Pipeline Rules of Thumb Handbook, p. 121
 */
export function restrainedThermalStress(input: RestrainedThermalStressInput): Stress {
  const { modulus: E, expansion: alpha, tieInTemperature: T1, operatingTemperature: T2 } = input;
  positive(E, 'modulus', 'Pa');
  positive(alpha, 'expansion', '1/K');
  positive(T1, 'tieInTemperature', 'K');
  positive(T2, 'operatingTemperature', 'K');
  const stress = E * alpha * (T1 - T2);
  finite(stress, 'thermal stress', 'Pa');
  return stress as Stress;
}

export const restrainedThermalStressFormula = /* @__PURE__ */ formula<RestrainedThermalStressInput, Stress>({
  id: 'pipe/restrained-thermal-stress',
  title: 'Thermal stress of a restrained line',
  search: ['thermal expansion', 'buried line', 'hot line'],
  compute: restrainedThermalStress,
  equation: { expression: 'E * alpha * (T_1 - T_2)' },
  inputs: {
    modulus: { symbol: 'E', kind: 'modulus', name: "Young's modulus", sample: [150e9, 220e9] },
    expansion: { symbol: 'alpha', kind: 'thermal expansion', name: 'thermal expansion', sample: [1e-5, 2e-5] },
    tieInTemperature: { symbol: 'T_1', kind: 'temperature', name: 'temperature at tie-in', sample: [250, 320] },
    operatingTemperature: { symbol: 'T_2', kind: 'temperature', name: 'operating temperature', sample: [250, 450] },
  },
  output: { symbol: 'S_T', kind: 'stress', name: 'thermal stress' },
  sources: [
    { key: 'rules-of-thumb', locator: 'p. 121' },
    { key: 'asme-b31-8', locator: '833.3' },
  ],
  evidence: { form: { tag: 'published', derived: 'elastic strain that cancels the free expansion' } },
  limits: [],
});
