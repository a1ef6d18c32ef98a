import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  forceYieldedAxial,
  pipeStressAtStrain,
  pressureYieldedHoop,
  strainYieldedHoop,
  thicknessYieldedAxial,
  thicknessYieldedHoop,
  thicknessYieldedLive,
  thicknessYieldedLiveCreditsPressure,
} from '../../../src/laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain, Stress } from '../../../src/quantity/index.js';
import { near, rising, seeded, span } from '../../properties/spans.js';

const pipe = fc
  .record({
    pressure: span<GaugePressure>(1e5, 3e7),
    outsideDiameter: span<Length>(0.05, 1.2),
    pipeStress: span<Stress>(2e8, 5.5e8),
    remainingWall: span<Length>(0.001, 0.02),
    hoopModulus: span<Modulus>(8e9, 80e9),
    allowableStrain: span<Strain>(5e-4, 4e-3),
  })
  .filter(({ remainingWall, outsideDiameter }) => remainingWall < outsideDiameter / 4);

describe('the thickness when the pipe may yield', () => {
  it('gives back the pressure it was made for', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        const laminateThickness = thicknessYieldedHoop(given);
        fc.pre(laminateThickness > 0);
        near(pressureYieldedHoop({ ...given, laminateThickness }), given.pressure, 1e-12);
      }),
      seeded,
    );
  });

  it('strains the laminate as far as it may, by the stress that the pipe comes to at that strain', () => {
    fc.assert(
      fc.property(
        pipe,
        span<Stress>(2e8, 5.5e8),
        span<Modulus>(65e9, 210e9),
        (drawn, yieldStrength, substrateModulus) => {
          const limits = { limitStress: yieldStrength, substrateModulus, allowableStrain: drawn.allowableStrain };
          const given = { ...drawn, pipeStress: pipeStressAtStrain(limits) };
          const laminateThickness = thicknessYieldedHoop(given);
          fc.pre(laminateThickness > 1e-6);
          const laid = { ...given, yieldStrength, substrateModulus, laminateThickness };
          near(strainYieldedHoop(laid), given.allowableStrain, 1e-9);
        },
      ),
      seeded,
    );
  });

  it('gives back the axial force it was made for', () => {
    fc.assert(
      fc.property(pipe, span<Force>(1e5, 3e7), span<Modulus>(4e9, 4e10), (given, axialForce, axialModulus) => {
        const laminateThickness = thicknessYieldedAxial({ ...given, axialForce, axialModulus });
        fc.pre(laminateThickness > 0);
        near(forceYieldedAxial({ ...given, axialModulus, laminateThickness }), axialForce, 1e-12);
      }),
      seeded,
    );
  });

  it('never falls with more pressure, a thinner wall or a smaller strain', () => {
    fc.assert(
      fc.property(
        pipe,
        rising<GaugePressure>(1e5, 3e7),
        rising<Length>(0.1, 1),
        rising<Strain>(5e-4, 4e-3),
        (given, [p1, p2], [thin, thick], [e1, e2]) => {
          const at = (change: object) => thicknessYieldedHoop({ ...given, ...change });
          expect(at({ pressure: p2 })).toBeGreaterThanOrEqual(at({ pressure: p1 }));
          expect(at({ remainingWall: given.remainingWall * thin })).toBeGreaterThanOrEqual(
            at({ remainingWall: given.remainingWall * thick }),
          );
          expect(at({ allowableStrain: e1 })).toBeGreaterThanOrEqual(at({ allowableStrain: e2 }));
        },
      ),
      seeded,
    );
  });
});

describe('the thickness with credit for pressure during application', () => {
  const live = (given: Parameters<typeof thicknessYieldedHoop>[0], part: number) => ({
    ...given,
    yieldStrength: given.pipeStress,
    livePressure: (part * given.pressure) as GaugePressure,
    substrateModulus: 207e9 as Modulus,
  });

  it('is the plain one without live pressure, and says whether it takes credit', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        const plain = thicknessYieldedHoop(given);
        expect(Math.abs(thicknessYieldedLive(live(given, 0)) - plain)).toBeLessThanOrEqual(1e-12 * plain);
        expect(thicknessYieldedLiveCreditsPressure(live(given, 0))).toBe(false);
        expect(thicknessYieldedLiveCreditsPressure(live(given, 0.1))).toBe(true);
      }),
      seeded,
    );
  });

  it('takes no credit for a pressure that the remaining wall does not hold at yield', () => {
    fc.assert(
      fc.property(pipe, (given) => {
        const held = (2 * given.pipeStress * given.remainingWall) / given.outsideDiameter;
        fc.pre(held * 1.01 < given.pressure);
        const at = (part: number) =>
          thicknessYieldedLive({ ...live(given, 0), livePressure: (part * held) as GaugePressure });
        expect(at(0.99)).toBeGreaterThan(0);
        expect(() => at(1.001)).toThrow(/must be at most what the remaining wall holds at yield/u);
      }),
      seeded,
    );
  });

  it('is never thicker than the plain one, and thins as the live pressure grows', () => {
    fc.assert(
      fc.property(pipe, rising<Length>(0, 0.999), (drawn, [low, high]) => {
        const held = (2 * drawn.pipeStress * drawn.remainingWall) / drawn.outsideDiameter;
        const given = { ...drawn, pressure: Math.min(drawn.pressure, 1.5 * held) as GaugePressure };
        const share = Math.min(1, held / given.pressure);
        const [less, more] = [low, high].map((part) => thicknessYieldedLive(live(given, part * share))) as [
          Length,
          Length,
        ];
        expect(more).toBeLessThanOrEqual(less * (1 + 1e-12));
        expect(less).toBeLessThanOrEqual(thicknessYieldedHoop(given) * (1 + 1e-12));
      }),
      seeded,
    );
  });

  it('keeps its digits where the credit is nearly all of the thickness', () => {
    // b is hundreds of times t here: the sum b + root alone would keep 11 digits of 16. Reference by Newton in the strain equation.
    const given = live(
      {
        pressure: 6e6 as GaugePressure,
        outsideDiameter: 0.1683 as Length,
        pipeStress: 241e6 as Stress,
        remainingWall: 0.002 as Length,
        hoopModulus: 8e9 as Modulus,
        allowableStrain: 0.004 as Strain,
      },
      0.9,
    );
    const A = (6e6 * 0.1683) / 2 - 241e6 * 0.002;
    const B = (0.9 * 6e6 * 0.1683) / 2;
    const S = 207e9 * 0.002;
    let u = A / 8e9 / 0.02;
    for (let i = 0; i < 100; i++) {
      // f(t) = A/(E t) - B/(E t + S) - eps, in y = E t.
      const y = 8e9 * u;
      const f = A / y - B / (y + S) - 0.004;
      const slope = (-A / (y * y) + B / ((y + S) * (y + S))) * 8e9;
      const next = u - f / slope;
      u = next > 0 ? next : u / 2;
    }
    near(thicknessYieldedLive(given), u, 1e-13);
  });
});
