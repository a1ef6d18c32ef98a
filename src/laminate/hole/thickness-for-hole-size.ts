import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThicknessForHoleSizeInput {
  readonly holeDiameter: Length;
  readonly outsideDiameter: Length;
  readonly coefficient?: number;
}

/**
 * Least thickness at which a hole is within the round-hole equations: the inverse of `largestHole`.
 *
 * $$t = \frac{d^2}{c D}$$
 *
 * @param input.holeDiameter     d, as `designHoleDiameter` gives it [m], > 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.coefficient      c, 6 unless given
 * @returns thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks The wall of the pipe has to have it too: more plies help only where the laminate is the thinner one.
 * @see ISO 24817:2017, 7.5.7, as recalled
 */
export function thicknessForHoleSize(input: ThicknessForHoleSizeInput): Length {
  const { holeDiameter: d, outsideDiameter: D, coefficient: c = 6 } = input;
  positive(d, 'holeDiameter', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(c, 'coefficient', '');
  const t = (d / D) * (d / c);
  finite(t, 'thickness', 'm');
  return t as Length;
}

export const thicknessForHoleSizeFormula = /* @__PURE__ */ formula<ThicknessForHoleSizeInput, Length>({
  id: 'laminate/thickness-for-hole-size',
  title: 'Least thickness for the round-hole equations',
  search: ['leak', 'pinhole'],
  compute: thicknessForHoleSize,
  equation: { expression: 'd^2 / (c * D)' },
  inputs: {
    holeDiameter: { symbol: 'd', kind: 'length', name: 'hole diameter', sample: [0.015, 0.1] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    coefficient: { symbol: 'c', kind: 'number', name: 'coefficient', default: 6, sample: [4, 8] },
  },
  output: { symbol: 't', kind: 'length', name: 'least thickness' },
  sources: [{ key: 'iso-24817', locator: '7.5.7, as recalled' }],
  evidence: { form: { tag: 'recalled' }, coefficient: { tag: 'recalled' } },
  limits: [],
});
