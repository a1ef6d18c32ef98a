import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideDiameter } from '../../src/pipe/index.js';
import { type Length, length } from '../../src/quantity/index.js';

describe('the inside diameter', () => {
  it('of 12 in pipe, schedule 40, is 303.2 mm as its table prints it', () => {
    const bore = insideDiameter({ outsideDiameter: length.mm(323.8), wallThickness: length.mm(10.31) });
    expect(length.inMm(bore)).toBeCloseTo(303.18, 9);
  });

  it('leaves with two walls the outside diameter, and never none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.001, max: 0.499, noNaN: true }),
        (outside, part) => {
          const wall = part * outside;
          const bore = insideDiameter({ outsideDiameter: outside as Length, wallThickness: wall as Length });
          expect(bore + 2 * wall).toBeCloseTo(outside, 12);
          expect(bore).toBeGreaterThan(0);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
