/**
 * Two layers and the bond between them as springs in a row: each short piece of a layer is a spring along, each piece of bond a
 * spring across. Nothing here knows an equation of a shear lag.
 */
export interface Springs {
  readonly innerStiffness: number;
  /** At a place from 0 to the length. */
  readonly outerStiffness: (x: number) => number;
  readonly bondModulus: number;
  readonly bondThickness: number;
  readonly length: number;
  /** By how much each free layer would strain. */
  readonly innerFree: number;
  readonly outerFree: number;
  /** Forces on the ends, pulling: at x = 0 and at x = length. */
  readonly innerPull: readonly [number, number];
  readonly outerPull: readonly [number, number];
}

/** Shear stress in the middle of each piece of bond, from the displacements of all knots. */
export function shearBySprings(springs: Springs, pieces: number): number[] {
  const dx = springs.length / pieces;
  const bond = (springs.bondModulus / springs.bondThickness) * dx;
  // Knots in pairs, the inner one first: a band of two each way.
  const n = 2 * pieces;
  const band = Array.from({ length: n }, () => [0, 0, 0]);
  const right = new Array<number>(n).fill(0);
  const add = (i: number, j: number, stiffness: number): void => {
    (band[i] as number[])[0] = ((band[i] as number[])[0] as number) + stiffness;
    (band[j] as number[])[0] = ((band[j] as number[])[0] as number) + stiffness;
    (band[i] as number[])[j - i] = ((band[i] as number[])[j - i] as number) - stiffness;
  };
  for (let p = 0; p < pieces; p++) {
    add(2 * p, 2 * p + 1, bond);
    if (p === pieces - 1) continue;
    const ki = springs.innerStiffness / dx;
    const ko = springs.outerStiffness((p + 1) * dx) / dx;
    add(2 * p, 2 * p + 2, ki);
    add(2 * p + 1, 2 * p + 3, ko);
    for (const [layer, stiffness, free] of [
      [0, ki, springs.innerFree],
      [1, ko, springs.outerFree],
    ] as const) {
      right[2 * p + layer] = (right[2 * p + layer] as number) - stiffness * free * dx;
      right[2 * p + 2 + layer] = (right[2 * p + 2 + layer] as number) + stiffness * free * dx;
    }
  }
  for (const [layer, pulls] of [
    [0, springs.innerPull],
    [1, springs.outerPull],
  ] as const) {
    right[layer] = (right[layer] as number) - pulls[0];
    right[n - 2 + layer] = (right[n - 2 + layer] as number) + pulls[1];
  }
  // The whole may drift along: one knot is held.
  (band[0] as number[])[0] = ((band[0] as number[])[0] as number) + bond;
  const u = solveBand(band, right);
  return Array.from({ length: pieces }, (_, p) => ((u[2 * p + 1] as number) - (u[2 * p] as number)) * (bond / dx));
}

/** Symmetric, with two places beside the diagonal. */
function solveBand(band: number[][], right: number[]): number[] {
  const n = right.length;
  for (let i = 0; i < n; i++)
    for (let k = 1; k <= 2 && i + k < n; k++) {
      const factor = (band[i]?.[k] as number) / (band[i]?.[0] as number);
      for (let j = k; j <= 2; j++) {
        const row = band[i + k] as number[];
        row[j - k] = (row[j - k] as number) - factor * (band[i]?.[j] as number);
      }
      right[i + k] = (right[i + k] as number) - factor * (right[i] as number);
    }
  const u = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = right[i] as number;
    for (let k = 1; k <= 2 && i + k < n; k++) rest -= (band[i]?.[k] as number) * (u[i + k] as number);
    u[i] = rest / (band[i]?.[0] as number);
  }
  return u;
}
