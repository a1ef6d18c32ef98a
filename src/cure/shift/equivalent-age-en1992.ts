import { finite, formula } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import { checkSteps, type TemperatureStep } from './temperature-step.js';

export interface EquivalentAgeEn1992Input {
  readonly steps: readonly TemperatureStep[];
}

/**
 * Equivalent age of concrete at 20 degC over a temperature history, in the rounded form of Eurocode 2.
 *
 * $$t_T = \sum \Delta t_i \exp\!\left(13.65 - \frac{4000}{273 + T_i}\right)$$
 *
 * @param input.steps stretches of constant temperature
 * @returns equivalent age at 20 degC [s]
 * @throws CalculationError `invalid-input`
 * @remarks Here only to check the sum over a history against published answers; not for resin. 13.65 rounds 4000/293, so
 *   that the factor at 20 degC is 0.99812, and the exponent means E = 33.26 kJ/mol.
 * @see EN 1992-1-1, Annex B
 */
export function equivalentAgeEn1992({ steps }: EquivalentAgeEn1992Input): Time {
  checkSteps(steps);
  let age = 0;
  for (const { duration, temperature } of steps) {
    // The form counts from 273, not 273.15.
    age += duration * Math.exp(13.65 - 4000 / (273 + (temperature - 273.15)));
  }
  finite(age, 'steps', 's');
  return age as Time;
}

export const equivalentAgeEn1992Formula = /* @__PURE__ */ formula<EquivalentAgeEn1992Input, Time>({
  id: 'cure/equivalent-age-en1992',
  title: 'Equivalent age of concrete, a check on the sum',
  search: ['maturity'],
  compute: equivalentAgeEn1992,
  equation: { algorithm: 'Sum over the steps of duration times exp(13.65 - 4000/(273 + T in degC)).' },
  inputs: {
    steps: {
      symbol: 'steps',
      kind: 'list',
      name: 'temperature history',
      columns: { duration: 'time', temperature: 'temperature' },
    },
  },
  output: { symbol: 't_T', kind: 'time', name: 'equivalent age at 20 degC' },
  sources: [{ key: 'en-1992-1-1', locator: 'Annex B, B.10' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
  inhomogeneous: 'its constants are tied to degrees Celsius',
});
