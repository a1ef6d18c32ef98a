import { finite, formula, positive, refuse } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface CriticalThroughWallLengthInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly flowStress: Stress;
  readonly pressure: GaugePressure;
}

/**
 * Longest slot through the wall, along the pipe, that stays a leak at this pressure: the length at which S_flow/M equals
 * the hoop stress.
 *
 * $$L = \sqrt{z D t},\qquad M = \frac{2 t S_{flow}}{P D},\qquad
 * z = \frac{2 (M^2 - 1)}{0.6275 + \sqrt{0.6275^2 - 0.0135 (M^2 - 1)}}\quad\text{or}\quad z = \frac{M - 3.3}{0.032}$$
 *
 * The first z holds up to M = 4.8926 (z = 50), the second from M = 4.9; between them, where the bulging factor jumps, z is 50.
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.flowStress       S_flow [Pa], > 0
 * @param input.pressure         P, internal gauge pressure [Pa], > 0
 * @returns critical length [m]
 * @throws CalculationError `invalid-input`; `no-solution` when the hoop stress alone reaches the flow stress
 * @remarks No margin is in it. For tough pipe.
 * @see NG-18 through-wall flaw equation, solved for the length
 */
export function criticalThroughWallLength(input: CriticalThroughWallLengthInput): Length {
  const { outsideDiameter: D, wallThickness: t, flowStress: S, pressure: P } = input;
  checkPipeWall(D, t);
  positive(S, 'flowStress', 'Pa');
  positive(P, 'pressure', 'Pa');
  const M = ((2 * t) / D) * (S / P);
  if (!(M > 1)) {
    const constraint = 'must be below {limit}, where the hoop stress reaches the flow stress';
    const limit = ((2 * t) / D) * S;
    refuse({ code: 'no-solution', parameter: 'pressure', value: P, unit: 'Pa', constraint, limit });
  }
  const length = Math.sqrt(lengthParameter(M)) * (Math.sqrt(D) * Math.sqrt(t));
  finite(length, 'critical length', 'm');
  return length as Length;
}

/** z at which the three-term bulging factor is M; 23.9375 is its square at z = 50. */
function lengthParameter(M: number): number {
  if (M >= 4.9) return (M - 3.3) / 0.032;
  const over = (M - 1) * (M + 1);
  if (over >= 22.9375) return 50;
  return (2 * over) / (0.6275 + Math.sqrt(0.6275 * 0.6275 - 0.0135 * over));
}

export const criticalThroughWallLengthFormula = /* @__PURE__ */ formula<CriticalThroughWallLengthInput, Length>({
  id: 'pipe/critical-through-wall-length',
  title: 'Longest through-wall slot that stays a leak',
  search: ['leak before break', 'rupture', 'tear'],
  compute: criticalThroughWallLength,
  equation: {
    where: [{ symbol: 'M', kind: 'number', expression: '2 * t * S_flow / (P * D)' }],
    branches: [
      { when: 'M >= 4.9', expression: 'sqrt((M - 3.3) / 0.032 * D * t)' },
      { when: 'M^2 - 1 >= 22.9375', expression: 'sqrt(50 * D * t)' },
      {
        where: [
          {
            symbol: 'z',
            kind: 'number',
            expression: '2 * (M^2 - 1) / (0.6275 + sqrt(0.6275^2 - 0.0135 * (M^2 - 1)))',
          },
        ],
        expression: 'sqrt(z * D * t)',
      },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [1e6, 15e6] },
  },
  output: { symbol: 'L_c', kind: 'length', name: 'critical length' },
  sources: [{ key: 'kiefner-vieth-1989', locator: 'NG-18 through-wall flaw equation' }],
  evidence: { form: { tag: 'recalled', derived: 'bulging factor searched over the length' } },
  limits: [],
});
