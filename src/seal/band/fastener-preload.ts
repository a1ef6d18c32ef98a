import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { Area, Force, Ratio, Stress } from '../../quantity/index.js';

export interface FastenerPreloadInput {
  readonly stressArea: Area;
  readonly proofStrength: Stress;
  readonly share: Ratio;
}

/**
 * Tension in a bolt tightened to a share of its proof strength.
 *
 * $$T = c A_s S_p$$
 *
 * @param input.stressArea A_s, tensile stress area of the thread [m2], > 0
 * @param input.proofStrength S_p, proof strength of the bolt [Pa], > 0
 * @param input.share c, share of the proof strength to use [1], > 0, at most 1; no default
 * @returns preload [N]
 * @throws CalculationError `invalid-input`
 * @remarks The band of one bolt has the tension of that bolt.
 * @see worked example of an M12 bolt on a public web page
 */
export function fastenerPreload(input: FastenerPreloadInput): Force {
  const { stressArea: As, proofStrength: Sp, share: c } = input;
  positive(As, 'stressArea', 'm2');
  positive(Sp, 'proofStrength', 'Pa');
  positive(c, 'share', '');
  atMost(c, 1, 'the whole proof strength', 'share', '');
  const tension = c * As * Sp;
  finite(tension, 'preload', 'N');
  return tension as Force;
}

export const fastenerPreloadFormula = /* @__PURE__ */ formula<FastenerPreloadInput, Force>({
  id: 'seal/fastener-preload',
  title: 'Preload of a bolt by its proof strength',
  search: ['proof load'],
  compute: fastenerPreload,
  equation: { expression: 'c * A_s * S_p' },
  inputs: {
    stressArea: { symbol: 'A_s', kind: 'area', name: 'tensile stress area of the thread', sample: [8e-6, 2.5e-4] },
    proofStrength: { symbol: 'S_p', kind: 'stress', name: 'proof strength of the bolt', sample: [100e6, 1e9] },
    share: { symbol: 'c', kind: 'ratio', name: 'share of the proof strength to use', sample: [0.1, 0.9] },
  },
  output: { symbol: 'T', kind: 'force', name: 'preload' },
  sources: [{ key: 'web-seal-examples', locator: 'torque and preload of an M12 bolt, class 8.8' }],
  evidence: { form: { tag: 'secondary' } },
  limits: [],
});
