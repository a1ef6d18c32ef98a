import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressureLongTerm, thicknessLongTerm, thicknessLongTermCountsSubstrate } from '../../../src/laminate/index.js';
import type { GaugePressure, Length, Stress } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const laminate = fc.record({
  pressure: span<GaugePressure>(1e5, 3e7),
  outsideDiameter: span<Length>(0.1, 1.2),
  longTermStrength: span<Stress>(3e7, 4e8),
  performanceFactor: span(0.3, 1),
});

describe('the thickness by long-term strength', () => {
  it('counts nothing of the pipe unless it is told to, and says so', () => {
    fc.assert(
      fc.property(
        laminate,
        span<Stress>(2e8, 5e8),
        span<Length>(0.001, 0.02),
        (given, yieldStrength, remainingWall) => {
          const alone = thicknessLongTerm(given);
          near(
            alone * given.performanceFactor * given.longTermStrength,
            (given.pressure * given.outsideDiameter) / 2,
            1e-12,
          );
          expect(thicknessLongTerm({ ...given, yieldStrength, remainingWall })).toBeLessThan(alone);
          expect(thicknessLongTermCountsSubstrate(given)).toBe(false);
          expect(thicknessLongTermCountsSubstrate({ ...given, yieldStrength, remainingWall })).toBe(true);
        },
      ),
      seeded,
    );
  });

  it('gives back the pressure it was made for, and never falls with more pressure or a thinner wall', () => {
    fc.assert(
      fc.property(
        laminate,
        rising<Length>(0, 0.02),
        rising<GaugePressure>(1e5, 3e7),
        (given, [thin, thick], [p1, p2]) => {
          const at = (wall: Length, pressure: GaugePressure) => ({
            ...given,
            pressure,
            yieldStrength: 241e6 as Stress,
            remainingWall: wall,
          });
          expect(thicknessLongTerm(at(thin, p2))).toBeGreaterThanOrEqual(thicknessLongTerm(at(thick, p2)));
          expect(thicknessLongTerm(at(thin, p2))).toBeGreaterThanOrEqual(thicknessLongTerm(at(thin, p1)));
          const laminateThickness = thicknessLongTerm(at(thin, p2));
          if (laminateThickness > 0) near(pressureLongTerm({ ...at(thin, p2), laminateThickness }), p2, 1e-10);
        },
      ),
      seeded,
    );
  });

  it('refuses yield strength without wall, wall without yield strength, and a factor above one', () => {
    const given = {
      pressure: 1e7 as GaugePressure,
      outsideDiameter: 0.2191 as Length,
      longTermStrength: 120e6 as Stress,
      performanceFactor: 0.5,
    };
    expect(() => thicknessLongTerm({ ...given, yieldStrength: 241e6 as Stress })).toThrow('remainingWall');
    expect(() => thicknessLongTerm({ ...given, remainingWall: 0.004 as Length })).toThrow('yieldStrength');
    expect(() => thicknessLongTerm({ ...given, performanceFactor: 1.01 })).toThrow(
      'must be at most the whole strength, 1',
    );
  });
});
