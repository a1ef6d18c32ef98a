import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface HoleOverDiameterInput {
  readonly holeDiameter: Length;
  readonly outsideDiameter: Length;
}

/**
 * Size of a hole beside its pipe, by which a repair is screened for high risk.
 *
 * $$r = \frac{d}{D}$$
 *
 * @param input.holeDiameter     d [m], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @returns ratio
 * @throws CalculationError `invalid-input`
 * @see ASME PCC-2, 401-1.1, as recalled
 */
export function holeOverDiameter(input: HoleOverDiameterInput): number {
  const { holeDiameter: d, outsideDiameter: D } = input;
  nonNegative(d, 'holeDiameter', 'm');
  positive(D, 'outsideDiameter', 'm');
  const ratio = d / D;
  finite(ratio, 'hole over diameter', '');
  return ratio;
}

export const holeOverDiameterFormula = /* @__PURE__ */ formula<HoleOverDiameterInput, number>({
  id: 'laminate/hole-over-diameter',
  title: 'Hole over pipe diameter',
  compute: holeOverDiameter,
  equation: { expression: 'd / D' },
  inputs: {
    holeDiameter: { symbol: 'd', kind: 'length', name: 'hole diameter', sample: [0.001, 0.3] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
  },
  output: { symbol: 'r', kind: 'number', name: 'hole over pipe diameter' },
  sources: [{ key: 'asme-pcc-2', locator: '401-1.1, as recalled' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});
