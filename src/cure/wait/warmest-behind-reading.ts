import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface WarmestBehindReadingInput {
  readonly reading: Temperature;
  readonly error: TemperatureDifference;
}

/**
 * The warmest that steel or air may be where a thermometer shows a reading.
 *
 * $$T = T_r + e$$
 *
 * @param input.reading T_r, what is read or foreseen [K], > 0
 * @param input.error   e, error of the thermometer [K], >= 0
 * @returns temperature [K]
 * @throws CalculationError `invalid-input`
 */
export function warmestBehindReading(input: WarmestBehindReadingInput): Temperature {
  const { reading: Tr, error: e } = input;
  positive(Tr, 'reading', 'K');
  nonNegative(e, 'error', 'K');
  const T = Tr + e;
  positive(T, 'warmest temperature', 'K');
  return T as Temperature;
}

export const warmestBehindReadingFormula = /* @__PURE__ */ formula<WarmestBehindReadingInput, Temperature>({
  id: 'cure/warmest-behind-reading',
  title: 'Warmest that a reading may stand for',
  compute: warmestBehindReading,
  equation: { expression: 'T_r + e' },
  inputs: {
    reading: { symbol: 'T_r', kind: 'temperature', name: 'what is read or foreseen', sample: [275, 320] },
    error: { symbol: 'e', kind: 'temperature difference', name: 'error of the thermometer', sample: [0.1, 3] },
  },
  output: { symbol: 'T', kind: 'temperature', name: 'warmest that it may be' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
