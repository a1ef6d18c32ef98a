import * as fc from 'fast-check';
import { expect } from 'vitest';

/** What the property tests draw from, and how they compare. */

/** The seed of the house. */
export const seeded = { seed: 20261125, numRuns: 300 };

/** Runs a property with the seed of the house. */
export const run = <T>(property: fc.IProperty<T>): void => fc.assert(property, { seed: 20261125, numRuns: 300 });

/** A number of a span, branded as the caller needs it. */
export const span = <Q extends number = number>(min: number, max: number): fc.Arbitrary<Q> =>
  fc.double({ min, max, noNaN: true }).map((value) => value as Q);

/** Evenly spread numbers: fc.double spreads over the exponents, which between 0 and 1 are nearly all tiny. */
export const evenSpan = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1e6);

/** Two numbers of a span in rising order. */
export const rising = <Q extends number>(min: number, max: number): fc.Arbitrary<readonly [Q, Q]> =>
  fc.tuple(span<Q>(min, max), span<Q>(min, max)).map(([a, b]) => (a <= b ? [a, b] : [b, a]));

/** Agreement within a share of the second number. */
export function near(computed: number, other: number, share = 1e-9): void {
  expect(Math.abs(computed - other), `${computed} against ${other}`).toBeLessThanOrEqual(share * Math.abs(other));
}

/** Relative difference of two numbers. */
export const off = (a: number, b: number): number =>
  Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), Number.MIN_VALUE);
