import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface LeastSteelReadingInput {
  readonly minimumTemperature: Temperature;
  readonly thermometerError: TemperatureDifference;
  readonly freezingPoint?: Temperature | undefined;
}

/**
 * What the thermometer on the steel has to show, so that the resin cures and nothing freezes whatever its error.
 *
 * $$T = \max(T_{min}, T_0) + e$$
 *
 * @param input.minimumTemperature T_min, coldest at which every resin of the job cures [K], > 0
 * @param input.thermometerError   e, by how much the thermometer may read too high [K], >= 0
 * @param input.freezingPoint      T_0, of water [K]; 273.15 when not given
 * @returns least reading [K]
 * @throws CalculationError `invalid-input`
 */
export function leastSteelReading(input: LeastSteelReadingInput): Temperature {
  const { minimumTemperature: least, thermometerError: e, freezingPoint: T0 = 273.15 as Temperature } = input;
  positive(least, 'minimumTemperature', 'K');
  nonNegative(e, 'thermometerError', 'K');
  positive(T0, 'freezingPoint', 'K');
  const reading = Math.max(least, T0) + e;
  finite(reading, 'leastSteelReading', 'K');
  return reading as Temperature;
}

export const leastSteelReadingFormula = /* @__PURE__ */ formula<LeastSteelReadingInput, Temperature>({
  id: 'site/least-steel-reading',
  title: 'Least reading of the steel',
  search: ['surface temperature', '3 degrees above dew point'],
  compute: leastSteelReading,
  equation: { expression: 'max(T_min, T_0) + e' },
  inputs: {
    minimumTemperature: {
      symbol: 'T_min',
      kind: 'temperature',
      name: 'coldest at which every resin cures',
      sample: [263.15, 293.15],
    },
    thermometerError: {
      symbol: 'e',
      kind: 'temperature difference',
      name: 'error of the thermometer',
      sample: [0, 2],
    },
    freezingPoint: {
      symbol: 'T_0',
      kind: 'temperature',
      name: 'freezing point of water',
      sample: [273.1, 273.2],
      default: 273.15,
    },
  },
  output: { symbol: 'T', kind: 'temperature', name: 'least reading of the steel' },
  sources: [],
  evidence: { form: { tag: 'practice' }, freezingPoint: { tag: 'recalled', note: '0 degC' } },
  limits: [],
});
