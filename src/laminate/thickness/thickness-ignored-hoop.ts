import { finite, formula, nonNegative, positive, properFraction } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface ThicknessIgnoredHoopInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
  readonly axialForce?: Force;
}

/**
 * Laminate thickness in the hoop direction when the laminate carries everything and the pipe nothing.
 *
 * $$t = \frac{1}{\varepsilon_c}\left[\frac{P D/2}{E_c} - \frac{F}{\pi D}\frac{\nu_{ca}}{E_c}\right]$$
 *
 * @param input.pressure         P, design or equivalent pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.hoopModulus      E_c, of the laminate [Pa], > 0
 * @param input.poissonRatio     nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain  eps_c, in the hoop direction, > 0
 * @param input.axialForce       F, axial force that is surely there whenever the pressure is [N]; 0 unless given
 * @returns laminate thickness [m]; 0 where the axial force contracts the laminate as much as the pressure widens it
 * @throws CalculationError `invalid-input`
 * @remarks A pull along the pipe relieves the hoop: with F left out nothing is relieved, which is the safe choice. A push
 *   is given as a negative force and adds.
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 8, as recalled
 */
export function thicknessIgnoredHoop(input: ThicknessIgnoredHoopInput): Length {
  const { pressure: P, outsideDiameter: D, hoopModulus: Ec, poissonRatio: nu, allowableStrain: eps } = input;
  const { axialForce: F = 0 } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  finite(F, 'axialForce', 'N');
  const [whole, relief] = [(P * D) / 2, (nu * F) / (Math.PI * D)];
  if (whole <= relief) return 0 as Length;
  const t = (whole - relief) / (eps * Ec);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessIgnoredHoopFormula = /* @__PURE__ */ formula<ThicknessIgnoredHoopInput, Length>({
  id: 'laminate/thickness-ignored-hoop',
  title: 'Thickness, laminate carries everything, hoop',
  search: ['repair thickness', 'wrap thickness', 'overwrap', 'sleeve'],
  compute: thicknessIgnoredHoop,
  equation: {
    branches: [
      { when: 'P * D / 2 <= nu_ca * F / (pi * D)', expression: '0 * D' },
      { expression: '(P * D / 2 - nu_ca * F / (pi * D)) / (eps_c * E_c)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.5] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force counted as relief', default: 0, sample: [-1e6, 1e6] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 8, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'inverse of the laminate stiffness' } },
  limits: [],
});
