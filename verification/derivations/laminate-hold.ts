/** Laminate and bond by energy and by springs. Imports nothing that it checks. */
import { add, emptyBand, solve } from './band.js';
import { shearBySprings } from './bond.js';

/** Volume that a crack as long as W opens to under a pressure, per width, in a body of a modulus: its ellipse in strips. */
export function crackVolume(pressure: number, W: number, modulus: number, strips = 20_000): number {
  const a = W / 2;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    // Strips of even angle, so that the steep ends are as fine as the middle.
    const angle = (Math.PI * (i + 0.5)) / strips;
    sum += ((4 * pressure) / modulus) * a * Math.sin(angle) * (a * Math.sin(angle) * (Math.PI / strips));
  }
  return sum;
}

/**
 * How far the surface of a half space sinks under a pressure cos x, at its crest: displacements u(z) sin x and w(z) cos x of
 * least energy, by quadratic elements that grow with depth. Stiff across by E, through by Ez, in shear by G, no contraction.
 */
export function sinkOfWave(E: number, Ez: number, G: number): number {
  const [first, growth, depth] = [0.02, 1.02, 60];
  const ends = [0];
  for (let z = 0, size = first; z < depth; size *= growth) {
    z += size;
    ends.push(z);
  }
  const band = emptyBand(2 * (2 * ends.length - 1), 5);
  const load = new Float64Array(band.size);
  for (let e = 0; e + 1 < ends.length; e++) {
    const h = (ends[e + 1] as number) - (ends[e] as number);
    for (const [s, weight] of [
      [-Math.sqrt(0.6), 5 / 9],
      [0, 8 / 9],
      [Math.sqrt(0.6), 5 / 9],
    ] as const) {
      const shapes = [
        [(s * (s - 1)) / 2, s - 0.5],
        [1 - s * s, -2 * s],
        [(s * (s + 1)) / 2, s + 0.5],
      ] as const;
      shapes.forEach(([n, dn], p) => {
        shapes.forEach(([m, dm], q) => {
          const [i, j] = [4 * e + 2 * p, 4 * e + 2 * q];
          const [dp, dq, w] = [(2 * dn) / h, (2 * dm) / h, (weight * h) / 2];
          // Strains u cos x across, w' cos x through, (u' - w) sin x of shear.
          add(band, i, j, w * (E * n * m + G * dp * dq));
          add(band, i, j + 1, -w * G * dp * m);
          add(band, i + 1, j, -w * G * n * dq);
          add(band, i + 1, j + 1, w * (Ez * dp * dq + G * n * m));
        });
      });
    }
  }
  load[1] = 1;
  return solve(band, load)[1] as number;
}

interface EndOfWrap {
  readonly inner: number;
  readonly outer: number;
  readonly bond: number;
  readonly length: number;
  /** Strain of the bare inner layer beside a free outer one. */
  readonly apart: number;
}

/** Shear at the very end, carried on to it from the first two springs, and to springs without number from two counts of them. */
export function endShearBySprings({ inner, outer, bond, length, apart }: EndOfWrap): number {
  const at = (pieces: number): number => {
    const [first = 0, second = 0, third = 0] = shearBySprings(
      {
        innerStiffness: inner,
        outerStiffness: () => outer,
        bondModulus: bond,
        bondThickness: 1,
        length,
        innerFree: apart,
        outerFree: 0,
        innerPull: [0, 0],
        outerPull: [0, 0],
      },
      pieces,
    ).map(Math.abs);
    // A parabola through the middles of three pieces.
    return (15 * first - 10 * second + 3 * third) / 8;
  };
  const [rough, fine] = [at(2000), at(4000)];
  return fine + (fine - rough) / 3;
}

interface Taper {
  readonly inner: number;
  readonly outer: (x: number) => number;
  readonly bond: number;
  readonly apart: number;
  readonly end: number;
}

/** Largest slope of the force in the outer layer: two marches by Runge and Kutta, added so that no slope is left at the end. */
export function forceMarched({ inner, outer, bond, apart, end }: Taper, steps = 40_000): number {
  const dx = end / steps;
  const march = (slope: number, strain: number): (readonly [force: number, shear: number])[] => {
    const bend = (x: number, N: number): number => bond * (N / outer(x) + N / inner - strain);
    const rows: (readonly [number, number])[] = [[0, slope]];
    let [N, q] = [0, slope];
    for (let i = 0; i < steps; i++) {
      const x = i * dx;
      const [a, b] = [q, bend(x, N)];
      const [c, d] = [q + (dx / 2) * b, bend(x + dx / 2, N + (dx / 2) * a)];
      const [e, f] = [q + (dx / 2) * d, bend(x + dx / 2, N + (dx / 2) * c)];
      const [g, h] = [q + dx * f, bend(x + dx, N + dx * e)];
      N += (dx / 6) * (a + 2 * c + 2 * e + g);
      q += (dx / 6) * (b + 2 * d + 2 * f + h);
      rows.push([N, q]);
    }
    return rows;
  };
  const [loaded, bare] = [march(0, apart), march(1, 0)];
  const start = -(loaded.at(-1)?.[1] ?? 0) / (bare.at(-1)?.[1] ?? 1);
  // Further out than where the shear has died away the two marches only cancel.
  let most = start;
  for (let i = 0; i < steps / 2; i++) most = Math.max(most, (loaded[i]?.[1] ?? 0) + start * (bare[i]?.[1] ?? 0));
  return most;
}
