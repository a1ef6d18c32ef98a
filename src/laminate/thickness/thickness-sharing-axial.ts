import { atLeast, below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ThicknessSharingAxialInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly wrappedDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly remainingWall: Length;
}

/**
 * Laminate thickness along the pipe when the pipe shares the load: the wall lies on the circle of the pipe, the laminate on
 * that over the filler.
 *
 * $$t = \frac{E_s}{E_a s_a} \frac{F - \pi D s_a t_s}{\pi D_w}$$
 *
 * @param input.axialForce         F, tensile axial force with that of the pressure [N], >= 0
 * @param input.outsideDiameter    D, of the pipe [m], > 0
 * @param input.wrappedDiameter    D_w, over the filler [m], >= D
 * @param input.allowableStress    s_a, that the pipe may come to along itself [Pa], > 0: `pipeStressAtStrain`
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @returns laminate thickness [m]; 0 where the pipe carries the force alone
 * @throws CalculationError `invalid-input`
 * @remarks A defect assessment speaks of the hoop direction only: along the pipe the plain wall counts. Without filler, and
 *   with P_s = 2 s t_s/D, this is D/(2 s) E_s/E_a (2 F/(pi D^2) - P_s).
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 2, as recalled
 */
export function thicknessSharingAxial(input: ThicknessSharingAxialInput): Length {
  const { axialForce: F, outsideDiameter: D, wrappedDiameter: Dw, allowableStress: s, substrateModulus: Es } = input;
  const { axialModulus: Ea, remainingWall: ts } = input;
  nonNegative(F, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  atLeast(Dw, D, 'the outside diameter', 'wrappedDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  const held = Math.PI * D * s * ts;
  if (F <= held) return 0 as Length;
  const t = (Es / (Ea * s)) * ((F - held) / (Math.PI * Dw));
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessSharingAxialFormula = /* @__PURE__ */ formula<ThicknessSharingAxialInput, Length>({
  id: 'laminate/thickness-sharing-axial',
  title: 'Thickness, pipe shares the load, axial',
  search: ['repair thickness', 'load sharing'],
  compute: thicknessSharingAxial,
  equation: {
    where: [{ symbol: 'F_s', kind: 'force', expression: 'pi * D * s_a * t_s' }],
    branches: [
      { when: 'F <= F_s', expression: '0 * D' },
      { expression: 'E_s / (E_a * s_a) * ((F - F_s) / (pi * D_w))' },
    ],
  },
  inputs: {
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force', sample: [0, 5e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 0.6] },
    wrappedDiameter: { symbol: 'D_w', kind: 'length', name: 'diameter over the filler', sample: [0.6, 1.2] },
    allowableStress: { symbol: 's_a', kind: 'stress', name: 'stress that the pipe may come to', sample: [8e7, 4e8] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 2, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'equal strain of two tubes' } },
  limits: [],
});
