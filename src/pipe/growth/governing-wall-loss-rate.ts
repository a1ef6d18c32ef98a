import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';

export interface GoverningWallLossRateInput {
  readonly originalWall: Length;
  readonly previousWall: Length;
  readonly presentWall: Length;
  readonly service: Time;
  readonly sincePrevious: Time;
}

/** The larger of the two rates, and both. */
export interface GoverningWallLossRate {
  readonly rate: CorrosionRate;
  readonly longTerm: CorrosionRate;
  readonly shortTerm: CorrosionRate;
}

/**
 * Rate of wall loss that governs: the larger of the long-term and the short-term rate.
 *
 * $$r = \max\left(\frac{t_0 - t}{\tau_0},\ \frac{t_p - t}{\tau_p}\right)$$
 *
 * @param input.originalWall   t_0 [m], > 0
 * @param input.previousWall   t_p, at the previous inspection [m], > 0
 * @param input.presentWall    t [m], > 0 and at most t_0
 * @param input.service        tau_0, since the original wall was measured [s], > 0
 * @param input.sincePrevious  tau_p, since the previous inspection [s], > 0 and at most tau_0
 * @returns the governing rate [m/s], with the long-term and the short-term rate
 * @throws CalculationError `invalid-input`
 * @remarks The short-term rate may come out negative where two readings scatter; the long-term rate then governs.
 * @see API 570
 */
export function governingWallLossRate(input: GoverningWallLossRateInput): GoverningWallLossRate {
  const { originalWall: t0, previousWall: tp, presentWall: t, service, sincePrevious } = input;
  positive(t0, 'originalWall', 'm');
  positive(tp, 'previousWall', 'm');
  positive(t, 'presentWall', 'm');
  atMost(t, t0, 'the original wall', 'presentWall', 'm');
  positive(service, 'service', 's');
  positive(sincePrevious, 'sincePrevious', 's');
  atMost(sincePrevious, service, 'the time in service', 'sincePrevious', 's');
  const longTerm = ((t0 - t) / service) as CorrosionRate;
  const shortTerm = ((tp - t) / sincePrevious) as CorrosionRate;
  finite(longTerm, 'long-term rate', 'm/s');
  finite(shortTerm, 'short-term rate', 'm/s');
  return { rate: Math.max(longTerm, shortTerm) as CorrosionRate, longTerm, shortTerm };
}

export const governingWallLossRateFormula = /* @__PURE__ */ formula<GoverningWallLossRateInput, GoverningWallLossRate>({
  id: 'pipe/governing-wall-loss-rate',
  title: 'Governing rate of wall loss',
  search: ['corrosion rate', 'mpy', 'long term rate'],
  compute: governingWallLossRate,
  equation: { expression: 'max((t_0 - t) / T_0, (t_p - t) / T_p)' },
  inputs: {
    originalWall: { symbol: 't_0', kind: 'length', name: 'original wall', sample: [0.01, 0.03] },
    previousWall: { symbol: 't_p', kind: 'length', name: 'wall at the previous inspection', sample: [0.005, 0.02] },
    presentWall: { symbol: 't', kind: 'length', name: 'present wall', sample: [0.002, 0.015] },
    service: { symbol: 'T_0', kind: 'time', name: 'time since the original wall', sample: [1e8, 1e9] },
    sincePrevious: { symbol: 'T_p', kind: 'time', name: 'time since the previous inspection', sample: [1e7, 3e8] },
  },
  output: {
    rate: { symbol: 'r', kind: 'corrosion rate', name: 'governing rate' },
    longTerm: { symbol: 'r_long', kind: 'corrosion rate', name: 'long-term rate' },
    shortTerm: { symbol: 'r_short', kind: 'corrosion rate', name: 'short-term rate' },
  },
  sources: [{ key: 'api-570', locator: 'corrosion rate' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
