import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface ThicknessYieldedAxialInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly pipeStress: Stress;
  readonly remainingWall: Length;
  readonly axialModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Laminate thickness along the pipe when the pipe may yield, and goes on carrying what it carries then.
 *
 * $$t = \frac{F/(\pi D) - s_h t_s}{\varepsilon_a E_a}$$
 *
 * @param input.axialForce       F, tensile axial force with that of the pressure [N], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.pipeStress       s_h, of the pipe at that strain [Pa], > 0: `pipeStressAtStrain`, its yield strength at most
 * @param input.remainingWall    t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.axialModulus     E_a, of the laminate [Pa], > 0
 * @param input.allowableStrain  eps_a, along the pipe, > 0
 * @returns laminate thickness [m]; 0 where the pipe carries the force alone
 * @throws CalculationError `invalid-input`
 * @remarks With F of closed ends this is P D/4 - s_h t_s over eps_a E_a.
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 7, as recalled
 */
export function thicknessYieldedAxial(input: ThicknessYieldedAxialInput): Length {
  const { axialForce: F, outsideDiameter: D, pipeStress: s, remainingWall: ts, axialModulus: Ea } = input;
  const { allowableStrain: eps } = input;
  nonNegative(F, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'pipeStress', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Ea, 'axialModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const [whole, pipe] = [F / (Math.PI * D), s * ts];
  if (whole <= pipe) return 0 as Length;
  const t = (whole - pipe) / (eps * Ea);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessYieldedAxialFormula = /* @__PURE__ */ formula<ThicknessYieldedAxialInput, Length>({
  id: 'laminate/thickness-yielded-axial',
  title: 'Thickness, pipe may yield, axial',
  compute: thicknessYieldedAxial,
  equation: {
    branches: [
      { when: 'F / (pi * D) <= s_h * t_s', expression: '0 * D' },
      { expression: '(F / (pi * D) - s_h * t_s) / (eps_a * E_a)' },
    ],
  },
  inputs: {
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force', sample: [0, 10e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    pipeStress: { symbol: 's_h', kind: 'stress', name: 'stress of the pipe at that strain', sample: [1e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    allowableStrain: { symbol: 'eps_a', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 7, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'force balance along the pipe' } },
  limits: [],
});
