import { finite, formula, nonNegative, positive, within } from '../formula/index.js';
import type { GaugePressure, Length, Stress } from '../quantity/index.js';

export interface ThickCylinderRadialStressInput {
  readonly internalPressure: GaugePressure;
  readonly externalPressure?: GaugePressure | undefined;
  readonly innerRadius: Length;
  readonly outerRadius: Length;
  readonly radius: Length;
}

/**
 * Radial stress at a radius of a thick cylinder under internal and external pressure (Lame).
 *
 * $$\sigma_r = -\frac{P_i r_i^2 (r_o^2 - r^2) + P_o r_o^2 (r^2 - r_i^2)}{r^2 (r_o^2 - r_i^2)}$$
 *
 * @param input.internalPressure  P_i [Pa], >= 0
 * @param input.externalPressure  P_o [Pa], >= 0; 0 when left out
 * @param input.innerRadius       r_i [m], > 0
 * @param input.outerRadius       r_o [m], > r_i
 * @param input.radius            r [m], from r_i to r_o
 * @returns radial stress [Pa], compression negative: -P_i at the bore, -P_o at the outside
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, isotropic, far from the ends. The same as A - B/r^2; written so that no term cancels.
 * @see open lecture notes on cylinders (Lame equations)
 */
export function thickCylinderRadialStress(input: ThickCylinderRadialStressInput): Stress {
  const { internalPressure: Pi, externalPressure: Po = 0, innerRadius: ri, outerRadius: ro, radius: r } = input;
  nonNegative(Pi, 'internalPressure', 'Pa');
  nonNegative(Po, 'externalPressure', 'Pa');
  positive(ri, 'innerRadius', 'm');
  positive(ro, 'outerRadius', 'm');
  positive(ro - ri, 'outerRadius - innerRadius', 'm');
  within(r, ri, ro, 'radius', 'm');
  const stress =
    -(Pi * ri * ri * (ro - r) * (ro + r) + Po * ro * ro * (r - ri) * (r + ri)) / (r * r * (ro - ri) * (ro + ri));
  finite(stress, 'radial stress', 'Pa');
  return stress as Stress;
}

export const thickCylinderRadialStressFormula = /* @__PURE__ */ formula<ThickCylinderRadialStressInput, Stress>({
  id: 'mechanics/thick-cylinder-radial-stress',
  title: 'Radial stress in a thick cylinder',
  search: ['lame', 'thick wall'],
  compute: thickCylinderRadialStress,
  equation: {
    expression:
      '-(P_i * r_i^2 * (r_o - r) * (r_o + r) + P_o * r_o^2 * (r - r_i) * (r + r_i)) / (r^2 * (r_o - r_i) * (r_o + r_i))',
  },
  inputs: {
    internalPressure: { symbol: 'P_i', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 100e6] },
    externalPressure: {
      symbol: 'P_o',
      kind: 'gauge pressure',
      name: 'external pressure',
      sample: [0, 30e6],
      default: 0,
    },
    innerRadius: { symbol: 'r_i', kind: 'length', name: 'inner radius', sample: [0.05, 0.3] },
    outerRadius: { symbol: 'r_o', kind: 'length', name: 'outer radius', sample: [0.25, 0.6] },
    radius: { symbol: 'r', kind: 'length', name: 'radius', sample: [0.2, 0.4] },
  },
  output: { symbol: 'sigma_r', kind: 'stress', name: 'radial stress' },
  sources: [{ key: 'mechanics-notes', locator: 'Lame equations' }],
  evidence: { form: { tag: 'secondary', derived: 'finite-difference solution of radial equilibrium' } },
  limits: [],
});
