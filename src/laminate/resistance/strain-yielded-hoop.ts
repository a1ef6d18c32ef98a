import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Modulus, Strain, Stress } from '../../quantity/index.js';

export interface StrainYieldedHoopInput {
  readonly pressure: GaugePressure;
  readonly outsideDiameter: Length;
  readonly yieldStrength: Stress;
  readonly remainingWall: Length;
  readonly hoopModulus: Modulus;
  readonly laminateThickness: Length;
}

/**
 * Hoop strain of the laminate on a pipe that has yielded.
 *
 * $$\varepsilon = \frac{P D/2 - s t_s}{E_c t}$$
 *
 * @param input.pressure           P, design pressure [Pa], >= 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.yieldStrength      s, specified least yield strength of the pipe [Pa], > 0
 * @param input.remainingWall      t_s, least wall at the end of life [m], >= 0 and < D/2
 * @param input.hoopModulus        E_c, of the laminate [Pa], > 0
 * @param input.laminateThickness  t [m], > 0
 * @returns laminate strain; 0 where the pipe holds the pressure without yielding, though the laminate may share elastically
 * @throws CalculationError `invalid-input`
 * @remarks By equilibrium alone, so it holds whatever the pressure during application was: it shows what a thickness with
 *   credit for live pressure really strains.
 */
export function strainYieldedHoop(input: StrainYieldedHoopInput): Strain {
  const { pressure: P, outsideDiameter: D, yieldStrength: s, remainingWall: ts, hoopModulus: Ec } = input;
  const { laminateThickness: t } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(D, 'outsideDiameter', 'm');
  positive(s, 'yieldStrength', 'Pa');
  nonNegative(ts, 'remainingWall', 'm');
  below(ts, D / 2, 'half the outside diameter', 'remainingWall', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(t, 'laminateThickness', 'm');
  const [whole, pipe] = [(P * D) / 2, s * ts];
  if (whole <= pipe) return 0 as Strain;
  const strain = (whole - pipe) / (Ec * t);
  finite(strain, 'laminate strain', '');
  return strain as Strain;
}

export const strainYieldedHoopFormula = /* @__PURE__ */ formula<StrainYieldedHoopInput, Strain>({
  id: 'laminate/strain-yielded-hoop',
  title: 'Hoop strain of the laminate on a yielded pipe',
  compute: strainYieldedHoop,
  equation: {
    branches: [{ when: 'P * D / 2 <= s * t_s', expression: '0' }, { expression: '(P * D / 2 - s * t_s) / (E_c * t)' }],
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'design pressure', sample: [0, 30e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.05, 1.2] },
    yieldStrength: { symbol: 's', kind: 'stress', name: 'yield strength of the pipe', sample: [2e8, 5.5e8] },
    remainingWall: { symbol: 't_s', kind: 'length', name: 'remaining wall at the end of life', sample: [0, 0.02] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.001, 0.05] },
  },
  output: { symbol: 'eps', kind: 'strain', name: 'laminate strain' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'elastic-plastic march' } },
  limits: [],
});
