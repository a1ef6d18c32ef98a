import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrate, normalBelow, normalDensity, normalQuantile } from '../../src/numeric/index.js';

describe('the normal distribution', () => {
  it.each([
    // Abramowitz and Stegun, Table 26.1: P(x) to 15 decimals.
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [1.5, 0.933192798731142],
    [2, 0.977249868051821],
  ])('lies below %d as the table of Abramowitz and Stegun says', (x, printed) => {
    expect(normalBelow(x)).toBeCloseTo(printed, 14);
    expect(normalBelow(-x)).toBeCloseTo(1 - printed, 14);
  });

  it.each([
    // Wichura (1988), AS 241: the values that a right copy gives, to as many digits as float64 holds.
    [0.25, -0.6744897501960817],
    [0.001, -3.090232306167814],
    [1e-20, -9.26234008979841],
  ])('has the quantile of %d that AS 241 prints', (p, printed) => {
    expect(Math.abs(normalQuantile(p) / printed - 1)).toBeLessThan(2e-15);
  });

  it('is the integral of its density', () => {
    for (const x of [0.3, 1.1, 1.9, 2.1, 3.7]) {
      const sum = integrate(normalDensity, -x, x, 1e-14);
      expect(normalBelow(x) - normalBelow(-x)).toBeCloseTo(sum, 12);
    }
  });

  it('gives back what its quantile took, also far out', () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: -0.001, noNaN: true }), (exponent) => {
        const p = 10 ** (exponent / 10);
        expect(Math.abs(normalBelow(normalQuantile(p)) / p - 1)).toBeLessThan(1e-12);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('has no quantile of what is no probability', () => {
    for (const p of [0, 1, -0.1, 1.1, Number.NaN]) expect(normalQuantile(p)).toBeNaN();
    expect(normalBelow(Number.NaN)).toBeNaN();
  });
});
