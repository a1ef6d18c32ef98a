import { formula, refuse } from '../../formula/index.js';
import { checkReadings } from './hardness-readings.js';

export interface BarcolShopMean {
  readonly mean: number;
  readonly count: number;
  readonly droppedHighest: number;
  readonly droppedLowest: number;
}

export interface BarcolShopMeanInput {
  readonly readings: readonly number[];
}

/**
 * Barcol hardness by the shop rule: ten to twelve readings, the highest and the lowest dropped, the rest averaged.
 *
 * @param input.readings h, ten to twelve Barcol readings, 0 to 100
 * @returns mean of the rest, how many that are, and the two readings that were dropped
 * @throws CalculationError `invalid-input`; `outside-validity` with fewer than ten or more than twelve readings
 * @remarks For a shop's record. It hides the softest reading, so it releases no hold point: the hardness gate does.
 *   A veil or wax at the surface costs 2 to 3 points, which are to be corrected first.
 * @see Fabricating bulletin of vinyl-ester resins
 */
export function barcolShopMean(input: BarcolShopMeanInput): BarcolShopMean {
  const { readings } = input;
  checkReadings(readings, 1);
  if (readings.length < 10 || readings.length > 12) wrongNumber(readings.length);
  const inOrder = [...readings].sort((a, b) => a - b);
  const rest = inOrder.slice(1, -1);
  return {
    mean: rest.reduce((sum, reading) => sum + reading, 0) / rest.length,
    count: rest.length,
    droppedHighest: inOrder.at(-1) ?? 0,
    droppedLowest: inOrder[0] ?? 0,
  };
}

function wrongNumber(count: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'readings',
    value: count,
    unit: 'readings',
    constraint: 'the rule takes ten to twelve readings',
    source: 'fabricating bulletin of vinyl-ester resins',
  });
}

export const barcolShopMeanFormula = /* @__PURE__ */ formula<BarcolShopMeanInput, BarcolShopMean>({
  id: 'acceptance/barcol-shop-mean',
  title: 'Barcol hardness by the shop rule',
  search: [],
  compute: barcolShopMean,
  equation: { algorithm: 'Put the readings in order, drop the first and the last, and average the rest.' },
  inputs: {
    readings: { symbol: 'h', kind: 'list', name: 'Barcol readings', columns: { value: 'number' } },
  },
  output: {
    mean: { symbol: 'h_m', kind: 'number', name: 'mean of the rest' },
    count: { symbol: 'n', kind: 'count', name: 'readings averaged' },
    droppedHighest: { symbol: 'h_max', kind: 'number', name: 'highest reading, dropped' },
    droppedLowest: { symbol: 'h_min', kind: 'number', name: 'lowest reading, dropped' },
  },
  sources: [{ key: 'vinyl-ester-bulletin', locator: 'Barcol hardness' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [{ sort: 'stop', text: 'Ten to twelve readings.' }],
});
