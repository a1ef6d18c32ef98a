import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Length, length, type Ratio, ratio } from '../../src/quantity/index.js';
import { rolls } from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('rolls', () => {
  it('hold the length with its waste, and one roll fewer does not', () => {
    run(
      fc.property(span(0.1, 500), span(1, 60), span(0, 0.3), (L, roll, omega) => {
        const {
          rolls: rollCount,
          lengthWithWaste,
          leftOnLastRoll,
        } = rolls({
          length: L as Length,
          rollLength: roll as Length,
          waste: omega as Ratio,
        });
        expect(lengthWithWaste / (L * (1 + omega))).toBeCloseTo(1, 12);
        expect(rollCount * roll).toBeGreaterThanOrEqual(lengthWithWaste * (1 - 1e-8));
        expect((rollCount - 1) * roll).toBeLessThan(lengthWithWaste);
        expect(leftOnLastRoll).toBeGreaterThanOrEqual(0);
        expect(leftOnLastRoll).toBeLessThan(roll);
        expect(Math.abs(rollCount * roll - leftOnLastRoll - lengthWithWaste)).toBeLessThan(1e-6);
      }),
    );
  });

  it('that are just used up leave nothing and need no further roll', () => {
    expect(rolls({ length: length.m(30), rollLength: length.m(11), waste: ratio.percent(10) })).toMatchObject({
      rolls: 3,
    });
    expect(
      rolls({ length: length.m(30), rollLength: length.m(11), waste: ratio.percent(10) }).leftOnLastRoll,
    ).toBeLessThan(1e-9);
  });

  it('take 10 % of waste when nothing else is said', () => {
    expect(rolls({ length: length.m(35.14633), rollLength: length.m(10) })).toMatchObject({ rolls: 4 });
    expect(rolls({ length: length.m(35.14633), rollLength: length.m(10), waste: ratio.fraction(0.15) })).toMatchObject({
      rolls: 5,
    });
  });
});
