import { below, formula, positive } from '../../formula/index.js';
import { type CylinderEnds, thickCylinderAxialStress } from '../../mechanics/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface ThickWallAxialStressInput {
  readonly pressure: GaugePressure;
  readonly externalPressure?: GaugePressure | undefined;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly ends: CylinderEnds;
  readonly poissonRatio?: number | undefined;
}

/**
 * Axial stress in the wall of an elastic pipe by what holds its ends, from its outside diameter and wall thickness.
 *
 *$$A = \frac{P r_i^2 - P_o r_o^2}{r_o^2 - r_i^2}, \qquad \sigma_z = A,\ 0,\ 2 \nu A$$
 *
 * @param input.pressure          P, internal gauge pressure [Pa], >= 0
 * @param input.externalPressure  P_o [Pa], >= 0; 0 when left out
 * @param input.outsideDiameter   D [m], > 0
 * @param input.wallThickness     t [m], > 0 and < D/2
 * @param input.ends              `closed`, `open` (sliding seals) or `restrained` (no axial strain)
 * @param input.poissonRatio      nu, from 0 to 0.5; 0.3 when left out; used for restrained ends only
 * @returns axial stress [Pa], the same over the whole wall, tension positive
 * @throws CalculationError `invalid-input`
 * @remarks Pressure only: `restrainedThermalStress` is a term of its own.
 * @see open lecture notes on cylinders
 */
export function thickWallAxialStress(input: ThickWallAxialStressInput): Stress {
  const { pressure, externalPressure, outsideDiameter: D, wallThickness: t, ends, poissonRatio } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const outerRadius = (D / 2) as Length;
  const innerRadius = (D / 2 - t) as Length;
  return thickCylinderAxialStress({
    internalPressure: pressure,
    externalPressure,
    innerRadius,
    outerRadius,
    ends,
    poissonRatio,
  });
}

export const thickWallAxialStressFormula = /* @__PURE__ */ formula<ThickWallAxialStressInput, Stress>({
  id: 'pipe/thick-wall-axial-stress',
  title: 'Axial stress in a thick-walled pipe',
  search: ['lame'],
  compute: thickWallAxialStress,
  equation: {
    where: [
      { symbol: 'r_o', kind: 'length', expression: 'D / 2' },
      { symbol: 'r_i', kind: 'length', expression: 'D / 2 - t' },
      { symbol: 'A', kind: 'stress', expression: '(P * r_i^2 - P_o * r_o^2) / (t * (r_o + r_i))' },
    ],
    branches: [
      { when: 'ends == "closed"', expression: 'A' },
      { when: 'ends == "open"', expression: '0 * A' },
      { expression: '2 * nu * A' },
    ],
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
    ends: { symbol: 'ends', kind: 'choice', name: 'what holds the ends', choices: ['closed', 'open', 'restrained'] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4], default: 0.3 },
  },
  output: { symbol: 'sigma_z', kind: 'stress', name: 'axial stress' },
  sources: [{ key: 'mechanics-notes', locator: 'Lame equations, end conditions' }],
  evidence: {
    form: {
      tag: 'secondary',
      derived: 'force balance on an end cap; plane strain from the finite-difference solution',
    },
    poissonRatio: { tag: 'practice', note: '0.3 for steel' },
  },
  limits: [],
});
