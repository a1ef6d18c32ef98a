/**
 * A laminate over a finite patch of a pipe on which nothing bonds: Donnell's shallow shell with transverse shear, clamped along
 * the rim of an ellipse on the unrolled surface, with pressure 1 under it. Solved by Ritz' method with polynomials that
 * vanish at the rim; x runs along the pipe, y round it. Imports nothing that it checks.
 */
import { add, emptyBand, solve } from './band.js';
import { remembered } from './remembered.js';

export interface Patch {
  /** Of the pipe. */
  readonly radius: number;
  readonly thickness: number;
  /** Half of the extent along and round the pipe. */
  readonly along: number;
  readonly round: number;
  readonly hoopModulus: number;
  readonly axialModulus: number;
  /** From the hoop direction to the axial one. */
  readonly poissonRatio: number;
  /** In its plane and across it; across it, two thirds of the thickness count. */
  readonly shearModulus: number;
}

export interface Blister {
  /** Under the patch. */
  readonly volume: number;
  /** Released per area of new crack: the mean along the rim of a circle that grows evenly, and the most at any of its places. */
  readonly mean: number;
  readonly most: number;
  /** At the ends along the pipe and round it. */
  readonly atEnd: number;
  readonly atSide: number;
}

/** Gauss' points from 0 to 1, by Newton's method on the polynomials of Legendre. */
const gauss = remembered((count: number): readonly (readonly [place: number, weight: number])[] =>
  Array.from({ length: count }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 0;
    for (let round = 0; round < 50; round++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= count; k++) [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (count * (x * now - before)) / (x * x - 1);
      x -= now / slope;
    }
    return [(1 - x) / 2, 1 / ((1 - x * x) * slope * slope)] as const;
  }),
);

/** x^parity T_i(2 x^2 - 1) for i up to `degree`, each with its slope. */
function powers(x: number, parity: 0 | 1, degree: number): [value: number, slope: number][] {
  const s = 2 * x * x - 1;
  const values: [number, number][] = [
    [1, 0],
    [s, 1],
  ];
  for (let i = 2; i <= degree; i++) {
    const [last, before] = [values[i - 1] as [number, number], values[i - 2] as [number, number]];
    values.push([2 * s * last[0] - before[0], 2 * last[0] + 2 * s * last[1] - before[1]]);
  }
  return values.slice(0, degree + 1).map(([T, dT]) => (parity === 0 ? [T, 4 * x * dT] : [x * T, T + 4 * x * x * dT]));
}

/** Parities in x and y of u, v, w and the two rotations, for a pressure that is even in both. */
const FIELDS = [
  [1, 0],
  [0, 1],
  [0, 0],
  [1, 0],
  [0, 1],
] as const;

/** Which of the fields each of the eight strains hangs on. */
const FIELDS_OF = [[0], [1, 2], [0, 1], [3], [4], [3, 4], [2, 3], [2, 4]] as const;

/** Rows of the eight strains by the coefficients of all fields, and the deflection, at one place of the unit disc. */
function strainsAt(xi: number, eta: number, patch: Patch, degree: number): { rows: Float64Array[]; w: Float64Array } {
  const count = ((degree + 1) * (degree + 2)) / 2;
  const rows = Array.from({ length: 8 }, () => new Float64Array(5 * count));
  const w = new Float64Array(5 * count);
  const rim = 1 - xi * xi - eta * eta;
  FIELDS.forEach(([px, py], field) => {
    const [alongX, alongY] = [powers(xi, px, degree), powers(eta, py, degree)];
    let at = field * count;
    for (let i = 0; i <= degree; i++) {
      for (let j = 0; i + j <= degree; j++, at++) {
        const [[f, df], [g, dg]] = [alongX[i] as [number, number], alongY[j] as [number, number]];
        const value = rim * f * g;
        const dx = (rim * df * g - 2 * xi * f * g) / patch.along;
        const dy = (rim * f * dg - 2 * eta * f * g) / patch.round;
        const put = (row: number, entry: number): void => {
          (rows[row] as Float64Array)[at] = entry;
        };
        if (field === 0) [put(0, dx), put(2, dy)];
        else if (field === 1) [put(1, dy), put(2, dx)];
        else if (field === 2) [put(1, value / patch.radius), put(6, dx), put(7, dy)];
        else if (field === 3) [put(3, dx), put(5, dy), put(6, value)];
        else [put(4, dy), put(5, dx), put(7, value)];
        if (field === 2) w[at] = value;
      }
    }
  });
  return { rows, w };
}

