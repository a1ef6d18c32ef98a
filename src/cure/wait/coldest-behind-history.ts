import { below, formula, nonNegative } from '../../formula/index.js';
import type { Temperature, TemperatureDifference } from '../../quantity/index.js';
import { checkSteps, type TemperatureStep } from '../shift/temperature-step.js';

export interface ColdestBehindHistoryInput {
  readonly steps: readonly TemperatureStep[];
  readonly error: TemperatureDifference;
}

export interface ColdestBehindHistory {
  /** The coldest of all stretches. */
  readonly coldest: Temperature;
  /** The history with the steel as cold as it may be in each stretch. */
  readonly steps: readonly TemperatureStep[];
}

/**
 * The coldest that steel may be over a temperature history whose readings have an error: a wait for a cure counts from it.
 *
 * $$T'(t) = T(t) - e$$
 *
 * @param input.steps stretches of constant temperature in a row, as they are read or foreseen
 * @param input.error e, error of the thermometer [K], from 0 up to, not including, the coldest temperature
 * @returns the coldest that the steel may be at any time, and the stretches, each colder by the error
 * @throws CalculationError `invalid-input`
 */
export function coldestBehindHistory(input: ColdestBehindHistoryInput): ColdestBehindHistory {
  const { steps: before, error: e } = input;
  checkSteps(before);
  nonNegative(e, 'error', 'K');
  let lowest = Number.POSITIVE_INFINITY;
  for (const { temperature } of before) lowest = Math.min(lowest, temperature);
  below(e, lowest, 'the coldest temperature of the history', 'error', 'K');
  const steps = before.map(({ duration, temperature }) => ({
    duration,
    temperature: (temperature - e) as Temperature,
  }));
  return { coldest: (lowest - e) as Temperature, steps };
}

export const coldestBehindHistoryFormula = /* @__PURE__ */ formula<ColdestBehindHistoryInput, ColdestBehindHistory>({
  id: 'cure/coldest-behind-history',
  title: 'Coldest that a temperature history may stand for',
  compute: coldestBehindHistory,
  equation: { algorithm: 'Each stretch of the history keeps its duration, and its temperature is less by e.' },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'temperature history',
      columns: { duration: 'time', temperature: 'temperature' },
    },
    error: { symbol: 'e', kind: 'temperature difference', name: 'error of the thermometer', sample: [0.1, 3] },
  },
  output: {
    coldest: { symbol: 'T_cold', kind: 'temperature', name: 'coldest that the steel may be' },
    steps: {
      symbol: 'cold',
      kind: 'list',
      name: 'history behind the readings',
      columns: { duration: 'time', temperature: 'temperature' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
