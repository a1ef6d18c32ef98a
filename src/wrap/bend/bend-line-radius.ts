import { finite, formula, oneOf, positive, refuse } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

const choices = ['inside', 'outside'] as const;

/** Where a line runs along a bend. */
export type BendLine = (typeof choices)[number];

export interface BendLineRadiusInput {
  readonly bendRadius: Length;
  readonly outsideDiameter: Length;
  readonly line: BendLine;
}

/**
 * Radius of the line along the inside or the outside of a bend, from the centre of the bend.
 *
 * $$r = R \mp \frac{D}{2}$$
 *
 * @param input.bendRadius       R, of the centre line [m], > D/2
 * @param input.outsideDiameter  D [m], > 0
 * @param input.line             'inside' or 'outside'
 * @returns radius [m]
 * @throws CalculationError `invalid-input`
 */
export function bendLineRadius(input: BendLineRadiusInput): Length {
  const { bendRadius: R, outsideDiameter: D, line } = input;
  positive(R, 'bendRadius', 'm');
  positive(D, 'outsideDiameter', 'm');
  oneOf(line, choices, 'line');
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
  const radius = line === 'inside' ? R - D / 2 : R + D / 2;
  positive(radius, 'radius', 'm');
  finite(radius, 'radius', 'm');
  return radius as Length;
}

export const bendLineRadiusFormula = /* @__PURE__ */ formula<BendLineRadiusInput, Length>({
  id: 'wrap/bend-line-radius',
  title: 'Radius of the inside or the outside of a bend',
  compute: bendLineRadius,
  equation: { branches: [{ when: 'line == "inside"', expression: 'R - D / 2' }, { expression: 'R + D / 2' }] },
  inputs: {
    bendRadius: { symbol: 'R', kind: 'length', name: 'radius of the bend', sample: [1, 6], usual: [0.03, 12] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    line: { symbol: 'line', kind: 'choice', name: 'where the line runs', choices: ['inside', 'outside'] },
  },
  output: { symbol: 'r', kind: 'length', name: 'radius of the line' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'turns laid one by one round a torus' } },
  limits: [],
});
