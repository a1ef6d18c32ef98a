import { formula, positive } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface WarmedTemperatureInput {
  readonly temperature: Temperature;
  readonly step?: TemperatureDifference | undefined;
  readonly turn?: Temperature | undefined;
}

/**
 * A temperature one step beside that of the water, still where its density is known: above it, or below it near the
 * upper end.
 *
 * $$T_2 = \begin{cases} T + \Delta T & T \le T_t \\ T - \Delta T & T > T_t \end{cases}$$
 *
 * @param input.temperature T, of the water [K], > 0
 * @param input.step        dT, the step [K], > 0; 1 K when not given
 * @param input.turn        T_t, above which the step goes down [K], > 0; 309 K when not given, two kelvin below the end
 * @returns temperature [K]
 * @throws CalculationError `invalid-input`
 */
export function warmedTemperature(input: WarmedTemperatureInput): Temperature {
  const { temperature: T, step: dT = 1 as TemperatureDifference, turn: Tt = 309 as Temperature } = input;
  positive(T, 'temperature', 'K');
  positive(dT, 'step', 'K');
  positive(Tt, 'turn', 'K');
  const T2 = T > Tt ? T - dT : T + dT;
  positive(T2, 'temperature beside that of the water', 'K');
  return T2 as Temperature;
}

export const warmedTemperatureFormula = /* @__PURE__ */ formula<WarmedTemperatureInput, Temperature>({
  id: 'acceptance/warmed-temperature',
  title: 'Temperature one step beside that of the water',
  compute: warmedTemperature,
  equation: { branches: [{ when: 'T > T_t', expression: 'T - dT' }, { expression: 'T + dT' }] },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the water', sample: [275, 310.5] },
    step: { symbol: 'dT', kind: 'temperature difference', name: 'step', sample: [0.5, 2], default: 1 },
    turn: {
      symbol: 'T_t',
      kind: 'temperature',
      name: 'above which the step goes down',
      sample: [305, 309],
      default: 309,
    },
  },
  output: { symbol: 'T_2', kind: 'temperature', name: 'temperature beside it' },
  sources: [],
  evidence: { form: { tag: 'chosen' }, step: { tag: 'chosen' }, turn: { tag: 'chosen' } },
  limits: [],
});
