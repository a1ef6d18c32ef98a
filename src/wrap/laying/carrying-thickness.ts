import { formula, positive, refuse, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface CarryingThicknessInput {
  readonly laidThickness: Length;
  readonly lostPlies: number;
  readonly plyThickness: Length;
}

/**
 * Thickness that carries along the pipe where a wrap in bands has its joints.
 *
 * $$t_a = t - n_l\,t_{ply}$$
 *
 * @param input.laidThickness t, of all plies [m], > 0
 * @param input.lostPlies     n_l, plies that end near the worst place, whole, >= 0
 * @param input.plyThickness  t_ply [m], > 0
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`; `no-solution` where nothing is left
 */
export function carryingThickness(input: CarryingThicknessInput): Length {
  const { laidThickness: t, lostPlies: nl, plyThickness } = input;
  positive(t, 'laidThickness', 'm');
  wholeNumber(nl, 0, 'lostPlies');
  positive(plyThickness, 'plyThickness', 'm');
  const left = t - nl * plyThickness;
  if (left > 0) return left as Length;
  refuse({
    code: 'no-solution',
    parameter: 'laidThickness',
    value: t,
    unit: 'm',
    constraint: 'must be more than {limit}, the plies that end at the joints: nothing carries along the pipe there',
    limit: nl * plyThickness,
  });
}

export const carryingThicknessFormula = /* @__PURE__ */ formula<CarryingThicknessInput, Length>({
  id: 'wrap/carrying-thickness',
  title: 'Thickness that carries along the pipe at the joints',
  compute: carryingThickness,
  equation: { expression: 't - n_l * t_ply' },
  inputs: {
    laidThickness: { symbol: 't', kind: 'length', name: 'thickness of all plies', sample: [0.004, 0.02] },
    lostPlies: { symbol: 'n_l', kind: 'count', name: 'plies that end near the worst place', sample: [0, 2] },
    plyThickness: { symbol: 't_ply', kind: 'length', name: 'thickness of one ply', sample: [0.0003, 0.0015] },
  },
  output: { symbol: 't_a', kind: 'length', name: 'thickness that carries along the pipe' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [{ sort: 'stop', text: 'some plies go through' }],
});
