import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface UnbondedDiameterInput {
  readonly holeDiameter: Length;
  readonly padDiameter: Length;
  readonly sheetSize: Length;
  readonly collarSize: Length;
}

/**
 * Diameter of the circle over which a laminate on a sealed leak is bonded to nothing: the largest of what lies on the steel.
 *
 * $$d_u = \max(d, d_p, s, k)$$
 *
 * @param input.holeDiameter  d, hole that is designed for at the end of life [m], > 0
 * @param input.padDiameter   d_p, of the pad of putty [m], >= 0
 * @param input.sheetSize     s, largest extent of the sheet on the pad [m], >= 0
 * @param input.collarSize    k, largest extent of what else covers the steel round the sheet [m], >= 0; 0 for none
 * @returns diameter of the unbonded circle [m]
 * @throws CalculationError `invalid-input`
 * @remarks Own form: the cavity under the laminate is taken at the whole pressure, and the seal earns no credit. Pad, sheet
 *   and collar are taken to lie with their middle over the hole.
 */
export function unbondedDiameter(input: UnbondedDiameterInput): Length {
  const { holeDiameter: d, padDiameter: dp, sheetSize: s, collarSize: k } = input;
  positive(d, 'holeDiameter', 'm');
  nonNegative(dp, 'padDiameter', 'm');
  nonNegative(s, 'sheetSize', 'm');
  nonNegative(k, 'collarSize', 'm');
  const diameter = Math.max(d, dp, s, k);
  finite(diameter, 'unbonded diameter', 'm');
  return diameter as Length;
}

export const unbondedDiameterFormula = /* @__PURE__ */ formula<UnbondedDiameterInput, Length>({
  id: 'laminate/unbonded-diameter',
  title: 'Circle over which the laminate is bonded to nothing',
  compute: unbondedDiameter,
  equation: { expression: 'max(d, d_p, s, k)' },
  inputs: {
    holeDiameter: { symbol: 'd', kind: 'length', name: 'hole diameter for the design', sample: [0.015, 0.1] },
    padDiameter: { symbol: 'd_p', kind: 'length', name: 'diameter of the pad', sample: [0, 0.2] },
    sheetSize: { symbol: 's', kind: 'length', name: 'largest extent of the sheet', sample: [0, 0.2] },
    collarSize: { symbol: 'k', kind: 'length', name: 'largest extent of the collar', sample: [0, 0.2] },
  },
  output: { symbol: 'd_u', kind: 'length', name: 'diameter of the unbonded circle' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
