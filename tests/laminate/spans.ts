import * as fc from 'fast-check';
import { expect } from 'vitest';

/** Fixed seed of the properties of this room. */
export const seeded = { seed: 20261125, numRuns: 300 };

/** A number of a span, branded as the caller needs it. */
export const span = <Q extends number>(min: number, max: number): fc.Arbitrary<Q> =>
  fc.double({ min, max, noNaN: true }).map((value) => value as Q);

/** Two numbers of a span in rising order. */
export const rising = <Q extends number>(min: number, max: number): fc.Arbitrary<readonly [Q, Q]> =>
  fc.tuple(span<Q>(min, max), span<Q>(min, max)).map(([a, b]) => (a <= b ? [a, b] : [b, a]));

/** Agreement within a share of the second number. */
export function near(computed: number, other: number, share = 1e-9): void {
  expect(Math.abs(computed - other), `${computed} against ${other}`).toBeLessThanOrEqual(share * Math.abs(other));
}
