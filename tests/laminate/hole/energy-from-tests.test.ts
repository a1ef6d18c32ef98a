import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { energyFromTests } from '../../../src/laminate/index.js';

const laminate = { hoopModulus: 2e10, axialModulus: 1e10, poissonRatio: 0.2, shearModulus: 3e9 };
const tests = (holes: readonly number[], pressure: (index: number) => number) =>
  holes.map((mm, index) => ({ holeDiameter: mm / 1000, laminateThickness: 0.008, pressure: pressure(index) }));
const of = (given: object) => {
  try {
    energyFromTests({ ...laminate, ...given } as never);
    return undefined;
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
};

describe('the energy of a bond from tests', () => {
  it('counts the sizes of hole in whatever order they were tested', () => {
    const holes = [30, 10, 20, 10, 30, 20, 10, 20, 30];
    const known = energyFromTests({ ...laminate, tests: tests(holes, () => 4e6), confidence: 0.5 } as never);
    expect(known.mean).toBeGreaterThan(0);
    expect(of({ tests: tests([30, 10, 10, 10, 30, 29, 10, 11, 30], () => 4e6) })).toMatchObject({
      parameter: 'sizes of hole in tests',
      value: 2,
      limit: 3,
    });
  });

  it('takes no confidence of one', () => {
    const given = { tests: tests([10, 20, 30, 10, 20, 30, 10, 20, 30], () => 4e6), confidence: 1 };
    expect(of(given)).toMatchObject({ parameter: 'confidence', constraint: 'must be above 0 and below 1' });
  });

  it('leaves nothing where the tests scatter by more than the limit that it names', () => {
    // Of holes alike the fit is the mean, and the scatter grows with the distance of the pressures from it.
    const scattered = (share: number) => ({
      leastSizes: 1,
      confidence: 0.999,
      tests: tests(new Array(10).fill(20), (index) => 4e6 * (1 + (index % 2 === 0 ? share : -share))),
    });
    const refusal = of(scattered(0.9));
    const { value, limit = Number.NaN } = refusal ?? { value: Number.NaN };
    expect(refusal?.code).toBe('no-solution');
    const just = (0.9 * limit) / (value as number);
    expect(of(scattered(just * 1.001))?.code).toBe('no-solution');
    expect(of(scattered(just * 0.999))).toBeUndefined();
  });
});
