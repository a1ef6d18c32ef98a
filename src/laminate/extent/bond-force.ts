import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface BondForceInput {
  readonly outsideDiameter: Length;
  readonly overlap: Length;
  readonly lapShearStrength: Stress;
  readonly factor?: number;
}

/**
 * Axial force that the bond on an overlap passes into the pipe, with the factor of the rule set.
 *
 * $$F = \frac{\pi D\,l\,\tau}{n}$$
 *
 * @param input.outsideDiameter   D, of the pipe under the bond [m], > 0
 * @param input.overlap           l [m], >= 0
 * @param input.lapShearStrength  tau [Pa], > 0
 * @param input.factor            n, > 0; 3 unless given
 * @returns force [N]
 * @throws CalculationError `invalid-input`
 * @remarks A mean shear stress, as in `overlapFromAdhesive`.
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function bondForce(input: BondForceInput): Force {
  const { outsideDiameter: D, overlap: l, lapShearStrength: tau, factor: n = 3 } = input;
  positive(D, 'outsideDiameter', 'm');
  nonNegative(l, 'overlap', 'm');
  positive(tau, 'lapShearStrength', 'Pa');
  positive(n, 'factor', '');
  const F = (Math.PI * D * l * tau) / n;
  finite(F, 'force', 'N');
  return F as Force;
}

export const bondForceFormula = /* @__PURE__ */ formula<BondForceInput, Force>({
  id: 'laminate/bond-force',
  title: 'Axial force that the bond carries',
  search: ['adhesive', 'lap joint', 'pull'],
  compute: bondForce,
  equation: { expression: 'pi * D * l * tau / n' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    overlap: { symbol: 'l', kind: 'length', name: 'overlap', sample: [0.02, 0.4] },
    lapShearStrength: { symbol: 'tau', kind: 'stress', name: 'lap shear strength', sample: [4e6, 15e6] },
    factor: { symbol: 'n', kind: 'number', name: 'factor of the rule set', sample: [1, 4], default: 3 },
  },
  output: { symbol: 'F', kind: 'force', name: 'axial force' },
  sources: [
    { key: 'iso-24817', locator: '7.5.8' },
    { key: 'asme-pcc-2', locator: '401-3.4' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'mean shear over the bonded ring' }, factor: { tag: 'recalled' } },
  limits: [],
});
