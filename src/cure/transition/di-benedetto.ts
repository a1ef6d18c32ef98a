import { below, formula, positive, within } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';

export interface DiBenedettoInput {
  readonly uncuredTransition: Temperature;
  readonly fullTransition: Temperature;
  readonly lambda: number;
  readonly conversion: Ratio;
}

/**
 * Glass transition of a part-cured resin (DiBenedetto).
 *
 * $$T_g = T_{g0} + \frac{\lambda a (T_{g\infty} - T_{g0})}{1 - (1-\lambda) a}$$
 *
 * @param input.uncuredTransition T_g0, of the fresh mix [K], > 0
 * @param input.fullTransition    T_g_inf, fully cured [K], above T_g0
 * @param input.lambda            shape, above 0 and up to 1
 * @param input.conversion        a, from 0 to 1
 * @returns glass transition temperature [K]
 * @throws CalculationError `invalid-input`
 * @remarks The relation may itself depend on the cure temperature: cold-cured adhesives showed that it did.
 * @see a public glass-transition model file
 */
export function diBenedetto(input: DiBenedettoInput): Temperature {
  const { uncuredTransition: T0, fullTransition: T1, lambda, conversion: a } = input;
  positive(T0, 'uncuredTransition', 'K');
  positive(T1, 'fullTransition', 'K');
  below(T0, T1, 'that of the fully cured resin', 'uncuredTransition', 'K');
  positive(lambda, 'lambda', '');
  within(lambda, 0, 1, 'lambda', '');
  within(a, 0, 1, 'conversion', '');
  // 1 - (1 - lambda) a, written so that it stays above 0 for the smallest shape.
  return (T0 + (lambda * a * (T1 - T0)) / (1 - a + lambda * a)) as Temperature;
}

export const diBenedettoFormula = /* @__PURE__ */ formula<DiBenedettoInput, Temperature>({
  id: 'cure/di-benedetto',
  title: 'Glass transition of a part-cured resin',
  search: ['tg', 'vitrification'],
  compute: diBenedetto,
  equation: { expression: 'T_g0 + lambda * a * (T_g1 - T_g0) / (1 - (1 - lambda) * a)' },
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
  sources: [{ key: 'cure-solver-decks', locator: 'glass-transition model file' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
