import { atLeast, atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure } from '../../quantity/index.js';

export interface RecentPressureLimitInput {
  readonly recentPressure: GaugePressure;
  readonly failurePressure: GaugePressure;
  readonly share?: number;
  readonly failureFactor?: number;
}

/**
 * Pressure at which a line with a known defect may go on: a share of what it has carried lately, never above the predicted
 * failure pressure with its factor.
 *
 * $$P = \min\left(k P_{recent},\ \frac{P_f}{n}\right)$$
 *
 * @param input.recentPressure   P_recent, highest pressure carried with the defect in it [Pa], >= 0
 * @param input.failurePressure  P_f, predicted for the defect as it is [Pa], >= 0
 * @param input.share            k, > 0 and <= 1; 0.8 by default
 * @param input.failureFactor    n, >= 1; 1.25 by default
 * @returns pressure limit [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The second term is this library's own: the code asks for the 80 per cent alone.
 * @see 49 CFR 192.933(a)(1)
 */
export function recentPressureLimit(input: RecentPressureLimitInput): GaugePressure {
  const { recentPressure, failurePressure, share: k = 0.8, failureFactor: n = 1.25 } = input;
  nonNegative(recentPressure, 'recentPressure', 'Pa');
  nonNegative(failurePressure, 'failurePressure', 'Pa');
  positive(k, 'share', '');
  atMost(k, 1, 'the whole pressure', 'share', '');
  atLeast(n, 1, 'no margin', 'failureFactor', '');
  const limit = Math.min(k * recentPressure, failurePressure / n);
  finite(limit, 'pressure limit', 'Pa');
  return limit as GaugePressure;
}

export const recentPressureLimitFormula = /* @__PURE__ */ formula<RecentPressureLimitInput, GaugePressure>({
  id: 'pipe/recent-pressure-limit',
  title: 'Pressure limit from the pressure carried lately',
  search: ['80 percent', 'pressure reduction', 'derate'],
  compute: recentPressureLimit,
  equation: { expression: 'min(k * P_recent, P_f / n)' },
  inputs: {
    recentPressure: { symbol: 'P_recent', kind: 'gauge pressure', name: 'pressure carried lately', sample: [0, 20e6] },
    failurePressure: { symbol: 'P_f', kind: 'gauge pressure', name: 'predicted failure pressure', sample: [0, 30e6] },
    share: { symbol: 'k', kind: 'number', name: 'share of the recent pressure', sample: [0.5, 1], default: 0.8 },
    failureFactor: {
      symbol: 'n',
      kind: 'number',
      name: 'factor on the failure pressure',
      sample: [1, 2],
      default: 1.25,
    },
  },
  output: { symbol: 'P_lim', kind: 'gauge pressure', name: 'pressure limit' },
  sources: [{ key: 'cfr-49-192', locator: '192.933(a)(1)' }],
  evidence: { form: { tag: 'chosen' }, share: { tag: 'published' }, failureFactor: { tag: 'chosen' } },
  limits: [],
});
