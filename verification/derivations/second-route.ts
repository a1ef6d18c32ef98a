import { expect, it } from 'vitest';

/**
 * What a second route shows: that an equation follows from a law or a balance; that another calculation comes to the same; that
 * brute force does; or, where the formula is a definition, a sum or the largest of several, that its arithmetic is done right
 * and no more.
 */
export type Shows = 'physics' | 'mathematics' | 'counting' | 'arithmetic';

/** A test that holds a formula to a second route. The report reads from the call what the route is and what it shows. */
export function secondRoute(formula: string, shows: Shows, how: string, body: () => void): void {
  it(`${formula} by ${how} (${shows})`, body);
}

/** Demands that both routes meet, and that they would not if the library were off by one part in a thousand either way. */
export function meets(found: number, other: number, within = 1e-9): void {
  const off = (value: number): number => Math.abs(value - other) / Math.abs(other);
  expect(off(found)).toBeLessThanOrEqual(within);
  for (const factor of [0.999, 1.001]) expect(off(factor * found)).toBeGreaterThan(within);
}

/** Where a rising function passes zero. */
export function rootOf(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200 && low < (low + high) / 2 && (low + high) / 2 < high; step++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Where a function of one valley is lowest, by thirds. */
export function lowestOf(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200; step++) {
    const third = (high - low) / 3;
    if (f(low + third) < f(high - third)) high -= third;
    else low += third;
  }
  return (low + high) / 2;
}
