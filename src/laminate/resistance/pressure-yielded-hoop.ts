import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface PressureYieldedHoopInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly pipeStress: Stress;
  readonly remainingWall: Length;
  readonly hoopModulus: Modulus;
  readonly allowableStrain: Strain;
}

/**
 * Pressure that a pipe that may yield and its laminate hold at the allowable strain: the inverse of `thicknessYieldedHoop`.
 *
 * $$P = \frac{2}{D}\left(s_h t_s + \varepsilon_c E_c t\right)$$
 *
 * @param input.laminateThickness  t [m], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.pipeStress         s_h, of the pipe at that strain [Pa], > 0: `pipeStressAtStrain`, its yield strength at most
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.allowableStrain    eps_c, in the hoop direction, > 0
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @see ISO 24817:2017, 7.5.4; ASME PCC-2, Eq. 6, as recalled
 */
export function pressureYieldedHoop(input: PressureYieldedHoopInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, pipeStress: s, remainingWall: ts, hoopModulus: Ec } = input;
  const { allowableStrain: eps } = input;
  nonNegative(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'pipeStress', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(eps, 'allowableStrain', '');
  const pressure = (2 / D) * (s * ts + eps * Ec * t);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const pressureYieldedHoopFormula = /* @__PURE__ */ formula<PressureYieldedHoopInput, GaugePressure>({
  id: 'laminate/pressure-yielded-hoop',
  title: 'Pressure held, pipe may yield, hoop',
  search: ['plastic', 'load sharing'],
  compute: pressureYieldedHoop,
  equation: { expression: '2 / D * (s_h * t_s + eps_c * E_c * t)' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    pipeStress: { symbol: 's_h', kind: 'stress', name: 'stress of the pipe at that strain', sample: [1e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    allowableStrain: { symbol: 'eps_c', kind: 'strain', name: 'allowable hoop strain', sample: [0.0005, 0.004] },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.4, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 6, as recalled' },
  ],
  evidence: { form: { tag: 'recalled', derived: 'elastic-plastic march' } },
  limits: [],
});
