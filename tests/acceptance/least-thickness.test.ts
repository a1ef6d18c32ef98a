import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastThickness } from '../../src/acceptance/index.js';
import { laidThickness, plyCount } from '../../src/laminate/index.js';
import { type Length, length } from '../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 400 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the least thickness to accept', () => {
  it('is what is required, or the fewest plies, by hand', () => {
    const plies = { leastPlies: 4, plyThickness: length.mm(0.8), systemPly: length.mm(0.8) };
    expect(leastThickness({ requiredThickness: length.mm(5), ...plies })).toBe(length.mm(5));
    expect(leastThickness({ requiredThickness: length.mm(2), ...plies })).toBeCloseTo(0.0032, 15);
    expect(leastThickness({ requiredThickness: 0 as Length, ...plies })).toBeCloseTo(0.0032, 15);
  });

  it('rises with a ply that is thicker than that of the system, and does not fall with a thinner one', () => {
    const of = (ply: number) =>
      leastThickness({
        requiredThickness: length.mm(5),
        leastPlies: 2,
        plyThickness: length.mm(ply),
        systemPly: length.mm(0.8),
      });
    expect([of(1.6), of(0.8), of(0.4)]).toEqual([length.mm(10), length.mm(5), length.mm(5)]);
  });

  it('is never more than the plies that the design lays, and at most one ply less where more than the fewest are laid', () => {
    fc.assert(
      fc.property(span(0, 0.03), span(0.0003, 0.003), fc.integer({ min: 1, max: 8 }), (t, ply, leastPlies) => {
        const input = { requiredThickness: t as Length, plyThickness: ply as Length, leastPlies };
        const least = leastThickness({ ...input, systemPly: ply as Length });
        const { plies } = plyCount(input);
        const laid = laidThickness({ plies, plyThickness: input.plyThickness });
        expect(least).toBeLessThanOrEqual(laid * (1 + 2e-9));
        expect(laid - least).toBeLessThan(ply * (1 + 1e-9));
      }),
      settings,
    );
  });
});
