import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface CountedThicknessInput {
  readonly plies: number;
  readonly measuredThickness: Length;
  readonly plyThickness: Length;
  readonly systemPly: Length;
}

/**
 * Thickness of a laminate as it lies there that counts with the moduli of the system: the lesser of what the plies that were
 * counted and what the thickness that was measured stand for.
 *
 * $$t = \min\left(n \min(t_p, t_s),\ t_m \min\left(1, \frac{t_s}{t_p}\right)\right)$$
 *
 * @param input.plies              n, as counted, whole, >= 1
 * @param input.measuredThickness  t_m, the least [m], > 0
 * @param input.plyThickness       t_p, of one ply of this laminate: as a witness shows it, else that of the system [m], > 0
 * @param input.systemPly          t_s, of one cured ply of the system, on which its moduli stand [m], > 0
 * @returns thickness that counts [m]
 * @throws CalculationError `invalid-input`
 * @remarks A ply holds the fibre of its fabric whatever its thickness: where it is thicker than that of the system the rest is
 *   resin, and gives no credit. Where it is thinner it may have lost fibre or only resin; it counts as having lost fibre.
 */
export function countedThickness(input: CountedThicknessInput): Length {
  const { plies: n, measuredThickness: tm, plyThickness: tp, systemPly: ts } = input;
  wholeNumber(n, 1, 'plies');
  positive(tm, 'measuredThickness', 'm');
  positive(tp, 'plyThickness', 'm');
  positive(ts, 'systemPly', 'm');
  const t = Math.min(n * Math.min(tp, ts), tm * Math.min(1, ts / tp));
  finite(t, 'thickness', 'm');
  return t as Length;
}

export const countedThicknessFormula = /* @__PURE__ */ formula<CountedThicknessInput, Length>({
  id: 'laminate/counted-thickness',
  title: 'Thickness of a laminate that counts as built',
  search: ['witness', 'resin rich'],
  compute: countedThickness,
  equation: { expression: 'min(n * min(t_p, t_s), t_m * min(1, t_s / t_p))' },
  inputs: {
    plies: { symbol: 'n', kind: 'count', name: 'plies counted', sample: [1, 40] },
    measuredThickness: { symbol: 't_m', kind: 'length', name: 'thickness measured', sample: [0.001, 0.04] },
    plyThickness: { symbol: 't_p', kind: 'length', name: 'thickness of one ply', sample: [0.0003, 0.003] },
    systemPly: { symbol: 't_s', kind: 'length', name: 'ply thickness of the system', sample: [0.0003, 0.003] },
  },
  output: { symbol: 't', kind: 'length', name: 'thickness that counts' },
  sources: [],
  evidence: { form: { tag: 'chosen', note: 'the fibre of a ply is that of its fabric' } },
  limits: [],
});
