import { below, formula, nonNegative, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature, TemperatureDifference } from '../../quantity/index.js';

export interface RequiredCureTemperatureInput {
  readonly uncuredTransition: Temperature;
  readonly fullTransition: Temperature;
  readonly lambda: number;
  readonly targetConversion: Ratio;
  readonly cureTemperature: Temperature;
  readonly excess?: TemperatureDifference | undefined;
}

export interface RequiredCureTemperature {
  readonly requiredTemperature: Temperature;
  readonly targetTransition: Temperature;
  readonly attainableTransition: Temperature;
  readonly attainableConversion: Ratio;
  readonly needsPostHeat: boolean;
}

/**
 * Whether a degree of cure can be reached at the site's temperature at all, or only with heat.
 *
 * $$T_{req} = T_g(a) - \Delta T, \qquad T_g(a) = T_{g0} + \frac{\lambda a (T_{g\infty} - T_{g0})}{1 - (1-\lambda) a}$$
 *
 * @param input.uncuredTransition T_g0, of the fresh mix [K], > 0
 * @param input.fullTransition    T_g_inf, fully cured [K], above T_g0
 * @param input.lambda            shape, above 0 and up to 1
 * @param input.targetConversion  a, degree of cure that the design counts on, from 0 to 1
 * @param input.cureTemperature   T_cure, of the resin on the pipe [K], > 0
 * @param input.excess            dT, by which the glass transition ends above the cure temperature; 10 K when absent
 * @returns the cure temperature that the target needs; its glass transition; glass transition and degree of cure that
 *   T_cure can reach, however long the wait; and whether heat is needed
 * @throws CalculationError `invalid-input`
 * @remarks Cure stalls when the glass transition reaches about the cure temperature: 10 to 20 K above it by what was
 *   published; 10 K is the safe end. The wait goes by kinetics; this goes by temperature alone.
 * @see a public glass-transition model file; Cook and others 1998 (abstract)
 */
export function requiredCureTemperature(input: RequiredCureTemperatureInput): RequiredCureTemperature {
  const { uncuredTransition: T0, fullTransition: T1, lambda, targetConversion: a, cureTemperature: T } = input;
  const { excess = 10 as TemperatureDifference } = input;
  positive(T0, 'uncuredTransition', 'K');
  positive(T1, 'fullTransition', 'K');
  below(T0, T1, 'that of the fully cured resin', 'uncuredTransition', 'K');
  positive(lambda, 'lambda', '');
  within(lambda, 0, 1, 'lambda', '');
  within(a, 0, 1, 'targetConversion', '');
  positive(T, 'cureTemperature', 'K');
  nonNegative(excess, 'excess', 'K');
  // 1 - (1 - lambda) a, written so that it stays above 0 for the smallest shape.
  const target = T0 + (lambda * a * (T1 - T0)) / (1 - a + lambda * a);
  const attainable = Math.max(T0, Math.min(T1, T + excess));
  const y = (attainable - T0) / (T1 - T0);
  return {
    requiredTemperature: (target - excess) as Temperature,
    targetTransition: target as Temperature,
    attainableTransition: attainable as Temperature,
    attainableConversion: (y / (lambda + (1 - lambda) * y)) as Ratio,
    needsPostHeat: target > T + excess,
  };
}

/** Whether the site's temperature alone cannot reach the target. */
export function requiredCureTemperatureNeedsPostHeat(input: RequiredCureTemperatureInput): boolean {
  return requiredCureTemperature(input).needsPostHeat;
}

export const requiredCureTemperatureFormula = /* @__PURE__ */ formula<
  RequiredCureTemperatureInput,
  RequiredCureTemperature
>({
  id: 'cure/required-cure-temperature',
  title: 'Cure temperature that a degree of cure needs',
  search: ['post cure', 'heat blanket'],
  compute: requiredCureTemperature,
  equation: {
    where: [
      {
        symbol: 'T_ga',
        kind: 'temperature',
        expression: 'T_g0 + lambda * a * (T_g1 - T_g0) / (1 - (1 - lambda) * a)',
      },
    ],
    expression: 'T_ga - dT',
  },
  inputs: {
    uncuredTransition: {
      symbol: 'T_g0',
      kind: 'temperature',
      name: 'glass transition of the fresh mix',
      sample: [223.15, 263.15],
    },
    fullTransition: {
      symbol: 'T_g1',
      kind: 'temperature',
      name: 'glass transition fully cured',
      sample: [333.15, 503.15],
    },
    lambda: { symbol: 'lambda', kind: 'number', name: 'shape', sample: [0.3, 0.7] },
    targetConversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure wanted', sample: [0.7, 1] },
    cureTemperature: { symbol: 'T_cure', kind: 'temperature', name: 'cure temperature', sample: [278.15, 353.15] },
    excess: {
      symbol: 'dT',
      kind: 'temperature difference',
      name: 'end of the glass transition above the cure temperature',
      sample: [5, 20],
      default: 10,
    },
  },
  output: {
    requiredTemperature: { symbol: 'T_req', kind: 'temperature', name: 'cure temperature needed' },
    targetTransition: { symbol: 'T_gt', kind: 'temperature', name: 'glass transition at the degree of cure wanted' },
    attainableTransition: {
      symbol: 'T_ge',
      kind: 'temperature',
      name: 'highest glass transition at the cure temperature',
    },
    attainableConversion: { symbol: 'a_e', kind: 'ratio', name: 'highest degree of cure at the cure temperature' },
    needsPostHeat: { symbol: 'heat', kind: 'flag', name: 'heat is needed' },
  },
  sources: [
    { key: 'cure-solver-decks', locator: 'glass-transition model file' },
    { key: 'cook-1998', locator: 'abstract' },
  ],
  evidence: {
    form: { tag: 'secondary' },
    dT: { tag: 'chosen', note: 'lower end of the published 10 to 20 K' },
  },
  limits: [
    {
      sort: 'note',
      text: 'The degree of cure wanted is out of reach at this temperature, however long the wait: post-heat.',
      beyond: requiredCureTemperatureNeedsPostHeat,
    },
  ],
});
