import { finite, formula, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface LargestHoleInput {
  readonly outsideDiameter: Length;
  readonly thickness: Length;
  readonly coefficient?: number;
}

/**
 * Largest hole for which the round-hole equations hold: beyond it the laminate no longer acts as a flat plate.
 *
 * $$d_{max} = \sqrt{c D t}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.thickness        t [m], > 0
 * @param input.coefficient      c, 6 unless given
 * @returns largest hole diameter [m]
 * @throws CalculationError `invalid-input`
 * @remarks Which thickness is meant, that of the wall or of the laminate, is not recalled: give the smaller one.
 * @see ISO 24817:2017, 7.5.7, as recalled
 */
export function largestHole(input: LargestHoleInput): Length {
  const { outsideDiameter: D, thickness: t, coefficient: c = 6 } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'thickness', 'm');
  positive(c, 'coefficient', '');
  const d = Math.sqrt(c * D * t);
  finite(d, 'largest hole diameter', 'm');
  return d as Length;
}

export const largestHoleFormula = /* @__PURE__ */ formula<LargestHoleInput, Length>({
  id: 'laminate/largest-hole',
  title: 'Largest hole for the round-hole equations',
  compute: largestHole,
  equation: { expression: 'sqrt(c * D * t)' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    thickness: { symbol: 't', kind: 'length', name: 'smaller thickness of wall and laminate', sample: [0.001, 0.04] },
    coefficient: { symbol: 'c', kind: 'number', name: 'coefficient', default: 6, sample: [4, 8] },
  },
  output: { symbol: 'd_max', kind: 'length', name: 'largest hole diameter' },
  sources: [{ key: 'iso-24817', locator: '7.5.7, as recalled' }],
  evidence: { form: { tag: 'recalled' }, coefficient: { tag: 'recalled' } },
  limits: [],
});
