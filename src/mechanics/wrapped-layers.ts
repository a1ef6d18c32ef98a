import { solveLinear } from '../numeric/index.js';

/** A wrap that differs round, along and through its thickness. */
export interface WrapConstants {
  readonly hoop: number;
  readonly axial: number;
  readonly radial: number;
  /** Loaded round, contracting along; loaded round, contracting through; loaded along, contracting through. */
  readonly hoopToAxial: number;
  readonly hoopToRadial: number;
  readonly axialToRadial: number;
}

/** How the ends of a pipe hold it along itself. */
export type Ends = 'plane stress' | 'plane strain' | 'open ends' | 'closed ends';

/** Radii in that of the interface, moduli and pressure in the modulus of the pipe: all plain numbers. */
export interface WrappedPipe {
  readonly bore: number;
  readonly outside: number;
  readonly poissonRatio: number;
  readonly wrap: WrapConstants;
  readonly pressure: number;
  readonly ends: Ends;
}

/** In the modulus of the pipe. */
export interface WrappedStresses {
  readonly interfacePressure: number;
  readonly boreHoop: number;
  readonly wrapHoop: number;
}

/** Stiffness of a layer: radial and hoop stress of the radial, hoop and axial strain, and the axial stress. */
interface Stiffness {
  readonly rr: number;
  readonly rt: number;
  readonly tt: number;
  readonly rz: number;
  readonly tz: number;
  readonly zz: number;
}

/** Inverse of the compliance of the wrap; in plane stress that of round and through alone. */
function wrapStiffness(wrap: WrapConstants, planeStress: boolean): Stiffness {
  const [str, stz, srz] = [
    -wrap.hoopToRadial / wrap.hoop,
    -wrap.hoopToAxial / wrap.hoop,
    -wrap.axialToRadial / wrap.axial,
  ];
  if (planeStress) {
    const [[rr, rt], [, tt]] = invert([
      [1 / wrap.radial, str],
      [str, 1 / wrap.hoop],
    ]) as [[number, number], [number, number]];
    return { rr, rt, tt, rz: 0, tz: 0, zz: 0 };
  }
  const [[rr, rt, rz], [, tt, tz], [, , zz]] = invert([
    [1 / wrap.radial, str, srz],
    [str, 1 / wrap.hoop, stz],
    [srz, stz, 1 / wrap.axial],
  ]) as [[number, number, number], [number, number, number], [number, number, number]];
  return { rr, rt, tt, rz, tz, zz };
}

function invert(matrix: readonly (readonly number[])[]): number[][] {
  return matrix.map((_, column) =>
    solveLinear(
      matrix,
      matrix.map((_, i) => (i === column ? 1 : 0)),
    ),
  );
}

function pipeStiffness(nu: number, planeStress: boolean): Stiffness {
  return wrapStiffness(
    { hoop: 1, axial: 1, radial: 1, hoopToAxial: nu, hoopToRadial: nu, axialToRadial: nu },
    planeStress,
  );
}

/** Powers of r in the displacement of a layer, and what the axial strain adds to it, for each of it, times r. */
function solutionOf({ rr, tt, rz, tz }: Stiffness): { readonly k: number; readonly along: number } {
  const [apart, pull] = [(rr - tt) / rr, (tz - rz) / rr];
  if (Math.abs(apart) > 1e-6) return { k: Math.sqrt(tt / rr), along: pull / apart };
  // Alike round and through, the two differences vanish together and the axial strain enters by rz alone.
  if (Math.abs(pull) < 1e-9) return { k: Math.sqrt(tt / rr), along: 0 };
  // As stiff round as through, yet held unlike along: r ln r belongs here, which the powers a millionth beside it come to.
  return { k: Math.sqrt(1 - 1e-6), along: pull / 1e-6 };
}

/** Stresses of pipe and wrap under pressure in the bore, bonded all over, far from the ends. */
export function wrappedStresses({ bore, outside, poissonRatio, wrap, pressure, ends }: WrappedPipe): WrappedStresses {
  const planeStress = ends === 'plane stress';
  const layers = [pipeStiffness(poissonRatio, planeStress), wrapStiffness(wrap, planeStress)] as const;
  const [pipe, cover] = layers;
  const [own, its] = [solutionOf(pipe), solutionOf(cover)];
  // Unknown: two constants of the pipe, two of the wrap, and the axial strain.
  const radial = (c: Stiffness, { k, along }: typeof own, r: number): number[] => [
    (c.rr * k + c.rt) * r ** (k - 1),
    (c.rt - c.rr * k) * r ** (-k - 1),
    (c.rr + c.rt) * along + c.rz,
  ];
  const hoop = (c: Stiffness, { k, along }: typeof own, r: number): number[] => [
    (c.rt * k + c.tt) * r ** (k - 1),
    (c.tt - c.rt * k) * r ** (-k - 1),
    (c.rt + c.tt) * along + c.tz,
  ];
  /** Axial force over 2 pi: each axial stress times r, integrated. */
  const force = (c: Stiffness, { k, along }: typeof own, from: number, to: number): number[] => [
    (c.rz * k + c.tz) * ((to ** (k + 1) - from ** (k + 1)) / (k + 1)),
    (c.tz - c.rz * k) * power(from, to, 1 - k),
    ((c.rz + c.tz) * along + c.zz) * ((to * to - from * from) / 2),
  ];
  const [a, b, c] = radial(pipe, own, bore) as [number, number, number];
  const [d, e, f] = radial(pipe, own, 1) as [number, number, number];
  const [g, h, i] = radial(cover, its, 1) as [number, number, number];
  const [j, l, m] = radial(cover, its, outside) as [number, number, number];
  const rows = [
    [a, b, 0, 0, c],
    [d, e, -g, -h, f - i],
    [1, 1, -1, -1, own.along - its.along],
    [0, 0, j, l, m],
    axialRow(),
  ];
  function axialRow(): number[] {
    if (ends === 'plane stress' || ends === 'plane strain') return [0, 0, 0, 0, 1];
    const [p, q, s] = force(pipe, own, bore, 1) as [number, number, number];
    const [t, u, v] = force(cover, its, 1, outside) as [number, number, number];
    return [p, q, t, u, s + v];
  }
  const x = solveLinear(rows, [-pressure, 0, 0, 0, ends === 'closed ends' ? (pressure * bore * bore) / 2 : 0]);
  const [A, B, C, D, strain] = x as [number, number, number, number, number];
  const sum = ([one, two, three]: number[], first: number, second: number): number =>
    (one as number) * first + (two as number) * second + (three as number) * strain;
  return {
    interfacePressure: -sum([d, e, f], A, B),
    boreHoop: sum(hoop(pipe, own, bore), A, B),
    wrapHoop: sum(hoop(cover, its, 1), C, D),
  };
}

/** Integral of r^(n - 1). */
function power(from: number, to: number, n: number): number {
  return Math.abs(n) < 1e-9 ? Math.log(to / from) : (to ** n - from ** n) / n;
}
