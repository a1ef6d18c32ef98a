import { edgeFactor } from './edge.js';

/** What a plate that is bonded all round a circle is made of, in the directions round the pipe and along it. */
export interface Plate {
  readonly hoopModulus: number;
  readonly axialModulus: number;
  readonly poisson: number;
  readonly shear: number;
}

/**
 * How much more the worst place of the rim releases than the formula of the hole says, by bending.
 *
 * A clamped circular plate of radius a under pressure p, not alike in all directions, bends to w = w0 (1 - r2/a2)2, since this
 * keeps D11 w,xxxx + 2 H w,xxyy + D22 w,yyyy = p everywhere: w0 = p a4 / (64 D), D = (3 D11 + 2 H + 3 D22) / 8 (the fourth
 * derivatives of (1 - r2/a2)2 are 24, 8 and 24 over a4). At the rim only the curvature across it is left, 8 w0 / a2 all round,
 * and what is released there is half of it squared times the stiffness across that place. The formula of the hole has one
 * plate stiffness in all places (p2 a4 / (128 D'), its 3/512 d4/t3).
 */
export function worstOverMean({ hoopModulus: Ec, axialModulus: Ea, poisson, shear }: Plate): number {
  const free = 1 - (poisson * poisson * Ea) / Ec;
  // Stiffnesses by 12/t3, which all share.
  const d11 = Ec / free;
  const d22 = Ea / free;
  const h = poisson * d22 + 2 * shear;
  const plate = (3 * d11 + 2 * h + 3 * d22) / 8;
  const ofHole = Math.sqrt(Ec * Ea) / free;
  // Across a place at sin2 = x: d11 (1-x)2 + 2 h x (1-x) + d22 x2; its largest value lies at an end or where its slope is 0.
  const across = (x: number): number => d11 * (1 - x) ** 2 + 2 * h * x * (1 - x) + d22 * x * x;
  const level = (d11 - h) / (d11 - 2 * h + d22);
  const places = [0, 1, ...(level > 0 && level < 1 ? [level] : [])];
  return (Math.max(...places.map(across)) * ofHole) / plate ** 2;
}

/** K of the round hole (2.8 a): bending, half space, shear; the edge of the half space at 1 as the tests of holes are read. */
export function kOfHole(
  { hoopModulus: Ec, axialModulus: Ea, poisson, shear }: Plate,
  d: number,
  t: number,
  edge = 1,
): number {
  const plate = (1 - (poisson ** 2 * Ea) / Ec) / Math.sqrt(Ec * Ea);
  return plate * ((3 * d ** 4) / (512 * t ** 3) + (edge * d) / Math.PI) + (3 * d * d) / (64 * shear * t);
}

/** Of the half space where the rim crosses the stiffest way. */
export function edgeOfRim({ hoopModulus: Ec, axialModulus: Ea, poisson, shear }: Plate): number {
  return edgeFactor(Math.max(Ec, Ea) / (1 - (poisson ** 2 * Ea) / Ec), shear);
}
