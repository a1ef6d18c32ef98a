import { formula, nonNegative, positive } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

export interface HelixLengthInput {
  readonly turns: number;
  readonly circumference: Length;
  readonly advance: Length;
}

/**
 * Length of a helix on a cylinder.
 *
 * $$L = n \sqrt{C^2 + p^2}$$
 *
 * @param input.turns n, turns, > 0
 * @param input.circumference C, circumference [m], > 0
 * @param input.advance p, advance per turn [m], >= 0
 * @returns length of the helix [m]
 * @throws CalculationError `invalid-input`
 * @see IEA advanced mathematics item, 1995
 */
export function helixLength(input: HelixLengthInput): Length {
  const { turns: n, circumference: C, advance: p } = input;
  positive(n, 'turns', '');
  positive(C, 'circumference', 'm');
  nonNegative(p, 'advance', 'm');
  const L = n * Math.sqrt(C * C + p * p);
  positive(L, 'helixLength', 'm');
  return L as Length;
}

export const helixLengthFormula = /* @__PURE__ */ formula<HelixLengthInput, Length>({
  id: 'wrap/helix-length',
  title: 'Length of a helix',
  search: ['spiral', 'tape length'],
  compute: helixLength,
  equation: { expression: 'n * sqrt(C^2 + p^2)' },
  inputs: {
    turns: { symbol: 'n', kind: 'number', name: 'turns', sample: [0.5, 60] },
    circumference: { symbol: 'C', kind: 'length', name: 'circumference', sample: [0.06, 4] },
    advance: { symbol: 'p', kind: 'length', name: 'advance per turn', sample: [0, 0.5] },
  },
  output: { symbol: 'L', kind: 'length', name: 'length of the helix' },
  sources: [{ key: 'iea-1995', locator: 'advanced mathematics item on a string wound round a rod' }],
  evidence: { form: { tag: 'secondary', derived: 'cylinder unrolled flat' } },
  limits: [],
});
