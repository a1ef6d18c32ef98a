import { atMost, finite, formula, positive } from '../../formula/index.js';
import { bisect } from '../../numeric/index.js';
import type { Length, Stress } from '../../quantity/index.js';
import { checkDepth, checkPipeWall } from './part-wall-defect.js';

export interface AxialFailureStressInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly defectDepth: Length;
  readonly defectWidth: Length;
  readonly flowStress: Stress;
}

/** The stress along the pipe at which the loss fails, and the half angle at which it is least. */
export interface AxialFailureStress {
  readonly failureStress: Stress;
  readonly halfAngle: number;
}

/**
 * Axial stress of the sound section at which a pipe fails over the width of a metal loss: the least for any part of that
 * width (local collapse, Kastner).
 *
 * $$\sigma_c = S_{flow} \min_{\beta' \le \beta}
 * \frac{\eta\,[\pi - \beta'(1 - \eta)]}{\eta\pi + 2 (1 - \eta) \sin\beta'},\qquad \eta = 1 - \frac{d}{t},\qquad \beta = \frac{c}{D}$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.defectDepth      d, deepest point, taken over the whole width [m], >= 0 and < t
 * @param input.defectWidth      c, round the pipe [m], > 0 and at most the circumference
 * @param input.flowStress       S_flow [Pa], > 0
 * @returns failure stress [Pa] and the half angle beta' behind it [rad]
 * @throws CalculationError `invalid-input`
 * @remarks The form is not monotone in the width: it falls to a minimum beyond a quarter of the way round and rises to eta
 *   for a loss all round. A wide loss holds every narrower one, so the least of them counts. Not for cracks.
 * @see Kastner et al. 1981, local collapse, as recalled
 */
export function axialFailureStress(input: AxialFailureStressInput): AxialFailureStress {
  const { outsideDiameter: D, wallThickness: t, defectDepth: d, defectWidth: c, flowStress: S } = input;
  checkPipeWall(D, t);
  checkDepth(d, t, 1, 'defectDepth', '');
  positive(c, 'defectWidth', 'm');
  positive(S, 'flowStress', 'Pa');
  const beta = c / D;
  // A circumference that was written down with six digits may lie a little above this one: it is all round.
  atMost(beta, Math.PI * (1 + 1e-6), 'pi, a loss all round', 'defectWidth over outsideDiameter', '');
  const eta = 1 - d / t;
  const halfAngle = Math.min(beta, Math.PI, weakestHalfAngle(eta));
  const stress =
    (S * (eta * (Math.PI - halfAngle * (1 - eta)))) / (eta * Math.PI + 2 * (1 - eta) * Math.sin(halfAngle));
  finite(stress, 'failure stress', 'Pa');
  return { failureStress: stress as Stress, halfAngle };
}

/** Where the form is least: the slope falls all the way from 0 to pi, so it has one zero there; none without a loss. */
function weakestHalfAngle(eta: number): number {
  const fall = (b: number): number =>
    eta * Math.PI + 2 * (1 - eta) * Math.sin(b) + 2 * (Math.PI - b * (1 - eta)) * Math.cos(b);
  return bisect(fall, Math.PI / 2, Math.PI)?.root ?? Math.PI;
}

export const axialFailureStressFormula = /* @__PURE__ */ formula<AxialFailureStressInput, AxialFailureStress>({
  id: 'pipe/axial-failure-stress',
  title: 'Axial stress at which a metal loss fails over its width',
  search: ['circumferential corrosion', 'girth'],
  compute: axialFailureStress,
  equation: {
    algorithm:
      'least of S_flow eta (pi - b (1 - eta))/(eta pi + 2 (1 - eta) sin b) over all half angles b from 0 to c/D, eta = 1 - d/t',
    winner: {
      name: 'the weakest half angle',
      equation: {
        where: [{ symbol: 'eta', kind: 'number', expression: '1 - d / t' }],
        expression: 'S_flow * eta * (pi - b * (1 - eta)) / (eta * pi + 2 * (1 - eta) * sin(b))',
      },
    },
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    defectDepth: { symbol: 'd', kind: 'length', name: 'depth of the defect', sample: [0.0005, 0.015] },
    defectWidth: { symbol: 'c', kind: 'length', name: 'width of the defect round the pipe', sample: [0.01, 1.5] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
  },
  output: {
    failureStress: { symbol: 'sigma_c', kind: 'stress', name: 'axial stress at failure' },
    halfAngle: { symbol: 'b', kind: 'number', name: 'half angle of the weakest part of the width' },
  },
  sources: [{ key: 'kastner-1981', locator: 'local collapse, as recalled' }],
  evidence: {
    form: {
      tag: 'recalled',
      note: "No text of it was reached: neither that these authors gave this form, nor that it was meant for metal loss and not for flat cracks, is confirmed. It gives the whole flow stress for no width and the share of the wall that is left for a loss all round; in between it is unconfirmed. The least over the narrower widths is this library's own.",
    },
  },
  limits: [],
});
