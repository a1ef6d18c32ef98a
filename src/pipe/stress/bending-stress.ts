import { below, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Length, Moment, Stress } from '../../quantity/index.js';

export interface BendingStressInput {
  readonly bendingMoment: Moment;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Greatest longitudinal stress of a bending moment on straight pipe.
 *
 *$$S_B = \frac{M}{Z}, \quad Z = \frac{\pi (D^4 - d_i^4)}{32 D}$$
 *
 * @param input.bendingMoment    M [N m], >= 0
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns longitudinal stress at the outermost fibre [Pa]; it acts as tension on one side and compression on the other
 * @throws CalculationError `invalid-input`
 * @remarks Straight pipe: a fitting needs its stress index on top.
 * @see calculation sheet of a restrained line after ASME B31.8, 833
 */
export function bendingStress(input: BendingStressInput): Stress {
  const { bendingMoment: M, outsideDiameter: D, wallThickness: t } = input;
  nonNegative(M, 'bendingMoment', 'N m');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const d = D - 2 * t;
  const Z = (Math.PI * t * (D - t) * (D * D + d * d)) / (8 * D);
  const stress = M / Z;
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const bendingStressFormula = /* @__PURE__ */ formula<BendingStressInput, Stress>({
  id: 'pipe/bending-stress',
  title: 'Longitudinal stress of a bending moment',
  search: ['span', 'section modulus'],
  compute: bendingStress,
  equation: {
    where: [
      { symbol: 'd_i', kind: 'length', expression: 'D - 2 * t' },
      { symbol: 'Z', kind: 'volume', expression: 'pi * t * (D - t) * (D^2 + d_i^2) / (8 * D)' },
    ],
    expression: 'M / Z',
  },
  inputs: {
    bendingMoment: { symbol: 'M', kind: 'moment', name: 'bending moment', sample: [0, 1e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'S_B', kind: 'stress', name: 'longitudinal stress of bending' },
  sources: [{ key: 'restrained-line-sheet', locator: 'other longitudinal stresses' }],
  evidence: { form: { tag: 'secondary', derived: 'section modulus of a ring' } },
  limits: [],
});
