import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface ForceYieldedAxialInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly pipeStress: Stress;
  readonly remainingWall: Length;
  readonly axialModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Axial force that a pipe that may yield and its laminate carry at the allowable strain: the inverse of `thicknessYieldedAxial`.
 *
 * $$F = \pi D \left(s_h t_s + \varepsilon_a E_a t\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.pipeStress         s_h, of the pipe at that strain [Pa], > 0: `pipeStressAtStrain`, its yield strength at most
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.allowableStrain    eps_a, along the pipe, > 0
 * @returns axial force [N]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 7, as recalled
 */
export function forceYieldedAxial(input: ForceYieldedAxialInput): Force {
  const { laminateThickness: t, outsideDiameter: D, pipeStress: s, remainingWall: ts, axialModulus: Ea } = input;
  const { allowableStrain: eps } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'pipeStress', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Ea, 'axialModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const force = Math.PI * D * (s * ts + eps * Ea * t);
  finite(force, 'axial force', 'N');
  return force as Force;
}

export const forceYieldedAxialFormula = /* @__PURE__ */ formula<ForceYieldedAxialInput, Force>({
  id: 'laminate/force-yielded-axial',
  title: 'Axial force held, pipe may yield',
  compute: forceYieldedAxial,
  equation: { expression: 'pi * D * (s_h * t_s + eps_a * E_a * t)' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    pipeStress: { symbol: 's_h', kind: 'stress', name: 'stress of the pipe at that strain', sample: [1e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    allowableStrain: { symbol: 'eps_a', kind: 'strain', name: 'allowable axial strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 'F', kind: 'force', name: 'axial force held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 7, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'force balance along the pipe' } },
  limits: [],
});
