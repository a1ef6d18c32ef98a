import { finite, formula, positive, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LaidThicknessInput {
  readonly plies: number;
  readonly plyThickness: Length;
}

/**
 * Thickness of so many plies.
 *
 * $$t = n\,t_{ply}$$
 *
 * @param input.plies         n, whole, >= 0
 * @param input.plyThickness  t_ply [m], > 0
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`
 */
export function laidThickness(input: LaidThicknessInput): Length {
  const { plies: n, plyThickness } = input;
  wholeNumber(n, 0, 'plies');
  positive(plyThickness, 'plyThickness', 'm');
  const t = n * plyThickness;
  finite(t, 'thickness', 'm');
  return t as Length;
}

export const laidThicknessFormula = /* @__PURE__ */ formula<LaidThicknessInput, Length>({
  id: 'laminate/laid-thickness',
  title: 'Thickness of the plies laid',
  search: ['wrap thickness', 'build up'],
  compute: laidThickness,
  equation: { expression: 'n * t_ply' },
  inputs: {
    plies: { symbol: 'n', kind: 'count', name: 'plies', sample: [1, 40] },
    plyThickness: { symbol: 't_ply', kind: 'length', name: 'ply thickness', sample: [0.0003, 0.002] },
  },
  output: { symbol: 't', kind: 'length', name: 'thickness' },
  sources: [],
  evidence: { form: { tag: 'practice' } },
  limits: [],
});
