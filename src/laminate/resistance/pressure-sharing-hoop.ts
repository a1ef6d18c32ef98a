import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

export interface PressureSharingHoopInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly allowableStress: Stress;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
  readonly substratePressure: GaugePressure;
}

/**
 * Pressure that pipe and laminate hold together with the pipe at its allowable stress: the inverse of
 * `thicknessSharingHoop`.
 *
 * $$P = P_s + \frac{2 s t E_c}{D E_s}$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.allowableStress    s, of the pipe [Pa], > 0
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.substratePressure  P_s, that the damaged pipe holds alone [Pa], >= 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 1, as recalled
 */
export function pressureSharingHoop(input: PressureSharingHoopInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, allowableStress: s, substrateModulus: Es, hoopModulus: Ec } = input;
  const { substratePressure: Ps } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'allowableStress', 'Pa');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
  nonNegative(Ps, 'substratePressure', 'Pa');
  const pressure = Ps + ((2 * s) / D) * (Ec / Es) * t;
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureSharingHoopFormula = /* @__PURE__ */ formula<PressureSharingHoopInput, GaugePressure>({
  id: 'laminate/pressure-sharing-hoop',
  title: 'Pressure held, pipe shares the load, hoop',
  search: ['load sharing', 'reinforcement'],
  compute: pressureSharingHoop,
  equation: { expression: 'P_s + 2 * s / D * (E_c / E_s) * t' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
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
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 1, as recalled' },
  ],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'equal strain of two rings',
      note: 'Under closed ends this pressure is up to 14 % high: pressureSharingBiaxial beside it, the lower governs.',
    },
  },
  limits: [],
});
