import { finite, formula, nonNegative, positive, properFraction, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface PressureIgnoredHoopInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
  readonly axialForce?: Force;
}

/**
 * Pressure that the laminate holds alone at its allowable hoop strain: the inverse of `thicknessIgnoredHoop`.
 *
 * $$P = \frac{2}{D}\left(\varepsilon_c E_c t + \nu_{ca}\frac{F}{\pi D}\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.poissonRatio       nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain    eps_c, in the hoop direction, > 0
 * @param input.axialForce         F, axial force that is surely there whenever the pressure is [N]; 0 unless given
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when a push along the pipe alone takes the hoop strain
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Eq. 8, as recalled
 */
export function pressureIgnoredHoop(input: PressureIgnoredHoopInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, hoopModulus: Ec, poissonRatio: nu, allowableStrain: eps } = input;
  const { axialForce: F = 0 } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  finite(F, 'axialForce', 'N');
  const pressure = (2 / D) * (eps * Ec * t + (nu * F) / (Math.PI * D));
  if (pressure < 0) {
    refuse({
      code: 'no-solution',
      parameter: 'laminateThickness',
      value: t,
      unit: 'm',
      constraint: 'must be at least {limit} to bear the axial push without any pressure',
      limit: (-nu * F) / (Math.PI * D * eps * Ec),
    });
  }
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureIgnoredHoopFormula = /* @__PURE__ */ formula<PressureIgnoredHoopInput, GaugePressure>({
  id: 'laminate/pressure-ignored-hoop',
  title: 'Pressure held, laminate carries everything, hoop',
  search: ['wrap strength', 'burst', 'hoop strength'],
  compute: pressureIgnoredHoop,
  equation: { expression: '2 / D * (eps_c * E_c * t + nu_ca * F / (pi * D))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.001, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.5] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force counted as relief', default: 0, sample: [-1e5, 1e6] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 8, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'inverse of the laminate stiffness' } },
  limits: [],
});
