import { formula, oneOf } from '../../formula/index.js';
import type { Length, Modulus } from '../../quantity/index.js';
import { plies } from './declared-inputs.js';
import { plateOf, respond, respondHeld } from './plate.js';
import { allFinite, checkPlies, type Ply } from './ply.js';
import type { Three } from './turning.js';

const choices = ['held', 'free'] as const;

/** Whether an unsymmetric laminate may bend as it is pulled; bonded round a pipe it may not. */
export type Bending = (typeof choices)[number];

export interface EffectiveConstantsInput {
  readonly plies: readonly Ply[];
  readonly bending: Bending;
}

/** A laminate as one orthotropic layer. */
export interface EffectiveConstants {
  readonly modulusX: Modulus;
  readonly modulusY: Modulus;
  readonly shearModulus: Modulus;
  readonly poissonXY: number;
  readonly poissonYX: number;
  readonly thickness: Length;
}

/**
 * Moduli of a laminate in its plane: what one layer of its thickness would have to have.
 *
 * $$E_x = \frac{1}{h a_{11}},\quad E_y = \frac{1}{h a_{22}},\quad G_{xy} = \frac{1}{h a_{66}},\quad
 * \nu_{xy} = -\frac{a_{12}}{a_{11}},\qquad a = A^{-1}$$
 *
 * @param input.plies    from z = -h/2 upward: thickness [m], angle from x to the fibres [rad], E_1, E_2, G_12 [Pa], nu_12
 * @param input.bending  `held` round a pipe, a = A^-1; `free` for a flat strip: the upper left block of the inverse of A, B, D
 * @returns E_x, E_y, G_xy [Pa], nu_xy, nu_yx, and the thickness [m]
 * @throws CalculationError `invalid-input`
 * @remarks A strip that is free to bend is never the stiffer one. Each is free to shear, so one ply off its axis has the modulus
 *   of `offAxisModulus`.
 * @see Nettles, NASA RP-1351, 1994, section V; Kaw, chapter 4
 */
export function effectiveConstants({ plies: rows, bending }: EffectiveConstantsInput): EffectiveConstants {
  checkPlies(rows);
  oneOf(bending, choices, 'bending');
  const plate = plateOf(rows);
  const h = plate.thickness;
  const under = (load: Three): Three =>
    bending === 'held' ? respondHeld(plate, load) : respond(plate, load, [0, 0, 0])[0];
  // A load as large as the laminate is stiff gives strains near 1, whatever the unit.
  const [x, y, xy] = [plate.A[0], plate.A[2], plate.A[5]];
  const [alongX, alongY, inShear] = [under([x, 0, 0]), under([0, y, 0]), under([0, 0, xy])];
  const moduli = [x / (h * alongX[0]), y / (h * alongY[1]), xy / (h * inShear[2])] as const;
  const ratios = [-alongX[1] / alongX[0], -alongY[0] / alongY[1]] as const;
  allFinite([...moduli, ...ratios], 'effective constant', '');
  return {
    modulusX: moduli[0] as Modulus,
    modulusY: moduli[1] as Modulus,
    shearModulus: moduli[2] as Modulus,
    poissonXY: ratios[0],
    poissonYX: ratios[1],
    thickness: h as Length,
  };
}

export const effectiveConstantsFormula = /* @__PURE__ */ formula<EffectiveConstantsInput, EffectiveConstants>({
  id: 'laminate/effective-constants',
  title: 'Moduli of a laminate in its plane',
  search: ['laminate theory', 'clt'],
  compute: effectiveConstants,
  equation: {
    algorithm:
      'strains under a pull along x, along y and in shear, each alone; the mean stress over the strain of its direction',
  },
  inputs: {
    plies,
    bending: { symbol: 'bending', kind: 'choice', name: 'bending as it is pulled', choices: ['held', 'free'] },
  },
  output: {
    modulusX: { symbol: 'E_x', kind: 'modulus', name: 'modulus along x' },
    modulusY: { symbol: 'E_y', kind: 'modulus', name: 'modulus along y' },
    shearModulus: { symbol: 'G_xy', kind: 'modulus', name: 'shear modulus' },
    poissonXY: { symbol: 'nu_xy', kind: 'number', name: "Poisson's ratio, along x to along y" },
    poissonYX: { symbol: 'nu_yx', kind: 'number', name: "Poisson's ratio, along y to along x" },
    thickness: { symbol: 'h', kind: 'length', name: 'thickness' },
  },
  sources: [
    { key: 'nasa-rp-1351', locator: 'section V' },
    { key: 'kaw', locator: 'chapter 4, as slides quote it' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'strains of the laminate by determinants' } },
  limits: [],
});
