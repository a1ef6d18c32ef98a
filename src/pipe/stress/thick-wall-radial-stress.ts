import { below, formula, positive } from '../../formula/index.js';
import { thickCylinderRadialStress } from '../../mechanics/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface ThickWallRadialStressInput {
  readonly pressure: GaugePressure;
  readonly externalPressure?: GaugePressure | undefined;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly radius: Length;
}

/**
 * Radial stress at any radius of the wall of an elastic pipe (Lame), from its outside diameter and wall thickness.
 *
 *$$\sigma_r = -\frac{P r_i^2 (r_o^2 - r^2) + P_o r_o^2 (r^2 - r_i^2)}{r^2 (r_o^2 - r_i^2)}, \quad r_o = \frac{D}{2}, \quad r_i = r_o - t$$
 *
 * @param input.pressure          P, internal gauge pressure [Pa], >= 0
 * @param input.externalPressure  P_o [Pa], >= 0; 0 when left out
 * @param input.outsideDiameter   D [m], > 0
 * @param input.wallThickness     t [m], > 0 and < D/2
 * @param input.radius            r [m], from D/2 - t to D/2
 * @returns radial stress [Pa], tension positive
 * @throws CalculationError `invalid-input`
 * @remarks Elastic, any wall thickness. `mechanics/thick-cylinder-radial-stress` in the measures of a pipe.
 * @see open lecture notes on cylinders (Lame equations)
 */
export function thickWallRadialStress(input: ThickWallRadialStressInput): Stress {
  const { pressure, externalPressure, outsideDiameter: D, wallThickness: t, radius } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const outerRadius = (D / 2) as Length;
  const innerRadius = (D / 2 - t) as Length;
  return thickCylinderRadialStress({ internalPressure: pressure, externalPressure, innerRadius, outerRadius, radius });
}

export const thickWallRadialStressFormula = /* @__PURE__ */ formula<ThickWallRadialStressInput, Stress>({
  id: 'pipe/thick-wall-radial-stress',
  title: 'Radial stress at a radius of a thick-walled pipe',
  search: ['lame'],
  compute: thickWallRadialStress,
  equation: {
    where: [
      { symbol: 'r_o', kind: 'length', expression: 'D / 2' },
      { symbol: 'r_i', kind: 'length', expression: 'D / 2 - t' },
    ],
    expression: '-(P * r_i^2 * (r_o - r) * (r_o + r) + P_o * r_o^2 * (r - r_i) * (r + r_i)) / (r^2 * t * (r_o + r_i))',
  },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 100e6] },
    externalPressure: {
      symbol: 'P_o',
      kind: 'gauge pressure',
      name: 'external pressure',
      sample: [0, 30e6],
      default: 0,
    },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.2, 0.3] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.03, 0.09] },
    radius: { symbol: 'r', kind: 'length', name: 'radius', sample: [0.08, 0.12] },
  },
  output: { symbol: 'sigma_r', kind: 'stress', name: 'radial stress' },
  sources: [{ key: 'mechanics-notes', locator: 'Lame equations' }],
  evidence: { form: { tag: 'secondary', derived: 'finite-difference solution of radial equilibrium' } },
  limits: [],
});
