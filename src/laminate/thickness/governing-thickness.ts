import { formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** What sets the thickness. */
export type ThicknessCriterion = 'hoop' | 'axial' | 'leak';

export interface GoverningThicknessInput {
  readonly hoop: Length;
  readonly axial: Length;
  readonly leak?: Length;
}

/** The largest thickness, and the criterion that asks for it. */
export interface GoverningThickness {
  readonly thickness: Length;
  readonly governing: ThicknessCriterion;
}

/**
 * Laminate thickness by every criterion that applies, and the one that governs.
 *
 * $$t = \max(t_c, t_a, t_l)$$
 *
 * @param input.hoop   t_c [m], >= 0
 * @param input.axial  t_a [m], >= 0
 * @param input.leak   t_l, over the hole of a through-wall defect [m], >= 0; 0 where nothing leaks
 * @returns the largest and its name; of equal ones the first
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.5 and 7.5.7, as recalled
 */
export function governingThickness(input: GoverningThicknessInput): GoverningThickness {
  const { hoop, axial, leak = 0 as Length } = input;
  nonNegative(hoop, 'hoop', 'm');
  nonNegative(axial, 'axial', 'm');
  nonNegative(leak, 'leak', 'm');
  if (hoop >= axial && hoop >= leak) return { thickness: hoop, governing: 'hoop' };
  return axial >= leak ? { thickness: axial, governing: 'axial' } : { thickness: leak, governing: 'leak' };
}

export const governingThicknessFormula = /* @__PURE__ */ formula<GoverningThicknessInput, GoverningThickness>({
  id: 'laminate/governing-thickness',
  title: 'Governing thickness',
  search: ['repair thickness', 'how thick', 'wrap thickness'],
  compute: governingThickness,
  equation: { expression: 'max(t_c, t_a, t_l)' },
  inputs: {
    hoop: { symbol: 't_c', kind: 'length', name: 'thickness for the hoop', sample: [0, 0.03] },
    axial: { symbol: 't_a', kind: 'length', name: 'thickness along the pipe', sample: [0, 0.03] },
    leak: { symbol: 't_l', kind: 'length', name: 'thickness over the hole', default: 0, sample: [0, 0.03] },
  },
  output: {
    thickness: { symbol: 't', kind: 'length', name: 'governing thickness' },
    governing: { symbol: 'criterion', kind: 'choice', name: 'governing criterion' },
  },
  sources: [{ key: 'iso-24817', locator: '7.5.5 and 7.5.7, as recalled' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});
