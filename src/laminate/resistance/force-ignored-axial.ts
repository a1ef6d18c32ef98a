import { finite, formula, nonNegative, positive, properFraction } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface ForceIgnoredAxialInput {
  readonly laminateThickness: Length;
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
}

/**
 * Axial force that the laminate carries alone at its allowable axial strain: the inverse of `thicknessIgnoredAxial`.
 *
 * $$F = \pi D E_a \left(\varepsilon_a t + \frac{P D}{2}\frac{\nu_{ca}}{E_c}\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.pressure           P, pressure that is surely there whenever the force is [Pa], >= 0; 0 relieves nothing
 * @param input.outsideDiameter    D [m], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.poissonRatio       nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain    eps_a, along the pipe, > 0
 * @returns axial force [N]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 9, as recalled
 */
export function forceIgnoredAxial(input: ForceIgnoredAxialInput): Force {
  const { laminateThickness: t, pressure: P, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea } = input;
  const { poissonRatio: nu, allowableStrain: eps } = input;
  nonNegative(t, 'laminateThickness', 'm');
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  const force = Math.PI * D * Ea * (eps * t + (P * D * nu) / (2 * Ec));
  finite(force, 'axial force', 'N');
  return force as Force;
}

export const forceIgnoredAxialFormula = /* @__PURE__ */ formula<ForceIgnoredAxialInput, Force>({
  id: 'laminate/force-ignored-axial',
  title: 'Axial force held, laminate carries everything',
  search: ['axial strength', 'end load'],
  compute: forceIgnoredAxial,
  equation: { expression: 'pi * D * E_a * (eps_a * t + P * D * nu_ca / (2 * E_c))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure counted as relief', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.5] },
    allowableStrain: { symbol: 'eps_a', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 'F', kind: 'force', name: 'axial force held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 9, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'inverse of the laminate stiffness' } },
  limits: [],
});
