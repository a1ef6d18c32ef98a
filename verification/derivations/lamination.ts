/**
 * A laminate by another route: each ply is a tensor of fourth order that is turned index by index, the stiffness is integrated
 * through the thickness by Gauss points, and the equations are solved by determinants. Nothing here knows a formula of
 * lamination theory.
 */
export interface SlowPly {
  readonly thickness: number;
  readonly angle: number;
  readonly alongModulus: number;
  readonly acrossModulus: number;
  readonly shearModulus: number;
  readonly poissonRatio: number;
}

type Matrix = readonly (readonly number[])[];

const axes = [0, 1] as const;
/** The pairs of x and y that the three strains stand for. */
const pairs = [
  [0, 0],
  [1, 1],
  [0, 1],
] as const;

/** Stiffness 3 by 3 against x, y and the shear strain of engineers. */
export function slowStiffness(ply: SlowPly): number[][] {
  const { alongModulus: E1, acrossModulus: E2, shearModulus: G, poissonRatio: nu } = ply;
  // Inverse of the compliance by its determinant.
  const compliance = [1 / E1, -nu / E1, 1 / E2] as const;
  const determinant = compliance[0] * compliance[2] - compliance[1] * compliance[1];
  const own = [compliance[2] / determinant, -compliance[1] / determinant, compliance[0] / determinant] as const;
  const tensor = (i: number, j: number, k: number, l: number): number => {
    if (i === j && k === l) return own[i + k] as number;
    return i !== j && k !== l ? G : 0;
  };
  const [c, s] = [Math.cos(ply.angle), Math.sin(ply.angle)];
  const turn = [
    [c, s],
    [-s, c],
  ] as const;
  return pairs.map(([p, q]) =>
    pairs.map(([r, t]) => {
      let sum = 0;
      for (const i of axes)
        for (const j of axes)
          for (const k of axes)
            for (const l of axes) sum += turn[i][p] * turn[j][q] * turn[k][r] * turn[l][t] * tensor(i, j, k, l);
      return sum;
    }),
  );
}

/** Calls with each Gauss point: its height, its weight and its ply. */
export function throughThickness(
  plies: readonly SlowPly[],
  at: (z: number, weight: number, ply: SlowPly, index: number) => void,
): void {
  let bottom = -plies.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
  const point = Math.sqrt(3 / 5);
  plies.forEach((ply, index) => {
    const half = ply.thickness / 2;
    for (const [x, w] of [
      [-point, 5 / 9],
      [0, 8 / 9],
      [point, 5 / 9],
    ] as const)
      at(bottom + half + half * x, half * w, ply, index);
    bottom += ply.thickness;
  });
}

/** Stiffness 6 by 6 against the strains of the mid-plane and the curvatures. */
export function slowPlate(plies: readonly SlowPly[]): number[][] {
  const plate = Array.from({ length: 6 }, () => new Array<number>(6).fill(0));
  throughThickness(plies, (z, weight, ply) => {
    const q = slowStiffness(ply);
    for (let i = 0; i < 6; i++)
      for (let j = 0; j < 6; j++) {
        const height = (i < 3 ? 1 : z) * (j < 3 ? 1 : z);
        (plate[i] as number[])[j] =
          ((plate[i] as number[])[j] as number) + weight * height * ((q[i % 3] as number[])[j % 3] as number);
      }
  });
  return plate;
}

/** By the sum over all its minors. */
function determinant(matrix: Matrix): number {
  if (matrix.length === 1) return (matrix[0] as readonly number[])[0] as number;
  return (matrix[0] as readonly number[]).reduce((sum, value, column) => {
    const minor = matrix.slice(1).map((row) => row.filter((_, j) => j !== column));
    return sum + (column % 2 === 0 ? 1 : -1) * value * determinant(minor);
  }, 0);
}

/** Cramer's rule. */
export function byDeterminants(matrix: Matrix, right: readonly number[]): number[] {
  // Heights in the unit of the laminate keep the determinant in the range of numbers.
  const scale = matrix.map((row, i) => Math.sqrt(row[i] as number));
  const even = matrix.map((row, i) => row.map((value, j) => value / ((scale[i] as number) * (scale[j] as number))));
  const whole = determinant(even);
  return even.map((_, place) => {
    const swapped = even.map((row, i) =>
      row.map((value, j) => (j === place ? (right[i] as number) / (scale[i] as number) : value)),
    );
    return determinant(swapped) / whole / (scale[place] as number);
  });
}
