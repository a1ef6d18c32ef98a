import { formula, positive, within } from '../../formula/index.js';
import { ringBuckling } from '../../mechanics/index.js';
import type { GaugePressure, Length, Modulus, Stress } from '../../quantity/index.js';

/** Band pressure that may be reached, what governs, and each resistance on its own. */
export interface PipeUnderBand {
  readonly pressure: GaugePressure;
  readonly governing: 'buckling' | 'yield';
  readonly buckling: GaugePressure;
  readonly yielding: GaugePressure;
}

export interface PipeUnderBandInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly modulus: Modulus;
  readonly poissonRatio: number;
  readonly yieldStrength: Stress;
  readonly factor: number;
}

/**
 * Pressure of a band, as an external pressure, that the thinned pipe under it may bear: elastic buckling and yield
 * together, with a stated factor.
 *
 * $$\frac{1}{q_a} = f \left(\frac{1}{P_b} + \frac{1}{P_y}\right), \qquad P_y = \frac{2 S_y t}{D}$$
 *
 * @param input.outsideDiameter D, outside diameter of the pipe [m], > 0
 * @param input.wallThickness t, least wall left under the band [m], > 0 and < D/2
 * @param input.modulus E, modulus of the pipe [Pa], > 0
 * @param input.poissonRatio nu, Poisson's ratio, 0 to 0.5
 * @param input.yieldStrength S_y, yield strength of the pipe [Pa], > 0
 * @param input.factor f, factor on the collapse of the pipe, 1 or more; no default
 * @returns band pressure that may be reached [Pa], what governs, and both resistances [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The least wall is taken all round and along, and no credit for the pressure inside, which may go while
 *   the band stays. The reciprocals cover a steel pipe out of round by a quarter of a per cent of its diameter; one
 *   per cent takes up to 8 per cent more, which the factor must cover.
 * @see Young and Budynas, Roark's Formulas, for the buckling, as recalled
 */
export function pipeUnderBand(input: PipeUnderBandInput): PipeUnderBand {
  const { outsideDiameter: D, wallThickness: t, yieldStrength: Sy, factor: f } = input;
  const buckling = ringBuckling(input);
  positive(Sy, 'yieldStrength', 'Pa');
  within(f, 1, 100, 'factor', '');
  const yielding = (2 * Sy * t) / D;
  const pressure = buckling / ((1 + buckling / yielding) * f);
  positive(pressure, 'band pressure', 'Pa');
  positive(yielding, 'yield pressure', 'Pa');
  return {
    pressure: pressure as GaugePressure,
    governing: buckling <= yielding ? 'buckling' : 'yield',
    buckling,
    yielding: yielding as GaugePressure,
  };
}

export const pipeUnderBandFormula = /* @__PURE__ */ formula<PipeUnderBandInput, PipeUnderBand>({
  id: 'seal/pipe-under-band',
  title: 'Band pressure that the thinned pipe may bear',
  search: ['crush', 'clamp', 'thin pipe'],
  compute: pipeUnderBand,
  equation: {
    where: [
      { symbol: 'P_b', kind: 'gauge pressure', expression: '2 * E / (1 - nu^2) * (t / D)^3' },
      { symbol: 'P_y', kind: 'gauge pressure', expression: '2 * S_y * t / D' },
    ],
    expression: 'P_b * P_y / ((P_b + P_y) * f)',
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.05, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'least wall left under the band', sample: [0.001, 0.02] },
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the pipe', sample: [50e9, 210e9] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4] },
    yieldStrength: { symbol: 'S_y', kind: 'stress', name: 'yield strength of the pipe', sample: [100e6, 600e6] },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the collapse of the pipe', sample: [1, 5] },
  },
  output: {
    pressure: { symbol: 'q_a', kind: 'gauge pressure', name: 'band pressure that the pipe may bear' },
    governing: { symbol: 'governing', kind: 'choice', name: 'what lowers it most' },
    buckling: { symbol: 'P_b', kind: 'gauge pressure', name: 'external pressure at elastic buckling' },
    yielding: { symbol: 'P_y', kind: 'gauge pressure', name: 'external pressure at yield of the whole wall' },
  },
  sources: [{ key: 'roark', locator: 'long tube under external pressure' }],
  evidence: {
    form: {
      tag: 'chosen',
      derived: 'first yield of an oval ring',
      note: 'both resistances by their reciprocals (Rankine)',
    },
  },
  limits: [],
});
