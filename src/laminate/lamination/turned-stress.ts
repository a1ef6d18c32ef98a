import { formula } from '../../formula/index.js';
import type { Angle, Stress } from '../../quantity/index.js';
import { allFinite, checkAngle } from './ply.js';
import { stressInPly } from './turning.js';

export interface TurnedStressInput {
  readonly stressX: Stress;
  readonly stressY: Stress;
  readonly shearStress: Stress;
  readonly angle: Angle;
}

/** Stresses of a ply along and across its fibres. */
export interface TurnedStress {
  readonly along: Stress;
  readonly across: Stress;
  readonly shear: Stress;
}

/**
 * Stresses in the axes of a ply from those in x and y.
 *
 * $$\sigma_1 = \sigma_x c^2 + \sigma_y s^2 + 2 \tau_{xy} c s,\quad \sigma_2 = \sigma_x s^2 + \sigma_y c^2 - 2 \tau_{xy} c s,
 * \quad \tau_{12} = (\sigma_y - \sigma_x) c s + \tau_{xy} (c^2 - s^2)$$
 *
 * @param input.stressX      sigma_x [Pa]
 * @param input.stressY      sigma_y [Pa]
 * @param input.shearStress  tau_xy [Pa]
 * @param input.angle        theta, from x to the fibres [rad], -pi to pi
 * @returns stresses along, across and in shear [Pa]
 * @throws CalculationError `invalid-input`
 * @see Nettles, NASA RP-1351, 1994
 */
export function turnedStress(input: TurnedStressInput): TurnedStress {
  const { stressX, stressY, shearStress, angle } = input;
  allFinite([stressX], 'stressX', 'Pa');
  allFinite([stressY], 'stressY', 'Pa');
  allFinite([shearStress], 'shearStress', 'Pa');
  checkAngle(angle, 'angle');
  const [along, across, shear] = stressInPly([stressX, stressY, shearStress], angle);
  allFinite([along, across, shear], 'stress', 'Pa');
  return { along: along as Stress, across: across as Stress, shear: shear as Stress };
}

export const turnedStressFormula = /* @__PURE__ */ formula<TurnedStressInput, TurnedStress>({
  id: 'laminate/turned-stress',
  title: 'Stresses of a ply in its own axes',
  compute: turnedStress,
  equation: {
    algorithm: 'the stresses turned as a tensor by theta',
    winner: {
      name: 'stress along the fibres',
      equation: {
        expression: 'sigma_x * cos(theta)^2 + sigma_y * sin(theta)^2 + 2 * tau_xy * cos(theta) * sin(theta)',
      },
    },
  },
  inputs: {
    stressX: { symbol: 'sigma_x', kind: 'stress', name: 'stress along x', sample: [1e6, 5e8] },
    stressY: { symbol: 'sigma_y', kind: 'stress', name: 'stress along y', sample: [1e6, 5e8] },
    shearStress: { symbol: 'tau_xy', kind: 'stress', name: 'shear stress', sample: [0, 5e7] },
    angle: { symbol: 'theta', kind: 'angle', name: 'from x to the fibres', sample: [0, 1.57] },
  },
  output: {
    along: { symbol: 'sigma_1', kind: 'stress', name: 'stress along the fibres' },
    across: { symbol: 'sigma_2', kind: 'stress', name: 'stress across the fibres' },
    shear: { symbol: 'tau_12', kind: 'stress', name: 'shear stress in the ply' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'stress of a lamina at an angle' }],
  evidence: { form: { tag: 'secondary', derived: 'tensor of second order turned index by index' } },
  limits: [],
});
