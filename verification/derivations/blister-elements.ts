/**
 * A laminate over a round hole by finite elements: an elastic layer of thickness 1 bonded to a rigid base
 * outside the radius a, with pressure 1 under the disc inside it. The plate is a solid here, so the rotation of its root,
 * which the plate and the half crack of the closed form leave out, is in. Nine-node axisymmetric elements, graded towards the rim.
 */
import { add, emptyBand, solve } from './band.js';
import { remembered } from './remembered.js';

export interface Mesh {
  /** Size of the elements at the rim, over the thickness of the layer. */
  readonly finest: number;
  /** Largest size of an element, over the length that is meshed. */
  readonly coarsest: number;
  /** Elements laid in each of the steps that double from the rim outward. */
  readonly perStep: number;
}

/** The stiffness of a layer that is alike in all directions of its plane. */
export interface Layer {
  /** Along the radius, and between radius and circle. */
  readonly radial: number;
  readonly around: number;
  /** Through the thickness, and between plane and thickness. */
  readonly through: number;
  readonly coupling: number;
  readonly shear: number;
}

/** A layer that is alike in all directions, of Young's modulus 1. */
export function alikeLayer(nu: number): Layer {
  const lambda = nu / ((1 + nu) * (1 - 2 * nu));
  const shear = 1 / (2 * (1 + nu));
  const direct = lambda + 2 * shear;
  return { radial: direct, around: lambda, through: direct, coupling: lambda, shear };
}

/** A laminate of Young's modulus 1 in its plane, soft through its thickness, where it does not contract. */
export function softLayer(nu: number, through: number, shear: number): Layer {
  const radial = 1 / (1 - nu * nu);
  return { radial, around: nu * radial, through, coupling: 0, shear };
}

/** Nodes are laid this far out on the bonded side, over the thickness of the layer: the layer is at rest there. */
const BONDED_LENGTH = 6;

/** Places from 0 to `end` for the nodes of elements that double in size from `finest`, each cut into `perStep`. */
function graded(end: number, { finest, coarsest, perStep }: Mesh): number[] {
  const ends = [0];
  for (let at = 0, size = finest; at < end; size = Math.min(2 * size, Math.max(finest, end * coarsest))) {
    // The last step takes what is left, when another one would be shorter than half of it.
    const next = at + size > end - size ? end : at + size;
    for (let part = 1; part <= perStep; part++) ends.push(at + ((next - at) * part) / perStep);
    at = next;
  }
  return ends.flatMap((place, index) => (index === 0 ? [place] : [((ends[index - 1] ?? 0) + place) / 2, place]));
}

const GAUSS = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const;

/** The three quadratics of a line and their slopes at s, from -1 to 1. */
function quadratics(s: number): readonly (readonly [value: number, slope: number])[] {
  return [
    [(s * (s - 1)) / 2, s - 0.5],
    [1 - s * s, -2 * s],
    [(s * (s + 1)) / 2, s + 0.5],
  ];
}

/** Volume under the blister at pressure 1, over 2 pi. The mesh is stretched with `a`, so that the volume is smooth in it. */
function blisterVolume(a: number, stretchedFrom: number, mesh: Mesh, layer: Layer): number {
  const inside = graded(stretchedFrom, mesh).map((s) => a - (s * a) / stretchedFrom);
  const bonded = graded(BONDED_LENGTH, mesh).map((s) => a + s);
  const r = [...inside.reverse(), ...bonded.slice(1)];
  const rim = inside.length - 1;
  r[0] = 0;
  const z = graded(1, mesh);
  const [columns, rows] = [r.length, z.length];
  const band = emptyBand(2 * columns * rows, 4 * rows + 5);
  const load = new Float64Array(band.size);
  const { radial, around, through, coupling, shear } = layer;

  for (let column = 0; column + 2 < columns; column += 2) {
    const [r0, r1] = [r[column] as number, r[column + 2] as number];
    for (let level = 0; level + 2 < rows; level += 2) {
      const [z0, z1] = [z[level] as number, z[level + 2] as number];
      for (const [s, weightS] of GAUSS) {
        for (const [t, weightT] of GAUSS) {
          const radius = (r0 + r1) / 2 + (s * (r1 - r0)) / 2;
          const weight = weightS * weightT * radius * ((r1 - r0) / 2) * ((z1 - z0) / 2);
          const nodes: { at: number; N: number; dr: number; dz: number }[] = [];
          quadratics(s).forEach(([f, slopeF], i) => {
            quadratics(t).forEach(([g, slopeG], j) => {
              const at = 2 * ((column + i) * rows + level + j);
              nodes.push({
                at,
                N: (f * g) / radius,
                dr: (slopeF * g * 2) / (r1 - r0),
                dz: (f * slopeG * 2) / (z1 - z0),
              });
            });
          });
          for (const p of nodes) {
            for (const q of nodes) {
              // Strains of a ring: u,r along the radius, u/r round it, w,z through the layer; u,z + w,r is the shear.
              const plane = radial * (p.dr * q.dr + p.N * q.N) + around * (p.dr * q.N + p.N * q.dr);
              const uu = plane + shear * p.dz * q.dz;
              const uw = coupling * (p.dr + p.N) * q.dz + shear * p.dz * q.dr;
              const wu = coupling * p.dz * (q.dr + q.N) + shear * p.dr * q.dz;
              const ww = through * p.dz * q.dz + shear * p.dr * q.dr;
              add(band, p.at, q.at, weight * uu);
              add(band, p.at, q.at + 1, weight * uw);
              add(band, p.at + 1, q.at, weight * wu);
              add(band, p.at + 1, q.at + 1, weight * ww);
            }
          }
        }
      }
    }
    if (column >= rim) continue;
    for (const [s, weightS] of GAUSS) {
      const radius = (r0 + r1) / 2 + (s * (r1 - r0)) / 2;
      quadratics(s).forEach(([f], i) => {
        const at = 2 * (column + i) * rows + 1;
        load[at] = (load[at] ?? 0) + weightS * f * radius * ((r1 - r0) / 2);
      });
    }
  }

  const fix = (at: number): void => {
    add(band, at, at, 1e12);
    load[at] = 0;
  };
  for (let level = 0; level < rows; level++) fix(2 * level);
  for (let column = rim; column < columns; column++) {
    fix(2 * column * rows);
    fix(2 * column * rows + 1);
  }
  const u = solve(band, load);
  return u.reduce((sum, value, at) => sum + value * (load[at] as number), 0);
}

/** Energy released per area of new crack at pressure 1: half of the slope of the volume over the area of the disc. */
export const blisterRelease = remembered((a: number, mesh: Mesh, layer: Layer): number => {
  const step = a * 1e-3;
  const slope = (blisterVolume(a + step, a, mesh, layer) - blisterVolume(a - step, a, mesh, layer)) / (2 * step);
  return slope / (2 * a);
});
