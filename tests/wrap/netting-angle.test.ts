import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angle, type Ratio } from '../../src/quantity/index.js';
import { nettingAngle } from '../../src/wrap/index.js';
import { span } from '../properties/spans.js';

const run = <T>(property: fc.IProperty<T>) => fc.assert(property, { seed: 20261125, numRuns: 300 });

describe('the netting angle', () => {
  it('balances the fibre forces: hoop over axial is the square of its tangent', () => {
    run(
      fc.property(span(0.05, 50), (hoopToAxial) => {
        const windingAngle = nettingAngle({ hoopToAxial: hoopToAxial as Ratio });
        expect(Math.sin(windingAngle) ** 2 / Math.cos(windingAngle) ** 2 / hoopToAxial).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is 45 deg for equal loads', () => {
    expect(nettingAngle({ hoopToAxial: 1 as Ratio })).toBeCloseTo(angle.deg(45), 12);
  });
});
