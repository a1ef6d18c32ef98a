import { finite, formula, nonNegative, positive, properFraction } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface ThicknessIgnoredAxialInput {
  readonly axialForce: Force;
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
}

/**
 * Laminate thickness along the pipe when the laminate carries everything and the pipe nothing.
 *
 * $$t = \frac{1}{\varepsilon_a}\left[\frac{F}{\pi D}\frac{1}{E_a} - \frac{P D}{2}\frac{\nu_{ca}}{E_c}\right]$$
 *
 * @param input.axialForce       F, tensile axial force with that of the pressure [N], >= 0
 * @param input.pressure         P, pressure that is surely there whenever the force is [Pa], >= 0; 0 relieves nothing
 * @param input.outsideDiameter  D [m], > 0
 * @param input.hoopModulus      E_c, of the laminate [Pa], > 0
 * @param input.axialModulus     E_a, of the laminate [Pa], > 0
 * @param input.poissonRatio     nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain  eps_a, along the pipe, > 0
 * @returns laminate thickness [m]; 0 where the pressure shortens the laminate as much as the force lengthens it
 * @throws CalculationError `invalid-input`
 * @remarks An axial force that does not come from the pressure can act without it: then evaluate with P = 0 too.
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 9, as recalled
 */
export function thicknessIgnoredAxial(input: ThicknessIgnoredAxialInput): Length {
  const { axialForce: F, pressure: P, outsideDiameter: D, hoopModulus: Ec, axialModulus: Ea } = input;
  const { poissonRatio: nu, allowableStrain: eps } = input;
  nonNegative(F, 'axialForce', 'N');
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  const [pull, relief] = [F / (Math.PI * D * Ea), (P * D * nu) / (2 * Ec)];
  if (pull <= relief) return 0 as Length;
  const t = (pull - relief) / eps;
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessIgnoredAxialFormula = /* @__PURE__ */ formula<ThicknessIgnoredAxialInput, Length>({
  id: 'laminate/thickness-ignored-axial',
  title: 'Thickness, laminate carries everything, axial',
  search: ['repair thickness', 'end load'],
  compute: thicknessIgnoredAxial,
  equation: {
    where: [
      { symbol: 't_F', kind: 'length', expression: 'F / (pi * D * E_a)' },
      { symbol: 't_P', kind: 'length', expression: 'P * D * nu_ca / (2 * E_c)' },
    ],
    branches: [{ when: 't_F <= t_P', expression: '0 * D' }, { expression: '(t_F - t_P) / eps_a' }],
  },
  inputs: {
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force', sample: [0, 5e6] },
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure counted as relief', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.5] },
    allowableStrain: { symbol: 'eps_a', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 9, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'inverse of the laminate stiffness' } },
  limits: [],
});
