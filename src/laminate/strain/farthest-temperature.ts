import { formula, positive } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';

export interface FarthestTemperatureInput {
  readonly installationTemperature: Temperature;
  readonly designTemperature: Temperature;
  readonly lowestTemperature: Temperature;
}

/**
 * The end of the temperature range that lies farthest from the day of the work: pipe and laminate part company most there.
 *
 * $$T = \begin{cases} T_l & |T_l - T_i| > |T_d - T_i| \\ T_d & \text{else} \end{cases}$$
 *
 * @param input.installationTemperature  T_i, of the pipe while the laminate cures [K], > 0
 * @param input.designTemperature        T_d [K], > 0
 * @param input.lowestTemperature        T_l, coldest steel over the life [K], > 0
 * @returns temperature [K]
 * @throws CalculationError `invalid-input`
 */
export function farthestTemperature(input: FarthestTemperatureInput): Temperature {
  const { installationTemperature: Ti, designTemperature: Td, lowestTemperature: Tl } = input;
  positive(Ti, 'installationTemperature', 'K');
  positive(Td, 'designTemperature', 'K');
  positive(Tl, 'lowestTemperature', 'K');
  return Math.abs(Tl - Ti) > Math.abs(Td - Ti) ? Tl : Td;
}

export const farthestTemperatureFormula = /* @__PURE__ */ formula<FarthestTemperatureInput, Temperature>({
  id: 'laminate/farthest-temperature',
  title: 'Service temperature farthest from that of the installation',
  search: ['thermal mismatch'],
  compute: farthestTemperature,
  equation: { branches: [{ when: 'abs(T_l - T_i) > abs(T_d - T_i)', expression: 'T_l' }, { expression: 'T_d' }] },
  inputs: {
    installationTemperature: {
      symbol: 'T_i',
      kind: 'temperature',
      name: 'temperature of the pipe during cure',
      sample: [275, 320],
    },
    designTemperature: { symbol: 'T_d', kind: 'temperature', name: 'design temperature', sample: [260, 380] },
    lowestTemperature: {
      symbol: 'T_l',
      kind: 'temperature',
      name: 'lowest temperature of the pipe',
      sample: [230, 300],
    },
  },
  output: { symbol: 'T', kind: 'temperature', name: 'temperature farthest from installation' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
