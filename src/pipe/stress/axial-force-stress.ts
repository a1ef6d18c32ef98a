import { below, finite, formula, positive } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface AxialForceStressInput {
  readonly axialForce: Force;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
}

/**
 * Longitudinal stress of an axial force other than the thrust of pressure.
 *
 *$$S_X = \frac{R}{\pi t (D - t)}$$
 *
 * @param input.axialForce       R [N], tension positive
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @returns longitudinal stress [Pa], tension positive
 * @throws CalculationError `invalid-input`
 * @remarks The metal area is exact for any wall thickness.
 * @see calculation sheet of a restrained line after ASME B31.8, 833
 */
export function axialForceStress(input: AxialForceStressInput): Stress {
  const { axialForce: R, outsideDiameter: D, wallThickness: t } = input;
  finite(R, 'axialForce', 'N');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  const stress = R / (Math.PI * t * (D - t));
  finite(stress, 'longitudinal stress', 'Pa');
  return stress as Stress;
}

export const axialForceStressFormula = /* @__PURE__ */ formula<AxialForceStressInput, Stress>({
  id: 'pipe/axial-force-stress',
  title: 'Longitudinal stress of an axial force',
  search: ['pull', 'push', 'tension'],
  compute: axialForceStress,
  equation: { expression: 'R / (pi * t * (D - t))' },
  inputs: {
    axialForce: { symbol: 'R', kind: 'force', name: 'axial force', sample: [-2e6, 2e6] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.001, 0.04] },
  },
  output: { symbol: 'S_X', kind: 'stress', name: 'longitudinal stress of the force' },
  sources: [{ key: 'restrained-line-sheet', locator: 'other longitudinal stresses' }],
  evidence: { form: { tag: 'secondary', derived: 'force over metal area' } },
  limits: [],
});
