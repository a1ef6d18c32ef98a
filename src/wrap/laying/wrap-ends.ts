import { atMost, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** Ends of a wrap from the centre of the defect, positive in the direction of the first pass. */
export interface WrapEnds {
  /** From the end of the wrap to the edge of the defect, on each side. */
  readonly beyondDefect: Length;
  readonly start: Length;
  readonly end: Length;
}

export interface WrapEndsInput {
  readonly laidLength: Length;
  readonly defectLength: Length;
}

/**
 * Where a wrap that lies evenly over its defect starts and ends, and how far beyond the defect that is.
 *
 * $$l_b = \frac{L - l_d}{2}$$
 *
 * @param input.laidLength L, length of pipe that the wrap lies on [m], > 0
 * @param input.defectLength l_d, length of the defect [m], from 0 to L
 * @returns length beyond the defect on each side, and both ends from its centre, -L/2 and L/2 [m]
 * @throws CalculationError `invalid-input`
 */
export function wrapEnds(input: WrapEndsInput): WrapEnds {
  const { laidLength: L, defectLength: ld } = input;
  positive(L, 'laidLength', 'm');
  nonNegative(ld, 'defectLength', 'm');
  atMost(ld, L, 'the length of the wrap', 'defectLength', 'm');
  return { beyondDefect: ((L - ld) / 2) as Length, start: (-L / 2) as Length, end: (L / 2) as Length };
}

export const wrapEndsFormula = /* @__PURE__ */ formula<WrapEndsInput, WrapEnds>({
  id: 'wrap/wrap-ends',
  title: 'Ends of the wrap',
  compute: wrapEnds,
  equation: { expression: '(L - l_d) / 2' },
  inputs: {
    laidLength: { symbol: 'L', kind: 'length', name: 'length of pipe that the wrap lies on', sample: [0.2, 3] },
    defectLength: { symbol: 'l_d', kind: 'length', name: 'length of the defect', sample: [0, 0.5] },
  },
  output: {
    beyondDefect: { symbol: 'l_b', kind: 'length', name: 'wrap beyond the defect on each side' },
    start: { symbol: 'x_1', kind: 'length', name: 'start of the wrap, from the centre of the defect' },
    end: { symbol: 'x_2', kind: 'length', name: 'end of the wrap, from the centre of the defect' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
