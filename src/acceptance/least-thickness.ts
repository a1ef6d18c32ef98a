import { finite, formula, nonNegative, positive, wholeNumber } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface LeastThicknessInput {
  readonly requiredThickness: Length;
  readonly leastPlies: number;
  readonly plyThickness: Length;
  readonly systemPly: Length;
}

/**
 * The least thickness at which a laminate is accepted: what the design requires, and never less than the fewest plies that
 * may be laid. A ply that is thicker than that of the system holds no more fibre, so that more of them are needed.
 *
 * $$t_{least} = \max\left(t \max\left(1, \frac{t_p}{t_s}\right),\ n_{min} t_p\right)$$
 *
 * @param input.requiredThickness t, by the equations of the design [m], >= 0
 * @param input.leastPlies        n_min, fewest plies that may be laid, whole, >= 1
 * @param input.plyThickness      t_p, of one cured ply: that of the system, or as a witness of the job shows it [m], > 0
 * @param input.systemPly t_s, thickness of one cured ply of the system, on which its moduli stand [m], > 0
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`
 */
export function leastThickness(input: LeastThicknessInput): Length {
  const { requiredThickness: t, leastPlies: n, plyThickness: tp, systemPly: ts } = input;
  nonNegative(t, 'requiredThickness', 'm');
  wholeNumber(n, 1, 'leastPlies');
  positive(tp, 'plyThickness', 'm');
  positive(ts, 'systemPly', 'm');
  const least = Math.max(t * Math.max(1, tp / ts), n * tp);
  finite(least, 'least thickness', 'm');
  return least as Length;
}

export const leastThicknessFormula = /* @__PURE__ */ formula<LeastThicknessInput, Length>({
  id: 'acceptance/least-thickness',
  title: 'Least thickness to accept',
  compute: leastThickness,
  equation: { expression: 'max(t * max(1, t_p / t_s), n_min * t_p)' },
  inputs: {
    requiredThickness: { symbol: 't', kind: 'length', name: 'required thickness', sample: [0, 0.03] },
    leastPlies: { symbol: 'n_min', kind: 'count', name: 'fewest plies that may be laid', sample: [1, 6] },
    plyThickness: { symbol: 't_p', kind: 'length', name: 'thickness of one ply', sample: [0.0003, 0.003] },
    systemPly: { symbol: 't_s', kind: 'length', name: 'ply thickness of the system', sample: [0.0003, 0.003] },
  },
  output: { symbol: 't_least', kind: 'length', name: 'least thickness' },
  sources: [],
  evidence: { form: { tag: 'chosen', note: 'a laminate of fewer plies than were qualified is none of the system' } },
  limits: [],
});
