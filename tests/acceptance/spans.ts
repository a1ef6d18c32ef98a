import fc from 'fast-check';

export const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

/** Evenly spread numbers: fc.double spreads over the exponents, which between 0 and 1 are nearly all tiny. */
export const span = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1e6);
