import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface WallLossRateInput {
  readonly earlierWall: Length;
  readonly laterWall: Length;
  readonly elapsed: Time;
}

/**
 * Rate of wall loss between two measurements.
 *
 * $$r = \frac{t_1 - t_2}{\Delta\tau}$$
 *
 * @param input.earlierWall  t_1 [m], > 0
 * @param input.laterWall    t_2 [m], > 0 and at most t_1
 * @param input.elapsed      time between them [s], > 0
 * @returns corrosion rate [m/s]
 * @throws CalculationError `invalid-input`
 * @remarks A wall cannot grow: readings that say so are a matter of measuring, and are refused.
 * @see API 570
 */
export function wallLossRate(input: WallLossRateInput): CorrosionRate {
  const { earlierWall: t1, laterWall: t2, elapsed } = input;
  positive(t1, 'earlierWall', 'm');
  positive(t2, 'laterWall', 'm');
  atMost(t2, t1, 'the earlier wall', 'laterWall', 'm');
  positive(elapsed, 'elapsed', 's');
  const rate = (t1 - t2) / elapsed;
  finite(rate, 'corrosion rate', 'm/s');
  return rate as CorrosionRate;
}

export const wallLossRateFormula = /* @__PURE__ */ formula<WallLossRateInput, CorrosionRate>({
  id: 'pipe/wall-loss-rate',
  title: 'Rate of wall loss between two measurements',
  search: ['corrosion rate', 'mpy'],
  compute: wallLossRate,
  equation: { expression: '(t_1 - t_2) / T' },
  inputs: {
    earlierWall: { symbol: 't_1', kind: 'length', name: 'earlier wall', sample: [0.005, 0.03] },
    laterWall: { symbol: 't_2', kind: 'length', name: 'later wall', sample: [0.001, 0.02] },
    elapsed: { symbol: 'T', kind: 'time', name: 'time between the measurements', sample: [1e7, 1e9] },
  },
  output: { symbol: 'r', kind: 'corrosion rate', name: 'corrosion rate' },
  sources: [{ key: 'api-570', locator: 'corrosion rate' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
