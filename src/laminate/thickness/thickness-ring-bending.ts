import { finite, formula, nonNegative, positive, properFraction } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';

export interface ThicknessRingBendingInput {
  readonly pressure: GaugePressure;
  readonly ringMoment: Force;
  readonly outsideDiameter: Length;
  readonly hoopModulus: Modulus;
  readonly poissonRatio: number;
  readonly allowableStrain: Strain;
  readonly axialForce: Force;
}

/**
 * Laminate thickness at which pressure and ring bending together strain the laminate, which carries everything, to its
 * allowable hoop strain.
 *
 * $$t = \frac{t_N + \sqrt{t_N^2 + 24\, m / (\varepsilon_c E_c)}}{2}, \qquad
 *   t_N = \frac{1}{\varepsilon_c E_c} \max\left(0, \frac{P D}{2} - \nu_{ca} \frac{F}{\pi D}\right)$$
 *
 * @param input.pressure         P, design or equivalent pressure [Pa], >= 0
 * @param input.ringMoment       m, bending moment of the ring for each length along the pipe [N], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.hoopModulus      E_c, of the laminate [Pa], > 0
 * @param input.poissonRatio     nu_ca, loaded along the hoop, contracting along the pipe, 0 to 1
 * @param input.allowableStrain  eps_c, in the hoop direction, > 0
 * @param input.axialForce       F, axial force that is surely there [N], a push below 0
 * @returns laminate thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks That pressure inside makes the ring rounder is not counted, and neither is the pipe below.
 * @see own derivation: membrane strain N / (E t) and bending strain 6 m / (E t^2)
 */
export function thicknessRingBending(input: ThicknessRingBendingInput): Length {
  const { pressure: P, ringMoment: m, outsideDiameter: D, hoopModulus: Ec, poissonRatio: nu } = input;
  const { allowableStrain: eps, axialForce: F } = input;
  nonNegative(P, 'pressure', 'Pa');
  nonNegative(m, 'ringMoment', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  properFraction(nu, 'poissonRatio');
  positive(eps, 'allowableStrain', '');
  finite(F, 'axialForce', 'N');
  const tN = Math.max(0, (P * D) / 2 - (nu * F) / (Math.PI * D)) / (eps * Ec);
  const t = (tN + Math.sqrt(tN * tN + (24 * m) / (eps * Ec))) / 2;
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessRingBendingFormula = /* @__PURE__ */ formula<ThicknessRingBendingInput, Length>({
  id: 'laminate/thickness-ring-bending',
  title: 'Thickness, pressure and ring bending',
  compute: thicknessRingBending,
  equation: {
    where: [
      {
        symbol: 't_N',
        kind: 'length',
        expression: 'max(0 * D, (P * D / 2 - nu_ca * F / (pi * D)) / (eps_c * E_c))',
      },
    ],
    expression: '(t_N + sqrt(t_N^2 + 24 * m / (eps_c * E_c))) / 2',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    ringMoment: { symbol: 'm', kind: 'force', name: 'bending moment of the ring for each length', sample: [0, 5e3] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.5] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force counted', sample: [-1e6, 0] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'membrane and bending strain of a thin ring' } },
  limits: [],
});