/** Forces and moments of the shell for its eight strains. */
function stressed(e: readonly number[], patch: Patch): number[] {
  const { thickness: t, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu, shearModulus: G } = patch;
  const [ex, ey, gxy, kx, ky, kxy, gx, gy] = e as [number, number, number, number, number, number, number, number];
  const q = 1 / (1 - (nu * nu * Ea) / Ec);
  const [Q11, Q22, Q12] = [q * Ea, q * Ec, q * nu * Ea];
  const bend = t ** 3 / 12;
  const shear = (2 / 3) * G * t;
  return [
    t * (Q11 * ex + Q12 * ey),
    t * (Q12 * ex + Q22 * ey),
    t * G * gxy,
    bend * (Q11 * kx + Q12 * ky),
    bend * (Q12 * kx + Q22 * ky),
    bend * G * kxy,
    shear * gx,
    shear * gy,
  ];
}

/** The blister over a patch, with polynomials up to twice the degree in each direction. */
export const blisterOver = remembered((patch: Patch, degree: number): Blister => {
  const count = ((degree + 1) * (degree + 2)) / 2;
  const n = 5 * count;
  // The band is the whole matrix.
  const K = emptyBand(n, n - 1);
  const load = new Float64Array(n);
  const points = gauss(degree + 5);
  for (const [r, weightR] of points) {
    for (const [q, weightQ] of points) {
      const angle = (q * Math.PI) / 2;
      // Four quarters.
      const weight = 2 * Math.PI * weightR * weightQ * r * patch.along * patch.round;
      const { rows, w } = strainsAt(r * Math.cos(angle), r * Math.sin(angle), patch, degree);
      for (let i = 0; i < n; i++) {
        load[i] = (load[i] as number) + weight * (w[i] as number);
        const forces = stressed(
          rows.map((row) => row[i] as number),
          patch,
        );
        rows.forEach((row, s) => {
          const force = weight * (forces[s] as number);
          if (force === 0) return;
          for (const field of FIELDS_OF[s] as readonly number[]) {
            const end = Math.min(i + 1, (field + 1) * count);
            for (let j = field * count; j < end; j++) add(K, i, j, force * (row[j] as number));
          }
        });
      }
    }
  }
  const c = solve(K, load);
  const volume = c.reduce((sum, each, i) => sum + each * (load[i] as number), 0);
  // Nothing moves at the rim, so that a piece of it which lets go releases the energy that the shell holds there.
  const atRim = (angle: number): number => {
    const { rows } = strainsAt(Math.cos(angle), Math.sin(angle), patch, degree);
    const strains = rows.map((row) => row.reduce((sum, each, i) => sum + each * (c[i] as number), 0));
    return stressed(strains, patch).reduce((sum, force, s) => sum + (force * (strains[s] as number)) / 2, 0);
  };
  const places = gauss(16).map(([q, weight]) => [atRim((q * Math.PI) / 2), weight] as const);
  const [atEnd, atSide] = [atRim(0), atRim(Math.PI / 2)];
  const mean = places.reduce((sum, [release, weight]) => sum + release * weight, 0);
  return { volume, mean, most: Math.max(atEnd, atSide, ...places.map(([release]) => release)), atEnd, atSide };
});

/** The mean release of a circle by the volume under it: half of its slope over the area that grows. */
export function releaseByVolume(patch: Patch, degree: number): number {
  const step = patch.along * 1e-4;
  const at = (a: number): number => blisterOver({ ...patch, along: a, round: a }, degree).volume;
  return (at(patch.along + step) - at(patch.along - step)) / (2 * step) / (4 * Math.PI * patch.along);
}

/** Half of a crack as wide as the circle, in the solid under it: the same term for a plate and for a shell. */
export function releaseOfHalfCrack({ along, hoopModulus: Ec, axialModulus: Ea, poissonRatio: nu }: Patch): number {
  return (2 * along * (1 - (nu * nu * Ea) / Ec)) / (Math.PI * Math.sqrt(Ea * Ec));
}
