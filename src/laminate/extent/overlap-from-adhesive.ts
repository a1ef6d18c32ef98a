import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface OverlapFromAdhesiveInput {
  readonly axialModulus: Modulus;
  readonly axialStrain: Strain;
  readonly laminateThickness: Length;
  readonly lapShearStrength: Stress;
  readonly factor?: number;
}

/**
 * Overlap over which the adhesive passes the axial force of the laminate into the pipe.
 *
 * $$l = n \frac{E_a \varepsilon_a t}{\tau}$$
 *
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.axialStrain        eps_a, strain along the pipe that the bond has to follow, > 0
 * @param input.laminateThickness  t [m], >= 0
 * @param input.lapShearStrength   tau, lap shear strength of the adhesive on this substrate [Pa], > 0
 * @param input.factor             n of the rule set; 3 unless given
 * @returns overlap [m]
 * @throws CalculationError `invalid-input`
 * @remarks A mean shear stress: shear peaks at the ends of the overlap, which the factor is for. Recollections differ on
 *   it, 3 or 1; the larger is taken. The strain is not the allowable one of a long life, which would shorten the overlap.
 * @see ISO 24817:2017, 7.5.8; ASME PCC-2, 401-3.4, as recalled
 */
export function overlapFromAdhesive(input: OverlapFromAdhesiveInput): Length {
  const { axialModulus: Ea, axialStrain: eps, laminateThickness: t, lapShearStrength: tau, factor: n = 3 } = input;
  positive(Ea, 'axialModulus', 'Pa');
  positive(eps, 'axialStrain', '');
  nonNegative(t, 'laminateThickness', 'm');
  positive(tau, 'lapShearStrength', 'Pa');
  positive(n, 'factor', '');
  const l = (n * Ea * eps * t) / tau;
  finite(l, 'overlap', 'm');
  return l as Length;
}

export const overlapFromAdhesiveFormula = /* @__PURE__ */ formula<OverlapFromAdhesiveInput, Length>({
  id: 'laminate/overlap-from-adhesive',
  title: 'Overlap from the adhesive',
  search: ['bond length', 'lap shear'],
  compute: overlapFromAdhesive,
  equation: { expression: 'n * E_a * eps_a * t / tau' },
  inputs: {
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    axialStrain: {
      symbol: 'eps_a',
      kind: 'strain',
      name: 'axial strain that the bond follows',
      sample: [0.0005, 0.004],
    },
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    lapShearStrength: { symbol: 'tau', kind: 'stress', name: 'lap shear strength', sample: [4e6, 20e6] },
    factor: { symbol: 'n', kind: 'number', name: 'factor', default: 3, sample: [1, 3] },
  },
  output: { symbol: 'l_adh', kind: 'length', name: 'overlap from the adhesive' },
  sources: [
    { key: 'iso-24817', locator: '7.5.8, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled', derived: 'mean shear over the overlap' },
    factor: { tag: 'recalled', note: '1 in one recollection: the larger is taken' },
  },
  limits: [],
});
