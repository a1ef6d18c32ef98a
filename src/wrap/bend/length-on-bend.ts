import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LengthOnBendInput {
  readonly lengthAlong: Length;
  readonly bendRadius: Length;
  readonly lineRadius: Length;
}

/**
 * Length along a line of a bend that goes with a length on its centre line.
 *
 * $$l_x = l\,\frac{r}{R}$$
 *
 * @param input.lengthAlong  l, on the centre line [m], > 0
 * @param input.bendRadius   R, of the centre line [m], > 0
 * @param input.lineRadius   r, of the line from the centre of the bend: R + D/2 outside, R - D/2 inside [m], > 0
 * @returns length along that line [m]
 * @throws CalculationError `invalid-input`
 * @remarks An extent that was measured along the outside of a bend is longer than the one on its centre line.
 */
export function lengthOnBend(input: LengthOnBendInput): Length {
  const { lengthAlong: l, bendRadius: R, lineRadius: r } = input;
  positive(l, 'lengthAlong', 'm');
  positive(R, 'bendRadius', 'm');
  positive(r, 'lineRadius', 'm');
  const along = l * (r / R);
  finite(along, 'length', 'm');
  return along as Length;
}

export const lengthOnBendFormula = /* @__PURE__ */ formula<LengthOnBendInput, Length>({
  id: 'wrap/length-on-bend',
  title: 'Length along a line of a bend',
  compute: lengthOnBend,
  equation: { expression: 'l * r / R' },
  inputs: {
    lengthAlong: { symbol: 'l', kind: 'length', name: 'length on the centre line', sample: [0.1, 3] },
    bendRadius: { symbol: 'R', kind: 'length', name: 'radius of the bend', sample: [0.1, 6] },
    lineRadius: { symbol: 'r', kind: 'length', name: 'radius of the line', sample: [0.05, 7] },
  },
  output: { symbol: 'l_x', kind: 'length', name: 'length along the line' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'arc of a circle' } },
  limits: [],
});
