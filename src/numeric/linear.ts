/** Linear equations by elimination with the largest pivot. Entries of one unit keep every bit when the unit changes by powers of two. */
export function solveLinear(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const n = matrix.length;
  const m = matrix.map((row, i) => [...row, right[i] as number]);
  const at = (i: number, j: number): number => (m[i] as number[])[j] as number;
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++) if (Math.abs(at(i, column)) > Math.abs(at(pivot, column))) pivot = i;
    [m[column], m[pivot]] = [m[pivot] as number[], m[column] as number[]];
    for (let i = column + 1; i < n; i++) {
      const factor = at(i, column) / at(column, column);
      for (let j = column; j <= n; j++) (m[i] as number[])[j] = at(i, j) - factor * at(column, j);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = at(i, n);
    for (let j = i + 1; j < n; j++) rest -= at(i, j) * (x[j] as number);
    x[i] = rest / at(i, i);
  }
  return x;
}
