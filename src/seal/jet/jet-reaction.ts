import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Area, Force, GaugePressure } from '../../quantity/index.js';

export interface JetReactionInput {
  readonly pressureDifference: GaugePressure;
  readonly holeArea: Area;
  readonly dischargeCoefficient?: number | undefined;
  readonly velocityCoefficient?: number | undefined;
}

/**
 * Force with which a jet pushes back on the pipe, and pushes on a hand or a pad held into it.
 *
 * $$F_j = 2 C_d C_v A\, \Delta p$$
 *
 * @param input.pressureDifference dp, pressure inside above that outside [Pa], >= 0
 * @param input.holeArea A, area of the hole [m2], > 0
 * @param input.dischargeCoefficient C_d, discharge coefficient of the hole, > 0, at most 1; 1, the most, when not
 *   given
 * @param input.velocityCoefficient C_v, velocity coefficient of the hole, > 0, at most 1; 1, the most, when not
 *   given
 * @returns reaction of the jet [N]
 * @throws CalculationError `invalid-input`
 * @remarks Both coefficients 1: a smooth opening, twice the force that holds a plug over it. A sharp hole has about
 *   0.61 and 0.98, so about 1.2 A dp. The smooth form also lies above the thrust of a gas jet. On a plate that
 *   turns the jet square, the same force acts.
 * @see worked example of a garden hose on a public web page
 */
export function jetReaction(input: JetReactionInput): Force {
  const { pressureDifference: dp, holeArea: A, dischargeCoefficient: Cd = 1, velocityCoefficient: Cv = 1 } = input;
  nonNegative(dp, 'pressureDifference', 'Pa');
  positive(A, 'holeArea', 'm2');
  positive(Cd, 'dischargeCoefficient', '');
  atMost(Cd, 1, 'the ideal flow', 'dischargeCoefficient', '');
  positive(Cv, 'velocityCoefficient', '');
  atMost(Cv, 1, 'the ideal speed', 'velocityCoefficient', '');
  const force = 2 * Cd * Cv * A * dp;
  finite(force, 'jet reaction', 'N');
  return force as Force;
}

export const jetReactionFormula = /* @__PURE__ */ formula<JetReactionInput, Force>({
  id: 'seal/jet-reaction',
  title: 'Reaction of a jet',
  search: ['thrust', 'leak'],
  compute: jetReaction,
  equation: { expression: '2 * C_d * C_v * A * dp' },
  inputs: {
    pressureDifference: {
      symbol: 'dp',
      kind: 'gauge pressure',
      name: 'pressure inside above that outside',
      sample: [0, 10e6],
    },
    holeArea: { symbol: 'A', kind: 'area', name: 'area of the hole', sample: [1e-6, 0.001] },
    dischargeCoefficient: {
      symbol: 'C_d',
      kind: 'number',
      name: 'discharge coefficient of the hole',
      sample: [0.5, 1],
      default: 1,
    },
    velocityCoefficient: {
      symbol: 'C_v',
      kind: 'number',
      name: 'velocity coefficient of the hole',
      sample: [0.9, 1],
      default: 1,
    },
  },
  output: { symbol: 'F_j', kind: 'force', name: 'reaction of the jet' },
  sources: [{ key: 'web-seal-examples', locator: 'reaction of a garden hose' }],
  evidence: {
    form: { tag: 'secondary', derived: 'density times flow times speed' },
    dischargeCoefficient: { tag: 'chosen', note: 'default: the most that a hole can pass' },
    velocityCoefficient: { tag: 'chosen', note: 'default: the speed without losses' },
  },
  limits: [],
});
