import { finite, formula, nonNegative, positive, wholeNumber } from '../../formula/index.js';
import { countUp } from '../../numeric/index.js';
import type { Length } from '../../quantity/index.js';

export interface PlyCountInput {
  readonly requiredThickness: Length;
  readonly plyThickness: Length;
  readonly leastPlies?: number;
}

/** Whole plies, and the thickness they make. */
export interface PlyCount {
  readonly plies: number;
  readonly thickness: Length;
}

/**
 * Whole plies that reach a thickness, and never fewer than the least number.
 *
 * $$n = \max\left(n_{min}, \left\lceil \frac{t}{t_p} \right\rceil\right), \qquad t_{design} = n t_p$$
 *
 * @param input.requiredThickness  t [m], >= 0
 * @param input.plyThickness       t_p, of one cured ply [m], > 0
 * @param input.leastPlies         n_min, whole, >= 1; 2 unless given
 * @returns number of plies, and their thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks A quotient above a whole number by no more than 1e-9 of itself is that number: 4.000000000000001 plies are 4.
 */
export function plyCount(input: PlyCountInput): PlyCount {
  const { requiredThickness: t, plyThickness: tp, leastPlies = 2 } = input;
  nonNegative(t, 'requiredThickness', 'm');
  positive(tp, 'plyThickness', 'm');
  wholeNumber(leastPlies, 1, 'leastPlies');
  const plies = Math.max(leastPlies, countUp(t / tp));
  wholeNumber(plies, 1, 'number of plies');
  const thickness = plies * tp;
  finite(thickness, 'thickness of the plies', 'm');
  return { plies, thickness: thickness as Length };
}

export const plyCountFormula = /* @__PURE__ */ formula<PlyCountInput, PlyCount>({
  id: 'laminate/ply-count',
  title: 'Number of plies',
  search: ['number of wraps', 'layers', 'how many plies'],
  compute: plyCount,
  equation: {
    where: [{ symbol: 'x', kind: 'number', expression: 't / t_p' }],
    expression: 'max(n_min, ceil(x - 1e-9 * max(1, x)))',
  },
  inputs: {
    requiredThickness: { symbol: 't', kind: 'length', name: 'required thickness', sample: [0, 0.03] },
    plyThickness: { symbol: 't_p', kind: 'length', name: 'thickness of one ply', sample: [0.0003, 0.003] },
    leastPlies: { symbol: 'n_min', kind: 'count', name: 'least number of plies', default: 2, sample: [1, 4] },
  },
  output: {
    plies: { symbol: 'n', kind: 'count', name: 'number of plies' },
    thickness: { symbol: 't_design', kind: 'length', name: 'thickness of the plies' },
  },
  sources: [],
  evidence: { form: { tag: 'practice' }, leastPlies: { tag: 'practice' } },
  limits: [],
});
