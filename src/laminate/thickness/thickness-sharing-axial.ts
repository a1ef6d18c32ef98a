import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ThicknessSharingAxialInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly substratePressure: GaugePressure;
}

/**
 * Laminate thickness along the pipe when the pipe shares the load and stays below its allowable stress.
 *
 * $$t = \frac{D}{2 s} \frac{E_s}{E_a} \left(\frac{2 F}{\pi D^2} - P_s\right)$$
 *
 * @param input.axialForce         F, tensile axial force with that of the pressure [N], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.substratePressure  P_s = 2 s t_s/D [Pa], >= 0
 * @returns laminate thickness [m]; 0 where the pipe carries the force alone
 * @throws CalculationError `invalid-input`
 * @remarks Exact only with P_s from `substratePressure`; P_s of a defect assessment is a hoop figure and credits the wall
 *   with axial strength that it need not have.
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 2, as recalled
 */
export function thicknessSharingAxial(input: ThicknessSharingAxialInput): Length {
  const { axialForce: F, outsideDiameter: D, allowableStress: s, substrateModulus: Es, axialModulus: Ea } = input;
  const { substratePressure: Ps } = input;
  nonNegative(F, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  nonNegative(Ps, 'substratePressure', 'Pa');
  const PF = (2 * F) / (Math.PI * D * D);
  if (PF <= Ps) return 0 as Length;
  const t = (D / (2 * s)) * (Es / Ea) * (PF - Ps);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessSharingAxialFormula = /* @__PURE__ */ formula<ThicknessSharingAxialInput, Length>({
  id: 'laminate/thickness-sharing-axial',
  title: 'Thickness, pipe shares the load, axial',
  compute: thicknessSharingAxial,
  equation: {
    where: [{ symbol: 'P_F', kind: 'gauge pressure', expression: '2 * F / (pi * D^2)' }],
    branches: [{ when: 'P_F <= P_s', expression: '0 * D' }, { expression: 'D / (2 * s) * (E_s / E_a) * (P_F - P_s)' }],
  },
  inputs: {
    axialForce: { symbol: 'F', kind: 'force', name: 'axial force', sample: [0, 5e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    substratePressure: {
      symbol: 'P_s',
      kind: 'gauge pressure',
      name: 'pressure that the remaining wall holds alone',
      sample: [0, 10e6],
    },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 2, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'equal strain of two tubes' } },
  limits: [],
});
