import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface StrainYieldedHoopInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly yieldStrength: Stress;
  readonly remainingWall: Length;
  readonly substrateModulus: Modulus;
  readonly hoopModulus: Modulus;
  readonly laminateThickness: Length;
}

/**
 * Hoop strain of the laminate on a pipe that may yield.
 *
 * $$\varepsilon = \max\left(\frac{P D/2}{E_s t_s + E_c t},\, \frac{P D/2 - s t_s}{E_c t}\right)$$
 *
 * @param input.pressure           P, design pressure [Pa], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.yieldStrength      s, specified least yield strength of the pipe [Pa], > 0
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.substrateModulus   E_s [Pa], > 0
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.laminateThickness  t [m], > 0
 * @returns laminate strain: the first term until the steel yields, the second from there on
 * @throws CalculationError `invalid-input`
 * @remarks Once the pipe has yielded, equilibrium alone sets the strain, whatever the pressure during application was: it
 *   shows what a thickness with credit for live pressure really strains. Until then both share elastically, as if the
 *   laminate had been put on a pipe without pressure, which is the most that it can strain.
 */
export function strainYieldedHoop(input: StrainYieldedHoopInput): Strain {
  const { pressure: P, outsideDiameter: D, yieldStrength: s, remainingWall: ts, hoopModulus: Ec } = input;
  const { substrateModulus: Es, laminateThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'yieldStrength', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Es, 'substrateModulus', 'Pa');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(t, 'laminateThickness', 'm');
  const whole = (P * D) / 2;
  const elastic = whole / (Es * ts + Ec * t);
  const yielded = (whole - s * ts) / (Ec * t);
  const strain = Math.max(elastic, yielded);
  finite(strain, 'laminate strain', '');
  return strain as Strain;
}

export const strainYieldedHoopFormula = /* @__PURE__ */ formula<StrainYieldedHoopInput, Strain>({
  id: 'laminate/strain-yielded-hoop',
  title: 'Hoop strain of the laminate on a pipe that may yield',
  compute: strainYieldedHoop,
  equation: { expression: 'max(P * D / 2 / (E_s * t_s + E_c * t), (P * D / 2 - s * t_s) / (E_c * t))' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    yieldStrength: { symbol: 's', kind: 'stress', name: 'yield strength of the pipe', sample: [2e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    substrateModulus: { symbol: 'E_s', kind: 'modulus', name: 'modulus of the pipe', sample: [65e9, 210e9] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.001, 0.05] },
  },
  output: { symbol: 'eps', kind: 'strain', name: 'laminate strain' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'elastic-plastic march' } },
  limits: [],
});
