import { atLeast, below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ForceSharingAxialInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly wrappedDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly remainingWall: Length;
}

/**
 * Axial force that pipe and laminate carry together with the pipe at the stress it may come to: the inverse of
 * `thicknessSharingAxial`.
 *
 * $$F = \pi D s_a t_s + \pi D_w s_a \frac{E_a}{E_s} t$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D, of the pipe [m], > 0
 * @param input.wrappedDiameter    D_w, over the filler [m], >= D
 * @param input.allowableStress    s_a, that the pipe may come to along itself [Pa], > 0: `pipeStressAtStrain`
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @returns axial force [N]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 2, as recalled
 */
export function forceSharingAxial(input: ForceSharingAxialInput): Force {
  const { laminateThickness: t, outsideDiameter: D, wrappedDiameter: Dw, allowableStress: s } = input;
  const { substrateModulus: Es, axialModulus: Ea, remainingWall: ts } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  atLeast(Dw, D, 'the outside diameter', 'wrappedDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  const force = Math.PI * D * s * ts + Math.PI * Dw * s * (Ea / Es) * t;
  finite(force, 'axial force', 'N');
  return force as Force;
}

export const forceSharingAxialFormula = /* @__PURE__ */ formula<ForceSharingAxialInput, Force>({
  id: 'laminate/force-sharing-axial',
  title: 'Axial force held, pipe shares the load',
  search: ['load sharing', 'end load'],
  compute: forceSharingAxial,
  equation: { expression: 'pi * D * s_a * t_s + pi * D_w * s_a * (E_a / E_s) * t' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 0.6] },
    wrappedDiameter: {
      symbol: 'D_w',
      kind: 'length',
      name: 'diameter over the filler',
      sample: [0.6, 1.2],
      usual: [0.02, 1.7],
    },
    allowableStress: { symbol: 's_a', kind: 'stress', name: 'stress that the pipe may come to', sample: [8e7, 4e8] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
  },
  output: { symbol: 'F', kind: 'force', name: 'axial force held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 2, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'equal strain of two tubes' } },
  limits: [],
});
