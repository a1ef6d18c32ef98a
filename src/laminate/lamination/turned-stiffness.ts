import { formula } from '../../formula/index.js';
import type { Angle, Modulus } from '../../quantity/index.js';
import { acrossModulus, alongModulus, poissonRatio, shearModulus } from './declared-inputs.js';
import { allFinite, checkAngle, checkPly, type PlyConstants } from './ply.js';
import { reducedOf, turnedOf } from './turning.js';

export interface TurnedStiffnessInput extends PlyConstants {
  readonly angle: Angle;
}

/** Stiffness of a ply in axes that are not its own. */
export interface TurnedStiffness {
  readonly q11: Modulus;
  readonly q12: Modulus;
  readonly q22: Modulus;
  readonly q16: Modulus;
  readonly q26: Modulus;
  readonly q66: Modulus;
}

/**
 * Stiffness of a ply in axes x, y from which its fibres lie at an angle.
 *
 * $$\bar Q_{11} = Q_{11} c^4 + 2 (Q_{12} + 2 Q_{66}) c^2 s^2 + Q_{22} s^4,\quad
 * \bar Q_{12} = (Q_{11} + Q_{22} - 4 Q_{66}) c^2 s^2 + Q_{12} (c^4 + s^4),\ \dots$$
 *
 * @param input.alongModulus   E_1 [Pa], > 0
 * @param input.acrossModulus  E_2 [Pa], > 0
 * @param input.shearModulus   G_12 [Pa], > 0
 * @param input.poissonRatio   nu_12, from 0 to below 1 and sqrt(E_1/E_2)
 * @param input.angle          theta, from x to the fibres [rad], -pi to pi
 * @returns Qbar_11, Qbar_12, Qbar_22, Qbar_16, Qbar_26 and Qbar_66 [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks One page of solutions prints Qbar_12 with 2 Q_66: it must be 4.
 * @see Nettles, NASA RP-1351, 1994
 */
export function turnedStiffness(input: TurnedStiffnessInput): TurnedStiffness {
  checkPly(input);
  checkAngle(input.angle, 'angle');
  const [q11, q12, q22, q16, q26, q66] = turnedOf(reducedOf(input), input.angle);
  const stiffness = {
    q11: q11 as Modulus,
    q12: q12 as Modulus,
    q22: q22 as Modulus,
    q16: q16 as Modulus,
    q26: q26 as Modulus,
    q66: q66 as Modulus,
  };
  allFinite(Object.values(stiffness), 'stiffness', 'Pa');
  return stiffness;
}

export const turnedStiffnessFormula = /* @__PURE__ */ formula<TurnedStiffnessInput, TurnedStiffness>({
  id: 'laminate/turned-stiffness',
  title: 'Stiffness of a ply off its axes',
  compute: turnedStiffness,
  equation: {
    algorithm: 'the reduced stiffness turned as a tensor of fourth order by theta, with c and s its cosine and sine',
    winner: {
      name: 'stiffness along x',
      equation: {
        where: [
          { symbol: 'q', kind: 'number', expression: '1 - nu_12^2 * E_2 / E_1' },
          { symbol: 'u', kind: 'number', expression: 'cos(theta)^2' },
          { symbol: 'v', kind: 'number', expression: 'sin(theta)^2' },
        ],
        expression: 'E_1 / q * u^2 + 2 * (nu_12 * E_2 / q + 2 * G_12) * u * v + E_2 / q * v^2',
      },
    },
  },
  inputs: {
    alongModulus,
    acrossModulus,
    shearModulus,
    poissonRatio,
    angle: { symbol: 'theta', kind: 'angle', name: 'from x to the fibres', sample: [-1.57, 1.57] },
  },
  output: {
    q11: { symbol: 'Qb_11', kind: 'modulus', name: 'stiffness along x' },
    q12: { symbol: 'Qb_12', kind: 'modulus', name: 'stiffness that couples x and y' },
    q22: { symbol: 'Qb_22', kind: 'modulus', name: 'stiffness along y' },
    q16: { symbol: 'Qb_16', kind: 'modulus', name: 'stiffness that couples x and shear' },
    q26: { symbol: 'Qb_26', kind: 'modulus', name: 'stiffness that couples y and shear' },
    q66: { symbol: 'Qb_66', kind: 'modulus', name: 'stiffness in shear' },
  },
  sources: [{ key: 'nasa-rp-1351', locator: 'stiffness of a lamina at an angle' }],
  evidence: { form: { tag: 'secondary', derived: 'stiffness turned as a tensor' } },
  limits: [],
});
