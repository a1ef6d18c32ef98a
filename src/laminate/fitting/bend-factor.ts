import { finite, formula, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface BendFactorInput {
  readonly bendRadius: Length;
  readonly outsideDiameter: Length;
}

/**
 * Hoop load at the inside of a bend over that of a straight pipe.
 *
 * $$k = \frac{R/D - 0.25}{R/D - 0.5}$$
 *
 * @param input.bendRadius       R, of the centre line [m], > D/2
 * @param input.outsideDiameter  D [m], > 0
 * @returns factor, above 1
 * @throws CalculationError `invalid-input`
 * @remarks Membrane of a torus, at its inside, where the surface is shortest. 1.25 at R of 1.5 D, where a flat 1.2 is not
 *   enough.
 */
export function bendFactor(input: BendFactorInput): number {
  const { bendRadius: R, outsideDiameter: D } = input;
  positive(R, 'bendRadius', 'm');
  positive(D, 'outsideDiameter', 'm');
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
  const factor = (R - 0.25 * D) / (R - 0.5 * D);
  finite(factor, 'factor', '');
  return factor;
}

export const bendFactorFormula = /* @__PURE__ */ formula<BendFactorInput, number>({
  id: 'laminate/bend-factor',
  title: 'Hoop load at the inside of a bend',
  search: ['elbow', 'intrados'],
  compute: bendFactor,
  equation: { expression: '(R - 0.25 * D) / (R - 0.5 * D)' },
  inputs: {
    bendRadius: { symbol: 'R', kind: 'length', name: 'radius of the bend', sample: [1.3, 6], usual: [0.03, 12] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'k', kind: 'number', name: 'hoop load over that of straight pipe' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'forces on the inner half of a torus under pressure' } },
  limits: [],
});
