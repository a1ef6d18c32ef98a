import { finite, formula, positive, properFraction, refuse } from '../../formula/index.js';
import type { Length, Ratio } from '../../quantity/index.js';

export interface OverlapOnBendInput {
  readonly overlap: Ratio;
  readonly bendRadius: Length;
  readonly outsideDiameter: Length;
  readonly lineRadius: Length;
}

/**
 * Overlap of tape along a line of a bend, when it is kept at the outside of the bend, where the turns spread and gape first.
 *
 * $$o_x = 1 - (1 - o)\,\frac{r}{R + D/2}$$
 *
 * @param input.overlap          o, at the outside of the bend [1], from 0 up to, not including, 1
 * @param input.bendRadius       R, of the centre line [m], > D/2
 * @param input.outsideDiameter  D, of the surface that the tape lies on [m], > 0
 * @param input.lineRadius       r, of the line from the centre of the bend: R on the centre line, R - D/2 inside [m], > 0
 *   and at most R + D/2
 * @returns overlap along that line [1]
 * @throws CalculationError `invalid-input`
 * @remarks The turns fan out from the centre of the bend, so that their advance grows with the distance from it.
 */
export function overlapOnBend(input: OverlapOnBendInput): Ratio {
  const { overlap: o, bendRadius: R, outsideDiameter: D, lineRadius: r } = input;
  properFraction(o, 'overlap');
  positive(R, 'bendRadius', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(r, 'lineRadius', 'm');
  const outer = R + D / 2;
  if (!(2 * R > D)) {
    refuse({
      code: 'invalid-input',
      parameter: 'bendRadius',
      value: R,
      unit: 'm',
      constraint: 'must be above half of the outside diameter, {limit}: a tighter bend would cut into itself',
      limit: D / 2,
    });
  }
  if (r > outer) {
    refuse({
      code: 'invalid-input',
      parameter: 'lineRadius',
      value: r,
      unit: 'm',
      constraint: 'must be at most the radius of the outside of the bend, {limit}',
      limit: outer,
    });
  }
  const overlap = 1 - (1 - o) * (r / outer);
  finite(overlap, 'overlap', '');
  return overlap as Ratio;
}

export const overlapOnBendFormula = /* @__PURE__ */ formula<OverlapOnBendInput, Ratio>({
  id: 'wrap/overlap-on-bend',
  title: 'Overlap of tape along a line of a bend',
  compute: overlapOnBend,
  equation: { expression: '1 - (1 - o) * r / (R + D / 2)' },
  inputs: {
    overlap: { symbol: 'o', kind: 'ratio', name: 'overlap at the outside of the bend', sample: [0, 0.9] },
    bendRadius: { symbol: 'R', kind: 'length', name: 'radius of the bend', sample: [1, 6], usual: [0.03, 12] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    lineRadius: { symbol: 'r', kind: 'length', name: 'radius of the line', sample: [0.2, 1], usual: [0.01, 12] },
  },
  output: { symbol: 'o_x', kind: 'ratio', name: 'overlap along the line' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'turns laid one by one round a torus' } },
  limits: [],
});
