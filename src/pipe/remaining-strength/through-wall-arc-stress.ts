import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { Length, Stress } from '../../quantity/index.js';

export interface ThroughWallArcStressInput {
  readonly outsideDiameter: Length;
  readonly cutWidth: Length;
  readonly flowStress: Stress;
}

/**
 * Axial stress of the sound section at which a pipe with an arc of its wall cut through parts: the net section yields, and
 * bends about the cut.
 *
 * $$\sigma_c = S_{flow}\left(1 - \frac{\beta}{\pi} - \frac{2}{\pi} \arcsin\frac{\sin\beta}{2}\right),\qquad \beta = \frac{c}{D}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.cutWidth         c, round the pipe [m], > 0 and at most the circumference
 * @param input.flowStress       S_flow [Pa], > 0
 * @returns failure stress [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Thin wall, the pull in the middle of the pipe, which may turn freely: a pipe that is held straight carries more.
 *   Not for cracks in steel that is not ductile.
 */
export function throughWallArcStress(input: ThroughWallArcStressInput): Stress {
  const { outsideDiameter: D, cutWidth: c, flowStress: S } = input;
  positive(D, 'outsideDiameter', 'm');
  positive(c, 'cutWidth', 'm');
  positive(S, 'flowStress', 'Pa');
  const given = c / D;
  // A circumference that was written down with six digits may lie a little above this one: it is all round.
  atMost(given, Math.PI * (1 + 1e-6), 'pi, a cut all round', 'cutWidth over outsideDiameter', '');
  const beta = Math.min(given, Math.PI);
  const stress = S * Math.max(0, 1 - beta / Math.PI - (2 / Math.PI) * Math.asin(Math.sin(beta) / 2));
  finite(stress, 'failure stress', 'Pa');
  return stress as Stress;
}

export const throughWallArcStressFormula = /* @__PURE__ */ formula<ThroughWallArcStressInput, Stress>({
  id: 'pipe/through-wall-arc-stress',
  title: 'Axial stress at which a pipe parts at a cut round it',
  search: ['guillotine', 'circumferential crack', 'sever'],
  compute: throughWallArcStress,
  equation: {
    where: [{ symbol: 'beta', kind: 'number', expression: 'c / D' }],
    expression: 'S_flow * max(0, 1 - beta / pi - 2 / pi * asin(sin(beta) / 2))',
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    cutWidth: { symbol: 'c', kind: 'length', name: 'width of the cut round the pipe', sample: [0.005, 0.3] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
  },
  output: { symbol: 'sigma_c', kind: 'stress', name: 'axial stress at failure' },
  sources: [],
  evidence: {
    form: {
      tag: 'chosen',
      derived: 'force and moment of a fully plastic ring with a gap',
      note: 'remembered as the net-section collapse at a through-wall crack; no text of it was reached',
    },
  },
  limits: [],
});
