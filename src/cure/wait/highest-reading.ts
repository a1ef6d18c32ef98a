import { below, formula, nonNegative, positive } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface HighestReadingInput {
  readonly warmest: Temperature;
  readonly error: TemperatureDifference;
}

/**
 * The highest reading of a thermometer behind which steel or air is surely no warmer than it may be.
 *
 * $$T_r = T - e$$
 *
 * @param input.warmest T, the warmest that it may be [K], > 0
 * @param input.error   e, error of the thermometer [K], from 0 up to, not including, T
 * @returns reading [K]
 * @throws CalculationError `invalid-input`
 */
export function highestReading(input: HighestReadingInput): Temperature {
  const { warmest: T, error: e } = input;
  positive(T, 'warmest', 'K');
  nonNegative(e, 'error', 'K');
  below(e, T, 'the warmest temperature', 'error', 'K');
  const Tr = T - e;
  positive(Tr, 'highest reading', 'K');
  return Tr as Temperature;
}

export const highestReadingFormula = /* @__PURE__ */ formula<HighestReadingInput, Temperature>({
  id: 'cure/highest-reading',
  title: 'Highest reading that is surely no warmer',
  compute: highestReading,
  equation: { expression: 'T - e' },
  inputs: {
    warmest: { symbol: 'T', kind: 'temperature', name: 'the warmest that it may be', sample: [275, 320] },
    error: { symbol: 'e', kind: 'temperature difference', name: 'error of the thermometer', sample: [0.1, 3] },
  },
  output: { symbol: 'T_r', kind: 'temperature', name: 'highest reading' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
