import { formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface DesignHoleDiameterInput {
  readonly holeDiameter: Length;
  readonly leastDiameter?: Length;
}

/**
 * Hole diameter that the leak equations are used with: never below a least diameter, even for a pinhole.
 *
 * $$d = \max(d_1, d_{min})$$
 *
 * @param input.holeDiameter   d_1, of the smallest circle round the hole at the end of life [m], > 0
 * @param input.leastDiameter  d_min [m], 15 mm unless given
 * @returns hole diameter for the design [m]
 * @throws CalculationError `invalid-input`
 * @remarks A 5 mm hole taken as it is claims more than twice the pressure of a 15 mm one, on a bond nobody can measure
 *   that finely.
 * @see ISO 24817:2017, 7.5.7, as recalled
 */
export function designHoleDiameter(input: DesignHoleDiameterInput): Length {
  const { holeDiameter: d, leastDiameter: least = 0.015 as Length } = input;
  positive(d, 'holeDiameter', 'm');
  nonNegative(least, 'leastDiameter', 'm');
  return Math.max(d, least) as Length;
}

export const designHoleDiameterFormula = /* @__PURE__ */ formula<DesignHoleDiameterInput, Length>({
  id: 'laminate/design-hole-diameter',
  title: 'Hole diameter for the design',
  compute: designHoleDiameter,
  equation: { branches: [{ when: 'd_1 < d_min', expression: 'd_min' }, { expression: 'd_1' }] },
  inputs: {
    holeDiameter: { symbol: 'd_1', kind: 'length', name: 'hole diameter at the end of life', sample: [0.001, 0.05] },
    leastDiameter: {
      symbol: 'd_min',
      kind: 'length',
      name: 'least hole diameter',
      default: 0.015,
      sample: [0.01, 0.02],
    },
  },
  output: { symbol: 'd', kind: 'length', name: 'hole diameter for the design' },
  sources: [{ key: 'iso-24817', locator: '7.5.7, as recalled' }],
  evidence: { form: { tag: 'recalled' }, leastDiameter: { tag: 'recalled' } },
  limits: [],
});
