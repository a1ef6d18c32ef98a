/**
 * A strip of a thin shell round a pipe, bonded nowhere over its length and clamped where the bond begins, with pressure 1
 * under it: D w'''' + (E t/R^2) w = 1, w = w' = 0 at both ends. Solved exactly; the energy that a growing strip releases per
 * area of new crack is found twice, from the moment at the clamp and from the volume under the strip.
 */
export interface Strip {
  /** Radius of the pipe. */
  readonly radius: number;
  readonly thickness: number;
  /** Unbonded length. */
  readonly length: number;
  /** Young's modulus round the pipe and plate stiffness along it, E t^3/(12 (1 - nu^2)) of the axial modulus. */
  readonly hoopModulus: number;
  readonly bendingStiffness: number;
}

interface Solved {
  readonly moment: number;
  readonly volume: number;
}

/** w = w0 (1 + A cosh cos + B sinh sin) of beta x from the middle, by the two conditions at the end. */
function solve({ radius, thickness, length, hoopModulus, bendingStiffness }: Strip): Solved {
  const foundation = (hoopModulus * thickness) / radius ** 2;
  const beta = (foundation / (4 * bendingStiffness)) ** 0.25;
  const b = (beta * length) / 2;
  const [ch, sh, c, s] = [Math.cosh(b), Math.sinh(b), Math.cos(b), Math.sin(b)];
  // At the end: 1 + A ch c + B sh s = 0 and A (sh c - ch s) + B (ch s + sh c) = 0.
  const [f, g] = [sh * c - ch * s, ch * s + sh * c];
  const determinant = ch * c * g - sh * s * f;
  const [A, B] = [-g / determinant, f / determinant];
  // (cosh cos)'' = -2 sinh sin, (sinh sin)'' = 2 cosh cos; their integrals from 0 are (sh c + ch s)/2 and (ch s - sh c)/2.
  const curvature = (beta ** 2 * (-2 * A * sh * s + 2 * B * ch * c)) / foundation;
  const integral = (b + (A * (sh * c + ch * s)) / 2 + (B * (ch * s - sh * c)) / 2) / beta;
  return { moment: bendingStiffness * curvature, volume: (2 * integral) / foundation };
}

/** At a clamp that lets go, M^2/(2 D) is released. */
export function releaseByMoment(strip: Strip): number {
  return solve(strip).moment ** 2 / (2 * strip.bendingStiffness);
}

/** Half of the slope of the volume over the area that both ends uncover. */
export function releaseByVolume(strip: Strip): number {
  const step = strip.length * 1e-5;
  const at = (length: number): number => solve({ ...strip, length }).volume;
  return (at(strip.length + step) - at(strip.length - step)) / (4 * step);
}

/**
 * The other extreme: a strip endlessly long along the pipe that bridges an arc of length W on a rigid pipe, clamped at both
 * sides; a thin arch in plane strain without Poisson's ratio, its shear left out. H is the thrust by which its middle moves.
 */
export function releaseOfArc({ radius: R, thickness: t, length: W, hoopModulus: E }: Strip): number {
  const a = W / (2 * R);
  const B = (E * t ** 3) / 12;
  const S = a / 2 + Math.sin(2 * a) / 4;
  const compliance = S / (E * t) + (R * R * (S - Math.sin(a) ** 2 / a)) / B;
  const H = (R * Math.sin(a)) / (E * t) / compliance;
  const force = R - H * Math.cos(a);
  const moment = H * R * (Math.sin(a) / a - Math.cos(a));
  return force ** 2 / (2 * E * t) + moment ** 2 / (2 * B);
}

/** A long strip: the membrane of the ring, R^2/(2 E t) = D^2/(8 E t). */
export function releaseOfMembrane({ radius, thickness, hoopModulus }: Strip): number {
  return radius ** 2 / (2 * hoopModulus * thickness);
}
