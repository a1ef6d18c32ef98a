import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface ThicknessSharingHoopInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
  readonly substratePressure: GaugePressure;
}

/**
 * Laminate thickness in the hoop direction when the pipe shares the load and stays below its allowable stress.
 *
 * $$t = \frac{D}{2 s} \frac{E_s}{E_c} (P - P_s)$$
 *
 * @param input.pressure           P, design pressure [Pa], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.substratePressure  P_s, that the damaged pipe holds alone [Pa], >= 0
 * @returns laminate thickness [m]; 0 where the pipe holds the pressure alone
 * @throws CalculationError `invalid-input`
 * @remarks Equal strain of pipe and laminate, with the pipe without pressure during application: under pressure use
 *   `thicknessSharingLive`. The strain of the laminate is s/E_s: s from `pipeStressAtStrain` keeps it allowable. Under
 *   closed ends the axial stress takes from that strain, and this thickness is 3 to 28 % short: `thicknessSharingBiaxial`.
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 1, as recalled
 */
export function thicknessSharingHoop(input: ThicknessSharingHoopInput): Length {
  const { pressure: P, outsideDiameter: D, allowableStress: s, substrateModulus: Es, hoopModulus: Ec } = input;
  const { substratePressure: Ps } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
  nonNegative(Ps, 'substratePressure', 'Pa');
  if (P <= Ps) return 0 as Length;
  const t = (D / (2 * s)) * (Es / Ec) * (P - Ps);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessSharingHoopFormula = /* @__PURE__ */ formula<ThicknessSharingHoopInput, Length>({
  id: 'laminate/thickness-sharing-hoop',
  title: 'Thickness, pipe shares the load, hoop',
  search: ['repair thickness', 'load sharing', 'overwrap'],
  compute: thicknessSharingHoop,
  equation: {
    branches: [{ when: 'P <= P_s', expression: '0 * D' }, { expression: 'D / (2 * s) * (E_s / E_c) * (P - P_s)' }],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 20e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    allowableStress: { symbol: 's', kind: 'stress', name: 'allowable stress of the pipe', sample: [8e7, 4e8] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    substratePressure: {
      symbol: 'P_s',
      kind: 'gauge pressure',
      name: 'pressure that the pipe holds alone',
      sample: [0, 10e6],
    },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 1, as recalled' },
  ],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'equal strain of two rings',
      note: 'Under closed ends this thickness is 3 to 28 % short: thicknessSharingBiaxial beside it, the thicker governs.',
    },
  },
  limits: [],
});
