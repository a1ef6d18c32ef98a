import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ForceSharingAxialInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly substratePressure: GaugePressure;
}

/**
 * Axial force that pipe and laminate carry together with the pipe at its allowable stress: the inverse of
 * `thicknessSharingAxial`.
 *
 * $$F = \frac{\pi D^2}{2}\left(P_s + \frac{2 s t E_a}{D E_s}\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.axialModulus       E_a, of the laminate [Pa], > 0
 * @param input.substratePressure  P_s = 2 s t_s/D [Pa], >= 0
 * @returns axial force [N]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 2, as recalled
 */
export function forceSharingAxial(input: ForceSharingAxialInput): Force {
  const {
    laminateThickness: t,
    outsideDiameter: D,
    allowableStress: s,
    substrateModulus: Es,
    axialModulus: Ea,
  } = input;
  const { substratePressure: Ps } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  nonNegative(Ps, 'substratePressure', 'Pa');
  const force = ((Math.PI * D * D) / 2) * (Ps + ((2 * s) / D) * (Ea / Es) * t);
  finite(force, 'axial force', 'N');
  return force as Force;
}

export const forceSharingAxialFormula = /* @__PURE__ */ formula<ForceSharingAxialInput, Force>({
  id: 'laminate/force-sharing-axial',
  title: 'Axial force held, pipe shares the load',
  compute: forceSharingAxial,
  equation: { expression: 'pi * D^2 / 2 * (P_s + 2 * s / D * (E_a / E_s) * t)' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
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
  output: { symbol: 'F', kind: 'force', name: 'axial force held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 2, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'equal strain of two tubes' } },
  limits: [],
});
