import { formula, positive, within } from '../../formula/index.js';
import type { Angle, Area, Force, GaugePressure } from '../../quantity/index.js';
import { clampingForce } from './clamping-force.js';
import { tensionAlongBand } from './tension-along-band.js';

export interface LinePressureOfTensionInput {
  readonly fastenerTension: Force;
  readonly halfAngle: Angle;
  readonly padArea: Area;
  readonly factor: number;
  readonly friction: number;
  readonly angle?: Angle | undefined;
  readonly bands?: number | undefined;
}

/**
 * Line pressure at which the bands, with this tension at their fasteners, just press the pad on with the stated
 * factor.
 *
 * $$p = \frac{2 n T_f e^{-\mu\beta} \sin\varphi}{f A_p}$$
 *
 * @param input.fastenerTension T_f, tension of each band at its fastener [N], > 0
 * @param input.halfAngle phi, half-angle of the pad on the pipe [rad], > 0, at most pi/2
 * @param input.padArea A_p, area of the pad that may be wetted [m2], > 0
 * @param input.factor f, factor on the force of the leak, 1 or more; no default
 * @param input.friction mu, coefficient of friction between band and what it lies on, >= 0
 * @param input.angle beta, angle round the pipe from the fastener to the pad [rad], >= 0; pi, the far side, when
 *   not given
 * @param input.bands n, bands over the pad, `bandsOverPad`, > 0; 1 when not given
 * @returns line pressure held [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks One form for every limit of tension: of the strap, of the fastener, of the pipe under the band. Give it
 *   the tension that is surely reached.
 */
export function linePressureOfTension(input: LinePressureOfTensionInput): GaugePressure {
  const { fastenerTension: Tf, halfAngle: phi, padArea: A, factor: f, friction: mu, angle: beta, bands } = input;
  positive(A, 'padArea', 'm2');
  within(f, 1, 100, 'factor', '');
  const tension = tensionAlongBand({ fastenerTension: Tf, friction: mu, angle: beta });
  const pressure = clampingForce({ tension, halfAngle: phi, bands }) / (f * A);
  positive(pressure, 'line pressure', 'Pa');
  return pressure as GaugePressure;
}

export const linePressureOfTensionFormula = /* @__PURE__ */ formula<LinePressureOfTensionInput, GaugePressure>({
  id: 'seal/line-pressure-of-tension',
  title: 'Line pressure that a band tension holds',
  compute: linePressureOfTension,
  equation: { expression: '2 * n * T_f * exp(-mu * beta) * sin(phi) / (f * A_p)' },
  inputs: {
    fastenerTension: { symbol: 'T_f', kind: 'force', name: 'tension of each band at its fastener', sample: [10, 50e3] },
    halfAngle: { symbol: 'phi', kind: 'angle', name: 'half-angle of the pad on the pipe', sample: [0.05, 1.5] },
    padArea: { symbol: 'A_p', kind: 'area', name: 'area of the pad that may be wetted', sample: [3e-4, 0.03] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the force of the leak', sample: [1, 4] },
    friction: {
      symbol: 'mu',
      kind: 'number',
      name: 'coefficient of friction between band and what it lies on',
      sample: [0, 0.5],
    },
    angle: {
      symbol: 'beta',
      kind: 'angle',
      name: 'angle round the pipe from the fastener to the pad',
      sample: [0, 3.2],
      default: Math.PI,
    },
    bands: { symbol: 'n', kind: 'number', name: 'bands over the pad', sample: [0.5, 4], default: 1 },
  },
  output: { symbol: 'p', kind: 'gauge pressure', name: 'line pressure held' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'inverse of the band tension for a force' } },
  limits: [],
});
