/**
 * Two elastic cylinders, one round the other, by four linear equations: in each layer the displacement is A r + B/r, and
 * A and B of both follow from the pressure in the bore, none outside, and equal radial stress and matching radii where they
 * meet. Plane stress. Nothing here knows a closed form of the pressure between them.
 */
export interface LayeredCylinder {
  readonly bore: number;
  readonly meet: number;
  readonly outside: number;
  readonly inner: { readonly modulus: number; readonly poissonRatio: number };
  readonly outer: { readonly modulus: number; readonly poissonRatio: number };
  readonly pressure: number;
  /** How much larger the inner layer is than the bore of the outer one before assembly, on the radius. */
  readonly misfit: number;
}

type Row = readonly number[];

export interface LayeredStress {
  readonly radial: (r: number) => number;
  readonly hoop: (r: number) => number;
}

/** Stresses of the inner and of the outer layer. */
export function layeredStresses(cylinder: LayeredCylinder): readonly [inner: LayeredStress, outer: LayeredStress] {
  const { bore, meet, outside, inner, outer, pressure, misfit } = cylinder;
  // Radial stress of A r + B/r: E/(1 - nu^2) ((1 + nu) A - (1 - nu) B/r^2); the hoop stress has the other sign.
  const radial = ({ modulus: E, poissonRatio: nu }: LayeredCylinder['inner'], r: number): readonly [number, number] => [
    E / (1 - nu),
    -E / ((1 + nu) * r * r),
  ];
  const [ai, bi] = radial(inner, bore);
  const [am, bm] = radial(inner, meet);
  const [cm, dm] = radial(outer, meet);
  const [co, d] = radial(outer, outside);
  const [A, B, C, D] = eliminate(
    [
      [ai, bi, 0, 0],
      [am, bm, -cm, -dm],
      [-meet, -1 / meet, meet, 1 / meet],
      [0, 0, co, d],
    ],
    [-pressure, 0, misfit, 0],
  ) as [number, number, number, number];
  const stresses = (layer: LayeredCylinder['inner'], a: number, b: number): LayeredStress => ({
    radial: (r) => radial(layer, r)[0] * a + radial(layer, r)[1] * b,
    hoop: (r) => radial(layer, r)[0] * a - radial(layer, r)[1] * b,
  });
  return [stresses(inner, A, B), stresses(outer, C, D)];
}

/** Gaussian elimination with the largest pivot, rows scaled to a largest entry of 1. */
function eliminate(matrix: readonly Row[], right: Row): number[] {
  const rows = matrix.map((row, i) => {
    const largest = Math.max(...row.map(Math.abs));
    return [...row, right[i] as number].map((value) => value / largest);
  });
  const n = rows.length;
  const at = (i: number, j: number): number => (rows[i] as number[])[j] as number;
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++) if (Math.abs(at(i, column)) > Math.abs(at(pivot, column))) pivot = i;
    [rows[column], rows[pivot]] = [rows[pivot] as number[], rows[column] as number[]];
    for (let i = 0; i < n; i++) {
      if (i === column) continue;
      const factor = at(i, column) / at(column, column);
      rows[i] = (rows[i] as number[]).map((value, j) => value - factor * at(column, j));
    }
  }
  return rows.map((_, i) => at(i, n) / at(i, i));
}
