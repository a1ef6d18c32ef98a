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
 * $$\tau = \frac{2 V}{\pi t (D - t)} + \frac{16 T D}{\pi (D^4 - d^4)}$$ with $d = D - 2 t$
 *
 * @param input.shearForce       V, size of the shear force [N], >= 0
 * @param input.torque           T, size of the torque [N m], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns shear stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The torque is that of a round tube of any wall, at its outside, where it is greatest. The shear force has twice its
 *   mean stress in a thin ring, less in a thick one, half-way between the edges of bending, where bending has none: added to
 *   the stress at the edge it errs on the safe side.
 * @see common practice: torsion of a round tube, shear flow of a thin ring
 */
export function shearStress(input: ShearStressInput): Stress {
  const { shearForce: V, torque: T, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(V, 'shearForce', 'N');
  nonNegative(T, 'torque', 'N m');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  // D^4 - d^4 = 4 t (D - t) (D^2 + d^2): no difference of large powers is taken.
  const stress = (2 * (V + (2 * T * D) / (D ** 2 + (D - 2 * t) ** 2))) / (Math.PI * t * (D - t));
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

export const shearStressFormula = /* @__PURE__ */ formula<ShearStressInput, Stress>({
  id: 'pipe/shear-stress',
  title: 'Shear stress of a shear force and a torque',
  search: ['torsion'],
  compute: shearStress,
  equation: { expression: '2 * (V + 2 * T * D / (D^2 + (D - 2 * t)^2)) / (pi * t * (D - t))' },
  inputs: {
    shearForce: { symbol: 'V', kind: 'force', name: 'shear force', sample: [0, 1e6] },
    torque: { symbol: 'T', kind: 'moment', name: 'torque', sample: [0, 1e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2], usual: [0.02, 1.5] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.03] },
  },
  output: { symbol: 'tau', kind: 'stress', name: 'shear stress' },
  sources: [],
  evidence: { form: { tag: 'practice', derived: 'shear of a tube summed over its section' } },
  limits: [],
});
