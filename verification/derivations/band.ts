/** A symmetric band matrix: entry (i, j), j <= i, stands at i (width + 1) + j - i + width. */
export interface Band {
  readonly values: Float64Array;
  readonly width: number;
  readonly size: number;
}

export function emptyBand(size: number, width: number): Band {
  return { size, width, values: new Float64Array(size * (width + 1)) };
}

/** Adds to an entry; above the diagonal it stands below it already. */
export function add({ values, width }: Band, i: number, j: number, value: number): void {
  if (j > i) return;
  const at = i * (width + 1) + j - i + width;
  values[at] = (values[at] as number) + value;
}

/** Solves K u = f by the factor of Cholesky, in place. */
export function solve({ values, width, size }: Band, load: Float64Array): Float64Array {
  const row = width + 1;
  // Left of its first entry that is not zero, a row of the factor is zero too.
  const firsts = Array.from({ length: size }, (_, i) => {
    let first = Math.max(0, i - width);
    while (first < i && values[i * width + width + first] === 0) first++;
    return first;
  });
  for (let i = 0; i < size; i++) {
    const first = firsts[i] as number;
    for (let j = first; j <= i; j++) {
      const atI = i * width + width;
      const atJ = j * width + width;
      const from = Math.max(first, firsts[j] as number);
      // Four sums side by side, so that no product waits for the one before it.
      let s0 = values[atI + j] as number;
      let s1 = 0;
      let s2 = 0;
      let s3 = 0;
      let k = from;
      for (; k + 3 < j; k += 4) {
        s0 -= (values[atI + k] as number) * (values[atJ + k] as number);
        s1 -= (values[atI + k + 1] as number) * (values[atJ + k + 1] as number);
        s2 -= (values[atI + k + 2] as number) * (values[atJ + k + 2] as number);
        s3 -= (values[atI + k + 3] as number) * (values[atJ + k + 3] as number);
      }
      for (; k < j; k++) s0 -= (values[atI + k] as number) * (values[atJ + k] as number);
      const sum = s0 + s1 + (s2 + s3);
      if (i === j && !(sum > 0)) throw new RangeError('the stiffness is not positive');
      values[atI + j] = i === j ? Math.sqrt(sum) : sum / (values[atJ + j] as number);
    }
  }
  const u = Float64Array.from(load);
  for (let i = 0; i < size; i++) {
    let sum = u[i] as number;
    for (let k = firsts[i] as number; k < i; k++) sum -= (values[i * row + k - i + width] as number) * (u[k] as number);
    u[i] = sum / (values[i * row + width] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    const solved = (u[i] as number) / (values[i * row + width] as number);
    u[i] = solved;
    for (let k = firsts[i] as number; k < i; k++)
      u[k] = (u[k] as number) - (values[i * row + k - i + width] as number) * solved;
  }
  return u;
}
