import { below, finite, formula, positive, within } from '../../formula/index.js';
import type { Temperature } from '../../quantity/index.js';
import type { DiBenedettoInput } from './di-benedetto.js';

export interface LogarithmicTransitionInput extends DiBenedettoInput {}

/**
 * Glass transition of a part-cured resin, logarithmic form (Venditti and Gillham).
 *
 * $$\ln T_g = \ln T_{g0} + (\ln T_{g\infty} - \ln T_{g0})\,\frac{\lambda a}{1 - (1-\lambda) a}$$
 *
 * @param input.uncuredTransition T_g0, of the fresh mix [K], > 0
 * @param input.fullTransition    T_g_inf, fully cured [K], above T_g0
 * @param input.lambda            shape, above 0 and up to 1
 * @param input.conversion        a, from 0 to 1
 * @returns glass transition temperature [K]
 * @throws CalculationError `invalid-input`
 * @remarks Never above the linear form with the same shape.
 * @see Venditti and Gillham 1997, in the form of a public model file
 */
export function logarithmicTransition(input: LogarithmicTransitionInput): Temperature {
  const { uncuredTransition: T0, fullTransition: T1, lambda, conversion: a } = input;
  positive(T0, 'uncuredTransition', 'K');
  positive(T1, 'fullTransition', 'K');
  below(T0, T1, 'that of the fully cured resin', 'uncuredTransition', 'K');
  positive(lambda, 'lambda', '');
  within(lambda, 0, 1, 'lambda', '');
  within(a, 0, 1, 'conversion', '');
  finite(T1 / T0, 'uncuredTransition', 'K');
  // 1 - (1 - lambda) a, written so that it stays above 0 for the smallest shape.
  return (T0 * (T1 / T0) ** ((lambda * a) / (1 - a + lambda * a))) as Temperature;
}

export const logarithmicTransitionFormula = /* @__PURE__ */ formula<LogarithmicTransitionInput, Temperature>({
  id: 'cure/logarithmic-transition',
  title: 'Glass transition of a part-cured resin, logarithmic form',
  compute: logarithmicTransition,
  equation: { expression: 'T_g0 * (T_g1 / T_g0)^(lambda * a / (1 - (1 - lambda) * a))' },
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
      sample: [333.15, 503.15],
    },
    lambda: { symbol: 'lambda', kind: 'number', name: 'shape', sample: [0.3, 0.7] },
    conversion: { symbol: 'a', kind: 'ratio', name: 'degree of cure', sample: [0, 1] },
  },
  output: { symbol: 'T_g', kind: 'temperature', name: 'glass transition' },
  sources: [
    { key: 'venditti-gillham-1997', locator: 'logarithmic form' },
    { key: 'cure-solver-decks', locator: 'glass-transition model file' },
  ],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
