import type { PlyConstants } from './ply.js';

/** Stiffness of a ply in its own axes: 11, 12, 22, 66. */
export type Reduced = readonly [q11: number, q12: number, q22: number, q66: number];

/** Symmetric 3 by 3 in the order 11, 12, 22, 16, 26, 66. */
export type Six = readonly [a11: number, a12: number, a22: number, a16: number, a26: number, a66: number];

/** Along or x, across or y, shear. */
export type Three = readonly [x: number, y: number, xy: number];

export function reducedOf({
  alongModulus: E1,
  acrossModulus: E2,
  shearModulus: G,
  poissonRatio: nu,
}: PlyConstants): Reduced {
  const free = 1 - nu * nu * (E2 / E1);
  return [E1 / free, (nu * E2) / free, E2 / free, G];
}

/** Stiffness in axes from which the fibres lie at an angle. */
export function turnedOf([q11, q12, q22, q66]: Reduced, angle: number): Six {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [cc, ss, cs] = [c * c, s * s, c * s];
  const both = q12 + 2 * q66;
  return [
    q11 * cc * cc + 2 * both * cc * ss + q22 * ss * ss,
    (q11 + q22 - 4 * q66) * cc * ss + q12 * (cc * cc + ss * ss),
    q11 * ss * ss + 2 * both * cc * ss + q22 * cc * cc,
    ((q11 - both) * cc - (q22 - both) * ss) * cs,
    ((q11 - both) * ss - (q22 - both) * cc) * cs,
    (q11 + q22 - 2 * q12 - 2 * q66) * cc * ss + q66 * (cc * cc + ss * ss),
  ];
}

/** Strains with the shear strain of an engineer, from x and y to the axes of the ply. */
export function strainInPly([x, y, xy]: Three, angle: number): Three {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    x * c * c + y * s * s + xy * c * s,
    x * s * s + y * c * c - xy * c * s,
    2 * (y - x) * c * s + xy * (c * c - s * s),
  ];
}

/** Stresses from x and y to the axes of the ply. */
export function stressInPly([x, y, xy]: Three, angle: number): Three {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    x * c * c + y * s * s + 2 * xy * c * s,
    x * s * s + y * c * c - 2 * xy * c * s,
    (y - x) * c * s + xy * (c * c - s * s),
  ];
}

/** Free strain of a ply, an expansion along and across its fibres, in x and y. */
export function freeStrain(along: number, across: number, angle: number): Three {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [along * c * c + across * s * s, along * s * s + across * c * c, 2 * c * s * (along - across)];
}

/** A symmetric 3 by 3 times a vector. */
export function times([a11, a12, a22, a16, a26, a66]: Six, [x, y, xy]: Three): Three {
  return [a11 * x + a12 * y + a16 * xy, a12 * x + a22 * y + a26 * xy, a16 * x + a26 * y + a66 * xy];
}
