import { solveLinear } from '../../numeric/index.js';
import type { Ply } from './ply.js';
import { reducedOf, type Six, type Three, turnedOf } from './turning.js';

/** A, B and D of a laminate, and its thickness. */
export interface Plate {
  readonly A: Six;
  readonly B: Six;
  readonly D: Six;
  readonly thickness: number;
}

/** Middle of a ply over the mid-plane of the laminate, and its thickness. */
export interface Layer {
  readonly middle: number;
  readonly thickness: number;
}

export function layersOf(plies: readonly Ply[]): Layer[] {
  const total = plies.reduce((sum, { thickness }) => sum + thickness, 0);
  let bottom = -total / 2;
  return plies.map(({ thickness }) => {
    const layer = { middle: bottom + thickness / 2, thickness };
    bottom += thickness;
    return layer;
  });
}

export function plateOf(plies: readonly Ply[]): Plate {
  const [A, B, D] = [sixZeros(), sixZeros(), sixZeros()];
  let total = 0;
  layersOf(plies).forEach(({ middle: z, thickness: t }, index) => {
    const ply = plies[index] as Ply;
    const q = turnedOf(reducedOf(ply), ply.angle);
    q.forEach((value, place) => {
      A[place] = (A[place] as number) + value * t;
      B[place] = (B[place] as number) + value * t * z;
      D[place] = (D[place] as number) + value * t * (z * z + (t * t) / 12);
    });
    total += t;
  });
  return { A: A as unknown as Six, B: B as unknown as Six, D: D as unknown as Six, thickness: total };
}

function sixZeros(): number[] {
  return [0, 0, 0, 0, 0, 0];
}

/**
 * Strains of the mid-plane and curvatures under line loads and line moments. The lower half is divided by the thickness, so
 * that every entry has the unit of A and a change of units changes no bit.
 */
export function respond({ A, B, D, thickness: h }: Plate, loads: Three, moments: Three): readonly [Three, Three] {
  const [b, d] = [B.map((value) => value / h), D.map((value) => value / (h * h))] as unknown as [Six, Six];
  const top = rows(A).map((row, i) => [...row, ...(rows(b)[i] as number[])]);
  const bottom = rows(b).map((row, i) => [...row, ...(rows(d)[i] as number[])]);
  const x = solveLinear([...top, ...bottom], [...loads, ...moments.map((moment) => moment / h)]);
  const at = (place: number): number => x[place] as number;
  return [
    [at(0), at(1), at(2)],
    [at(3) / h, at(4) / h, at(5) / h],
  ];
}

/** Strains of a laminate that is held from bending. */
export function respondHeld({ A }: Plate, loads: Three): Three {
  return solveLinear(rows(A), loads) as unknown as Three;
}

function rows([a11, a12, a22, a16, a26, a66]: Six): number[][] {
  return [
    [a11, a12, a16],
    [a12, a22, a26],
    [a16, a26, a66],
  ];
}
