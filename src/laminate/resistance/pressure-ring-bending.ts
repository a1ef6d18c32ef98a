import { finite, formula, nonNegative, positive, properFraction, refuse } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface PressureRingBendingInput {
  readonly laminateThickness: Length;
  readonly ringMoment: Force;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
  readonly axialForce: Force;
}

/**
 * Pressure that the laminate holds alone at its allowable hoop strain while its ring is bent: the inverse of
 * `thicknessRingBending`.
 *
 * $$P = \frac{2}{D}\left(\varepsilon_c E_c t - \frac{6 m}{t} + \nu_{ca} \frac{F}{\pi D}\right)$$
 *
 * @param input.laminateThickness  t [m], > 0
 * @param input.ringMoment         m, bending moment of the ring for each length along the pipe [N], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.poissonRatio       nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain    eps_c, in the hoop direction, > 0
 * @param input.axialForce         F, axial force that is surely there [N], a push below 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`; `no-solution` when bending and push alone take the hoop strain
 * @see own derivation: membrane strain N / (E t) and bending strain 6 m / (E t^2)
 */
export function pressureRingBending(input: PressureRingBendingInput): GaugePressure {
  const { laminateThickness: t, ringMoment: m, outsideDiameter: D, hoopModulus: Ec, poissonRatio: nu } = input;
  const { allowableStrain: eps, axialForce: F } = input;
  positive(t, 'laminateThickness', 'm');
  nonNegative(m, 'ringMoment', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  finite(F, 'axialForce', 'N');
  const taken = (6 * m) / t - (nu * F) / (Math.PI * D);
  const pressure = (2 / D) * (eps * Ec * t - taken);
  finite(pressure, 'pressure', 'Pa');
  if (pressure >= 0) return pressure as GaugePressure;
  refuse({
    code: 'no-solution',
    parameter: 'laminateThickness',
    value: t,
    unit: 'm',
    constraint: 'must be more: the soil and a push along the pipe take the whole hoop strain without any pressure',
  });
}

export const pressureRingBendingFormula = /* @__PURE__ */ formula<PressureRingBendingInput, GaugePressure>({
  id: 'laminate/pressure-ring-bending',
  title: 'Pressure held beside ring bending',
  compute: pressureRingBending,
  equation: { expression: '2 / D * (eps_c * E_c * t - 6 * m / t + nu_ca * F / (pi * D))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.01, 0.05] },
    ringMoment: {
      symbol: 'm',
      kind: 'force',
      name: 'bending moment of the ring for each length',
      sample: [0, 20],
      usual: [0, 5e3],
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2], usual: [0.02, 1.5] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [15e9, 80e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.3] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.001, 0.004] },
    axialForce: {
      symbol: 'F',
      kind: 'force',
      name: 'axial force counted',
      sample: [-2e4, 0],
      usual: [-5e6, 0],
    },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'membrane and bending strain of a thin ring' } },
  limits: [],
});
