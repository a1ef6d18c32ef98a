import fc from 'fast-check';

/** Runs a property with the seed of the house. */
export const run = <T>(property: fc.IProperty<T>): void => fc.assert(property, { seed: 20261125, numRuns: 300 });

/** A number from `min` to `max`. */
export const span = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Relative difference of two numbers. */
export const off = (a: number, b: number): number =>
  Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), Number.MIN_VALUE);
