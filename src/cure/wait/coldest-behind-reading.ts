import { below, formula, nonNegative, positive } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface ColdestBehindReadingInput {
  readonly reading: Temperature;
  readonly error: TemperatureDifference;
}

/**
 * The coldest that steel or air may be where a thermometer shows a reading: a wait for a cure counts from it.
 *
 * $$T = T_r - e$$
 *
 * @param input.reading T_r, what is read or foreseen [K], > 0
 * @param input.error   e, error of the thermometer [K], from 0 up to, not including, T_r
 * @returns temperature [K]
 * @throws CalculationError `invalid-input`
 */
export function coldestBehindReading(input: ColdestBehindReadingInput): Temperature {
  const { reading: Tr, error: e } = input;
  positive(Tr, 'reading', 'K');
  nonNegative(e, 'error', 'K');
  below(e, Tr, 'the reading', 'error', 'K');
  const T = Tr - e;
  positive(T, 'coldest temperature', 'K');
  return T as Temperature;
}

export const coldestBehindReadingFormula = /* @__PURE__ */ formula<ColdestBehindReadingInput, Temperature>({
  id: 'cure/coldest-behind-reading',
  title: 'Coldest that a reading may stand for',
  compute: coldestBehindReading,
  equation: { expression: 'T_r - e' },
  inputs: {
    reading: { symbol: 'T_r', kind: 'temperature', name: 'what is read or foreseen', sample: [275, 320] },
    error: { symbol: 'e', kind: 'temperature difference', name: 'error of the thermometer', sample: [0.1, 3] },
  },
  output: { symbol: 'T', kind: 'temperature', name: 'coldest that it may be' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
