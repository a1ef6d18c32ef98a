import { formula } from '../../formula/index.js';
import { checkReadings } from './hardness-readings.js';

export interface HardnessStatistics {
  readonly mean: number;
  readonly count: number;
  readonly standardDeviation: number;
  readonly minimum: number;
}

export interface HardnessStatisticsInput {
  readonly readings: readonly number[];
}

/**
 * Mean, scatter and lowest of a set of hardness readings.
 *
 * $$s = \sqrt{\frac{\sum (h_i - \bar h)^2}{n - 1}}$$
 *
 * @param input.readings h, readings on one scale, 0 to 100, two or more
 * @returns mean, number, standard deviation of the sample and lowest reading
 * @throws CalculationError `invalid-input`
 * @remarks One reading has no scatter, so it is refused. Read on a cold surface: a warm one reads low.
 */
export function hardnessStatistics(input: HardnessStatisticsInput): HardnessStatistics {
  const { readings } = input;
  checkReadings(readings, 2);
  const count = readings.length;
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  const standardDeviation = Math.sqrt(squares / (count - 1));
  const minimum = readings.reduce((least, reading) => Math.min(least, reading));
  return { mean, count, standardDeviation, minimum };
}

export const hardnessStatisticsFormula = /* @__PURE__ */ formula<HardnessStatisticsInput, HardnessStatistics>({
  id: 'acceptance/hardness-statistics',
  title: 'Mean and scatter of hardness readings',
  search: ['barcol', 'shore', 'standard deviation'],
  compute: hardnessStatistics,
  equation: {
    algorithm: 'Sum of the readings over their number; root of the squared deviations over one less than their number.',
  },
  inputs: {
    readings: { symbol: 'h', kind: 'list', name: 'hardness readings', columns: { value: 'number' } },
  },
  output: {
    mean: { symbol: 'h_m', kind: 'number', name: 'mean hardness' },
    count: { symbol: 'n', kind: 'count', name: 'number of readings' },
    standardDeviation: { symbol: 's_h', kind: 'number', name: 'standard deviation' },
    minimum: { symbol: 'h_1', kind: 'number', name: 'lowest reading' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'sum of squares over all pairs of readings' } },
  limits: [],
});
