import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface ThicknessYieldedHoopInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly pipeStress: Stress;
  readonly remainingWall: Length;
  readonly hoopModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Laminate thickness in the hoop direction when the pipe may yield, and goes on carrying what it carries then.
 *
 * $$t = \frac{P D/2 - s_h t_s}{\varepsilon_c E_c}$$
 *
 * @param input.pressure         P, design pressure [Pa], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.pipeStress       s_h, of the pipe at that strain [Pa], > 0: `pipeStressAtStrain`, its yield strength at most
 * @param input.remainingWall    t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.hoopModulus      E_c, of the laminate [Pa], > 0
 * @param input.allowableStrain  eps_c, in the hoop direction, > 0
 * @returns laminate thickness [m]; 0 where the pipe holds the pressure alone
 * @throws CalculationError `invalid-input`
 * @remarks No credit for pressure during application: once the pipe yields, equilibrium alone sets the strain, whatever
 *   the pressure was when the laminate was put on.
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 6, as recalled
 */
export function thicknessYieldedHoop(input: ThicknessYieldedHoopInput): Length {
  const { pressure: P, outsideDiameter: D, pipeStress: s, remainingWall: ts, hoopModulus: Ec } = input;
  const { allowableStrain: eps } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'pipeStress', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const [whole, pipe] = [(P * D) / 2, s * ts];
  if (whole <= pipe) return 0 as Length;
  const t = (whole - pipe) / (eps * Ec);
  finite(t, 'laminate thickness', 'm');
  return t as Length;
}

export const thicknessYieldedHoopFormula = /* @__PURE__ */ formula<ThicknessYieldedHoopInput, Length>({
  id: 'laminate/thickness-yielded-hoop',
  title: 'Thickness, pipe may yield, hoop',
  search: ['repair thickness', 'plastic'],
  compute: thicknessYieldedHoop,
  equation: {
    branches: [
      { when: 'P * D / 2 <= s_h * t_s', expression: '0 * D' },
      { expression: '(P * D / 2 - s_h * t_s) / (eps_c * E_c)' },
    ],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    pipeStress: { symbol: 's_h', kind: 'stress', name: 'stress of the pipe at that strain', sample: [1e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 't', kind: 'length', name: 'laminate thickness' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 6, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'elastic-plastic march' } },
  limits: [],
});
