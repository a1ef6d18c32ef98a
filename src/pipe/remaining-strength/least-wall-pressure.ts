import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';
import { checkPipeWall } from './part-wall-defect.js';
import { checkSafetyFactor } from './safe-pressure.js';

export interface LeastWallPressureInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly remainingWall: Length;
  readonly yieldStrength: Stress;
  readonly safetyFactor: number;
  readonly maximumPressure: GaugePressure;
  readonly leastWall?: Length;
}

/** The least wall that counts as one (API 579-1, pipe). */
export const LEAST_WALL = 1.3e-3 as Length;

/**
 * Safe pressure of a pipe as thin all round as it is at its thinnest: what is left where a loss is too deep for every method.
 *
 * $$P = \min\left(\frac{2 S t_l}{D\,\mathrm{SF}},\ P_{max} \frac{t_l}{t}\right)\quad(t_l \ge t_{min}),\qquad P = 0\quad(t_l < t_{min})$$
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t, of the sound pipe [m], > 0 and < D/2
 * @param input.remainingWall    t_l, least wall left [m], >= 0 and at most t
 * @param input.yieldStrength    S, specified minimum yield strength [Pa], > 0
 * @param input.safetyFactor     SF, >= 1; 1/F of the line
 * @param input.maximumPressure  P_max, MAOP or MAWP of the sound pipe [Pa], >= 0
 * @param input.leastWall        t_min, below which a wall counts for nothing [m], >= 0; 1.3 mm by default
 * @returns safe pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks No form of the loss helps here, so it is below each method at the depth where the methods end: a loss that grows
 *   past that depth never gains. The second term holds it so where the sound pipe is limited by its allowable stress.
 */
export function leastWallPressure(input: LeastWallPressureInput): GaugePressure {
  const { outsideDiameter: D, wallThickness: t, remainingWall: tl, yieldStrength: S } = input;
  const { safetyFactor: SF, maximumPressure: Pmax, leastWall = LEAST_WALL } = input;
  checkPipeWall(D, t);
  nonNegative(tl, 'remainingWall', 'm');
  atMost(tl, t, 'the wall thickness', 'remainingWall', 'm');
  positive(S, 'yieldStrength', 'Pa');
  checkSafetyFactor(SF);
  nonNegative(Pmax, 'maximumPressure', 'Pa');
  nonNegative(leastWall, 'leastWall', 'm');
  if (tl < leastWall) return 0 as GaugePressure;
  const pressure = Math.min((2 * S * (tl / D)) / SF, Pmax * (tl / t));
  finite(pressure, 'safe pressure', 'Pa');
  return pressure as GaugePressure;
}

/**
 * Whether a loss is too deep for every method: over 0.8 of the wall, or less left than counts as a wall.
 *
 * @param wallThickness nominal wall [m]
 * @param depth depth of the loss from the nominal wall on [m]
 */
export function leastWallPressureAlone(wallThickness: Length, depth: Length): boolean {
  return depth > 0.8 * wallThickness || !leastWallPressureAny(wallThickness, depth);
}

/**
 * Whether as much is left as counts as a wall.
 *
 * @param wallThickness nominal wall [m]
 * @param depth depth of the loss from the nominal wall on [m]
 */
export function leastWallPressureAny(wallThickness: Length, depth: Length): boolean {
  return wallThickness - depth >= LEAST_WALL;
}

export const leastWallPressureFormula = /* @__PURE__ */ formula<LeastWallPressureInput, GaugePressure>({
  id: 'pipe/least-wall-pressure',
  title: 'Safe pressure of the least wall all round',
  search: ['general thinning', 'erosion', 'uniform corrosion', 'maop'],
  compute: leastWallPressure,
  equation: {
    branches: [
      { when: 't_l < t_min', expression: '0 * P_max' },
      { expression: 'min(2 * S * t_l / (D * SF), P_max * t_l / t)' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.006, 0.03] },
    remainingWall: { symbol: 't_l', kind: 'length', name: 'least wall left', sample: [0, 0.006] },
    yieldStrength: { symbol: 'S', kind: 'stress', name: 'yield strength', sample: [170e6, 555e6] },
    safetyFactor: { symbol: 'SF', kind: 'number', name: 'safety factor', sample: [1, 3] },
    maximumPressure: {
      symbol: 'P_max',
      kind: 'gauge pressure',
      name: 'maximum pressure of the sound pipe',
      sample: [1e6, 15e6],
    },
    leastWall: {
      symbol: 't_min',
      kind: 'length',
      name: 'least wall that counts',
      default: 1.3e-3,
      sample: [0, 0.003],
    },
  },
  output: { symbol: 'P_s', kind: 'gauge pressure', name: 'safe pressure' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'hoop stress on the outside diameter at yield over the safety factor' },
    leastWall: { tag: 'recalled', note: 'The least wall of API 579-1 for pipe.' },
  },
  limits: [],
});
