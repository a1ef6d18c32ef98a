import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LengthOnBendInput {
  readonly lengthAlong: Length;
  readonly measuredRadius: Length;
  readonly lineRadius: Length;
}

/**
 * Length along a line of a bend that goes with a length along another of its lines.
 *
 * $$l_x = l\,\frac{r}{r_0}$$
 *
 * @param input.lengthAlong     l, along the first line [m], > 0
 * @param input.measuredRadius  r_0, of that line from the centre of the bend [m], > 0
 * @param input.lineRadius      r, of the other line: R + D/2 outside, R - D/2 inside [m], > 0
 * @returns length along that line [m]
 * @throws CalculationError `invalid-input`
 * @remarks Turns of a wrap fan out from the centre of the bend: what is long enough along the inside is longer outside.
 */
export function lengthOnBend(input: LengthOnBendInput): Length {
  const { lengthAlong: l, measuredRadius: r0, lineRadius: r } = input;
  positive(l, 'lengthAlong', 'm');
  positive(r0, 'measuredRadius', 'm');
  positive(r, 'lineRadius', 'm');
  const along = l * (r / r0);
  finite(along, 'length', 'm');
  return along as Length;
}

export const lengthOnBendFormula = /* @__PURE__ */ formula<LengthOnBendInput, Length>({
  id: 'wrap/length-on-bend',
  title: 'Length along a line of a bend',
  search: ['elbow', 'intrados', 'extrados'],
  compute: lengthOnBend,
  equation: { expression: 'l * r / r_0' },
  inputs: {
    lengthAlong: { symbol: 'l', kind: 'length', name: 'length along the first line', sample: [0.1, 3] },
    measuredRadius: { symbol: 'r_0', kind: 'length', name: 'radius of the first line', sample: [0.05, 7] },
    lineRadius: { symbol: 'r', kind: 'length', name: 'radius of the line', sample: [0.05, 7] },
  },
  output: { symbol: 'l_x', kind: 'length', name: 'length along the line' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'arc of a circle' } },
  limits: [],
});
