import { below, finite, listOfRows, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { Angle, Length, Modulus } from '../../quantity/index.js';

/** The four constants of a ply in its plane, along and across its fibres. */
export interface PlyConstants {
  readonly alongModulus: Modulus;
  readonly acrossModulus: Modulus;
  readonly shearModulus: Modulus;
  /** Loaded along the fibres, contracting across them. */
  readonly poissonRatio: number;
}

/** A ply of a laminate: the first of a list lies lowest, at z = -h/2. */
export interface Ply extends PlyConstants {
  /** Thickness of the ply [m]. */
  readonly thickness: Length;
  /** From the x axis to the fibres. */
  readonly angle: Angle;
}

/** Refuses constants that no ply has: beyond nu = sqrt(E_1/E_2) straining it would give energy. */
export function checkPly(ply: PlyConstants, prefix = ''): void {
  const { alongModulus: E1, acrossModulus: E2, shearModulus: G, poissonRatio: nu } = ply;
  positive(E1, `${prefix}alongModulus`, 'Pa');
  positive(E2, `${prefix}acrossModulus`, 'Pa');
  positive(G, `${prefix}shearModulus`, 'Pa');
  nonNegative(nu, `${prefix}poissonRatio`, '');
  below(nu, Math.min(1, Math.sqrt(E1 / E2)), 'what its moduli allow', `${prefix}poissonRatio`, '');
}

/** An angle of any sense, up to half a turn. */
export function checkAngle(angle: number, parameter: string): void {
  within(angle, -Math.PI, Math.PI, parameter, 'rad');
}

/** Refuses a list that is no laminate. */
export function checkPlies(plies: readonly Ply[]): void {
  listOfRows(plies, 'plies');
  if (plies.length === 0)
    refuse({
      code: 'invalid-input',
      parameter: 'plies',
      value: 'empty',
      unit: '',
      constraint: 'must hold at least one ply',
    });
  plies.forEach((ply, index) => {
    const prefix = `plies[${index}].`;
    positive(ply.thickness, `${prefix}thickness`, 'm');
    checkAngle(ply.angle, `${prefix}angle`);
    checkPly(ply, prefix);
  });
}

/** Refuses a result that outgrew what a number holds. */
export function allFinite(values: readonly number[], parameter: string, unit: string): void {
  for (const value of values) finite(value, parameter, unit);
}
