import { atMost, formula, oneOf, positive } from '../../formula/index.js';
import type { Stress } from '../../quantity/index.js';

export interface LongitudinalStressLimitInput {
  readonly yieldStrength: Stress;
  readonly temperatureFactor?: number | undefined;
  readonly restraint: 'restrained' | 'unrestrained';
}

const choices = ['restrained', 'unrestrained'] as const;

/**
 * Greatest longitudinal stress that the gas pipeline code allows, by whether the line is restrained.
 *
 *$$S_{L,max} = k S T, \quad k = 0.9 \text{ restrained}, 0.75 \text{ not}$$
 *
 * @param input.yieldStrength      S, specified minimum yield strength [Pa], > 0
 * @param input.temperatureFactor  T, above 0 and at most 1; 1 when left out
 * @param input.restraint          `restrained` or `unrestrained`
 * @returns limit of the absolute value of S_L [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The 0.75 is recalled.
 * @see ASME B31.8, 833.3 and 833.6
 */
export function longitudinalStressLimit(input: LongitudinalStressLimitInput): Stress {
  const { yieldStrength: S, temperatureFactor: T = 1, restraint } = input;
  positive(S, 'yieldStrength', 'Pa');
  positive(T, 'temperatureFactor', '');
  atMost(T, 1, 'no derating', 'temperatureFactor', '');
  oneOf(restraint, choices, 'restraint');
  return ((restraint === 'restrained' ? 0.9 : 0.75) * S * T) as Stress;
}

export const longitudinalStressLimitFormula = /* @__PURE__ */ formula<LongitudinalStressLimitInput, Stress>({
  id: 'pipe/longitudinal-stress-limit',
  title: 'Limit of the longitudinal stress',
  compute: longitudinalStressLimit,
  equation: {
    branches: [{ when: 'restraint == "restrained"', expression: '0.9 * S * T' }, { expression: '0.75 * S * T' }],
  },
  inputs: {
    yieldStrength: { symbol: 'S', kind: 'stress', name: 'specified minimum yield strength', sample: [170e6, 555e6] },
    temperatureFactor: {
      symbol: 'T',
      kind: 'number',
      name: 'temperature derating factor',
      sample: [0.8, 1],
      default: 1,
    },
    restraint: {
      symbol: 'restraint',
      kind: 'choice',
      name: 'whether the line is held along its axis',
      choices: ['restrained', 'unrestrained'],
    },
  },
  output: { symbol: 'S_max', kind: 'stress', name: 'limit of longitudinal stress' },
  sources: [{ key: 'asme-b31-8', locator: '833.3, 833.6' }],
  evidence: { form: { tag: 'secondary' }, restrained: { tag: 'secondary' }, unrestrained: { tag: 'recalled' } },
  limits: [],
});
