import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Moment, Stress } from '../../quantity/index.js';

export interface ShearStressInput {
  readonly shearForce: Force;
  readonly torque: Moment;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Greatest shear stress of a shear force and a torque in straight pipe, both taken at one place.
 *
 * $$\tau = \frac{2 V}{\pi t (D - t)} + \frac{2 T}{\pi t (D - t)^2}$$
 *
 * @param input.shearForce       V, size of the shear force [N], >= 0
 * @param input.torque           T, size of the torque [N m], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns shear stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Thin wall. The shear force has twice its mean stress half-way between the edges of bending, where bending has
 *   none: added to the stress at the edge it errs on the safe side.
 * @see common practice: shear flow of a thin ring
 */
export function shearStress(input: ShearStressInput): Stress {
  const { shearForce: V, torque: T, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(V, 'shearForce', 'N');
  nonNegative(T, 'torque', 'N m');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const stress = (2 * (V + T / (D - t))) / (Math.PI * t * (D - t));
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

export const shearStressFormula = /* @__PURE__ */ formula<ShearStressInput, Stress>({
  id: 'pipe/shear-stress',
  title: 'Shear stress of a shear force and a torque',
  compute: shearStress,
  equation: { expression: '2 * (V + T / (D - t)) / (pi * t * (D - t))' },
  inputs: {
    shearForce: { symbol: 'V', kind: 'force', name: 'shear force', sample: [0, 1e6] },
    torque: { symbol: 'T', kind: 'moment', name: 'torque', sample: [0, 1e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2], usual: [0.02, 1.5] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.03] },
  },
  output: { symbol: 'tau', kind: 'stress', name: 'shear stress' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'shear flow of a thin ring' } },
  limits: [],
});
