/**
 * A laminate over an endless slot by finite elements: an elastic layer of thickness 1 in plane strain, stiff one way across
 * the slot and another through its thickness, bonded to a rigid base outside half the width a, with pressure 1 under it.
 * Half of it is meshed, by nine-node elements graded towards the root; the root may turn, which the strip of the closed form
 * leaves out. Imports nothing that it checks.
 */
import { add, emptyBand, solve } from './band.js';
import { remembered } from './remembered.js';

export interface SlotLayer {
  /** Of the layer in plane strain, across the slot and through the thickness, and the one that joins them. */
  readonly across: number;
  readonly through: number;
  readonly coupling: number;
  readonly shear: number;
}

/** The stiffness of a layer with no contraction along the slot by the way in which it bends. */
export function layerOf({ modulus, through, shear }: { modulus: number; through: number; shear: number }): SlotLayer {
  return { across: modulus, through, coupling: 0, shear };
}

const BONDED = 6;
const GAUSS = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const;

/** Places from 0 to `end` that double in size from `finest`, each cut into two, with a node in the middle. */
function graded(end: number, finest: number): number[] {
  const places = [0];
  for (let at = 0, size = finest; at < end; size = Math.min(2 * size, Math.max(finest, end / 8))) {
    const next = at + size > end - size ? end : at + size;
    for (const part of [0.25, 0.5, 0.75, 1]) places.push(at + (next - at) * part);
    at = next;
  }
  return places;
}

function quadratics(s: number): readonly (readonly [value: number, slope: number])[] {
  return [
    [(s * (s - 1)) / 2, s - 0.5],
    [1 - s * s, -2 * s],
    [(s * (s + 1)) / 2, s + 0.5],
  ];
}

/** Area under half of the blister at pressure 1; the mesh is stretched with `a` from that of `from`. */
function halfArea(a: number, from: number, layer: SlotLayer, finest: number): number {
  const inside = graded(from, finest)
    .map((s) => a - (s * a) / from)
    .reverse();
  const x = [
    ...inside,
    ...graded(BONDED, finest)
      .slice(1)
      .map((s) => a + s),
  ];
  const root = inside.length - 1;
  const z = graded(1, finest);
  const [columns, rows] = [x.length, z.length];
  const band = emptyBand(2 * columns * rows, 4 * rows + 5);
  const load = new Float64Array(band.size);
  for (let column = 0; column + 2 < columns; column += 2) {
    const dx = (x[column + 2] as number) - (x[column] as number);
    for (let level = 0; level + 2 < rows; level += 2) {
      const dz = (z[level + 2] as number) - (z[level] as number);
      for (const [s, ws] of GAUSS)
        for (const [t, wt] of GAUSS) {
          const weight = (ws * wt * dx * dz) / 4;
          const nodes: { at: number; x: number; z: number }[] = [];
          quadratics(s).forEach(([f, df], i) => {
            quadratics(t).forEach(([g, dg], j) => {
              nodes.push({ at: 2 * ((column + i) * rows + level + j), x: (2 * df * g) / dx, z: (2 * f * dg) / dz });
            });
          });
          for (const p of nodes)
            for (const q of nodes) {
              add(band, p.at, q.at, weight * (layer.across * p.x * q.x + layer.shear * p.z * q.z));
              add(band, p.at, q.at + 1, weight * (layer.coupling * p.x * q.z + layer.shear * p.z * q.x));
              add(band, p.at + 1, q.at, weight * (layer.coupling * p.z * q.x + layer.shear * p.x * q.z));
              add(band, p.at + 1, q.at + 1, weight * (layer.through * p.z * q.z + layer.shear * p.x * q.x));
            }
        }
    }
    if (column >= root) continue;
    for (const [s, ws] of GAUSS)
      quadratics(s).forEach(([f], i) => {
        const at = 2 * (column + i) * rows + 1;
        load[at] = (load[at] as number) + (ws * f * dx) / 2;
      });
  }
  const fix = (at: number): void => {
    add(band, at, at, 1e9 * layer.across);
    load[at] = 0;
  };
  for (let level = 0; level < rows; level++) fix(2 * level);
  for (let column = root; column < columns; column++) {
    fix(2 * column * rows);
    fix(2 * column * rows + 1);
  }
  const u = solve(band, load);
  return u.reduce((sum, value, at) => sum + value * (load[at] as number), 0);
}

/** Energy released per area of new crack at pressure 1 over a slot W wide, in thicknesses. */
export const slotRelease = remembered((W: number, layer: SlotLayer, finest: number): number => {
  const a = W / 2;
  const step = a * 1e-3;
  return (halfArea(a + step, a, layer, finest) - halfArea(a - step, a, layer, finest)) / (4 * step);
});

/** The curved strip of the reference notes: an arc W wide on a rigid pipe, clamped, with shear by two thirds; half crack included. */
export interface CurvedStrip {
  readonly radius: number;
  readonly thickness: number;
  readonly width: number;
  readonly modulus: number;
  readonly shear: number;
}

export function curvedRelease({ radius: R, thickness: t, width: W, modulus: E, shear: G }: CurvedStrip): number {
  const a = W / (2 * R);
  const B = (E * t ** 3) / 12;
  const S = a / 2 + Math.sin(2 * a) / 4;
  const byShear = (a / 2 - Math.sin(2 * a) / 4) / ((2 / 3) * G * t);
  const H = (R * Math.sin(a)) / (E * t) / (S / (E * t) + (R * R * (S - Math.sin(a) ** 2 / a)) / B + byShear);
  const [N, M, V] = [R - H * Math.cos(a), H * R * (Math.sin(a) / a - Math.cos(a)), H * Math.sin(a)];
  return N ** 2 / (2 * E * t) + M ** 2 / (2 * B) + V ** 2 / ((4 / 3) * G * t) + (Math.PI * W) / (4 * E);
}
