import { below, formula, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';

export interface ConversionFromTransitionInput {
  readonly uncuredTransition: Temperature;
  readonly fullTransition: Temperature;
  readonly lambda: number;
  readonly transition: Temperature;
}

/**
 * Degree of cure that a measured glass transition shows (DiBenedetto, inverted).
 *
 * $$a = \frac{y}{\lambda + (1-\lambda) y}, \qquad y = \frac{T_g - T_{g0}}{T_{g\infty} - T_{g0}}$$
 *
 * @param input.uncuredTransition T_g0, of the fresh mix [K], > 0
 * @param input.fullTransition    T_g_inf, fully cured [K], above T_g0
 * @param input.lambda            shape, above 0 and up to 1
 * @param input.transition        T_g, measured [K], from T_g0 to T_g_inf
 * @returns degree of cure
 * @throws CalculationError `invalid-input`
 * @see a public glass-transition model file
 */
export function conversionFromTransition(input: ConversionFromTransitionInput): Ratio {
  const { uncuredTransition: T0, fullTransition: T1, lambda, transition: Tg } = input;
  positive(T0, 'uncuredTransition', 'K');
  positive(T1, 'fullTransition', 'K');
  below(T0, T1, 'that of the fully cured resin', 'uncuredTransition', 'K');
  positive(lambda, 'lambda', '');
  within(lambda, 0, 1, 'lambda', '');
  within(Tg, T0, T1, 'transition', 'K');
  const y = (Tg - T0) / (T1 - T0);
  return (y / (lambda + (1 - lambda) * y)) as Ratio;
}

export const conversionFromTransitionFormula = /* @__PURE__ */ formula<ConversionFromTransitionInput, Ratio>({
  id: 'cure/conversion-from-transition',
  title: 'Degree of cure from a measured glass transition',
  search: ['tg', 'dsc', 'under-cured'],
  compute: conversionFromTransition,
  equation: {
    where: [{ symbol: 'y', kind: 'number', expression: '(T_g - T_g0) / (T_g1 - T_g0)' }],
    expression: 'y / (lambda + (1 - lambda) * y)',
  },
  inputs: {
    uncuredTransition: {
      symbol: 'T_g0',
      kind: 'temperature',
      name: 'glass transition of the fresh mix',
      sample: [223.15, 273.15],
    },
    fullTransition: {
      symbol: 'T_g1',
      kind: 'temperature',
      name: 'glass transition fully cured',
      sample: [353.15, 503.15],
    },
    lambda: { symbol: 'lambda', kind: 'number', name: 'shape', sample: [0.3, 0.7] },
    transition: { symbol: 'T_g', kind: 'temperature', name: 'glass transition measured', sample: [283.15, 343.15] },
  },
  output: { symbol: 'a', kind: 'ratio', name: 'degree of cure' },
  sources: [{ key: 'cure-solver-decks', locator: 'glass-transition model file' }],
  evidence: { form: { tag: 'secondary', derived: 'inverse of the transition' } },
  limits: [],
});
