import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cure from '../../src/cure/index.js';
import type { RateConstant, Ratio, Temperature, Time } from '../../src/quantity/index.js';
import * as oracle from './kinetics-oracles.js';

const settings = { seed: 20261125, numRuns: 40 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const k = (value: number): RateConstant => value as RateConstant;
const r = (value: number): Ratio => value as Ratio;

describe('cure kinetics by another route', () => {
  it('cure/autocatalytic-time: marching the rate for that time arrives at the conversion', () => {
    fc.assert(
      fc.property(span(0.3, 1), span(0.8, 2.5), span(0.01, 0.1), span(0.15, 0.95), (m, n, start, end) => {
        const time = cure.autocatalyticTime({
          rateConstant: k(1e-3),
          m,
          n,
          startConversion: r(start),
          conversion: r(end),
        });
        const found = oracle.conversionByMarching((a) => 1e-3 * a ** m * (1 - a) ** n, start, time, 4000);
        expect(Math.abs(found - end)).toBeLessThan(1e-8);
      }),
      settings,
    );
  });

  it('cure/autocatalytic-conversion: marching the rate, slowed by diffusion or not, arrives at the conversion', () => {
    fc.assert(
      fc.property(
        span(0.3, 1),
        span(0.8, 2.5),
        span(0.01, 0.1),
        span(100, 8000),
        span(0.4, 0.95),
        (m, n, a0, t, aC) => {
          const input = { rateConstant: k(1e-3), m, n, startConversion: r(a0), time: t as Time };
          const bare = oracle.conversionByMarching((a) => 1e-3 * a ** m * Math.max(0, 1 - a) ** n, a0, t, 4000);
          expect(Math.abs(cure.autocatalyticConversion(input) - bare)).toBeLessThan(1e-7);
          const slowed = oracle.conversionByMarching(
            (a) => (1e-3 * a ** m * Math.max(0, 1 - a) ** n) / (1 + Math.exp(40 * (a - aC))),
            a0,
            t,
            4000,
          );
          const found = cure.autocatalyticConversion({ ...input, diffusionConstant: 40, criticalConversion: r(aC) });
          expect(Math.abs(found - slowed)).toBeLessThan(1e-7);
        },
      ),
      settings,
    );
  });

  it('cure/kamal-time: marching the rate for that time arrives at the conversion', () => {
    fc.assert(
      fc.property(span(1e-5, 1e-3), span(1, 1.5), span(0.8, 2), span(0.1, 0.95), (first, m, n, end) => {
        const time = cure.kamalTime({
          firstRate: k(first),
          secondRate: k(2e-3),
          m,
          n,
          startConversion: r(0),
          conversion: r(end),
        });
        const found = oracle.conversionByMarching((a) => (first + 2e-3 * a ** m) * (1 - a) ** n, 0, time, 8000);
        expect(Math.abs(found - end)).toBeLessThan(1e-7);
      }),
      settings,
    );
  });

  it('cure/two-branch-time: the first branch agrees with its partial fractions, the second with its closed form', () => {
    fc.assert(
      fc.property(span(355, 460), span(0.05, 0.98), (T, a) => {
        const k1 = oracle.rateConstant(2.101e9 / 60, 80700, T);
        const k2 = oracle.rateConstant(-2.014e9 / 60, 77800, T);
        const k3 = oracle.rateConstant(1.96e5 / 60, 56600, T);
        const wanted =
          oracle.firstBranchTime(k1, k2, 0.47, Math.min(a, 0.3)) + (a > 0.3 ? -Math.log((1 - a) / 0.7) / k3 : 0);
        const found = cure.twoBranchTime({ temperature: T as Temperature, conversion: r(a) });
        expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-9 * wanted);
      }),
      { ...settings, numRuns: 200 },
    );
  });

  it('cure/degree-of-cure: fixed small steps along the programme arrive at the same conversion', () => {
    const corners = [
      [0, 298.15],
      [3600, 390],
      [9000, 390],
      [12000, 440],
    ] as const;
    const programme = corners.map(([time, temperature]) => ({
      time: time as Time,
      temperature: temperature as Temperature,
    }));
    const temperatureAt = (clock: number): number => {
      for (let i = 1; i < corners.length; i++) {
        const [[t0, T0], [t1, T1]] = [corners[i - 1] ?? [0, 0], corners[i] ?? [0, 0]];
        if (clock <= t1) return T0 + ((T1 - T0) * (clock - t0)) / (t1 - t0);
      }
      return 440;
    };
    const K = oracle.rateConstant;
    const twoBranch = (a: number, clock: number, beyond: boolean): number => {
      const T = temperatureAt(clock);
      if (beyond) return K(1.96e5 / 60, 56600, T) * (1 - a);
      return (K(2.101e9 / 60, 80700, T) + K(-2.014e9 / 60, 77800, T) * a) * (1 - a) * (0.47 - a);
    };
    const marched = oracle.conversionByMarching(twoBranch, 0, 12000, 120000, 0.3);
    expect(Math.abs(cure.degreeOfCure({ parameterSet: 'two-branch epoxy', programme }) - marched)).toBeLessThan(1e-5);

    const slowed = (a: number, clock: number): number => {
      const T = temperatureAt(clock);
      const bare = K(152800, 66500, T) * a ** 0.8129 * (1 - a) ** 2.736;
      return bare / (1 + Math.exp(43.09 * (a - (-1.684 + 0.005475 * T))));
    };
    const start = r(0.01);
    expect(
      Math.abs(
        cure.degreeOfCure({ parameterSet: 'diffusion-limited epoxy', programme, startConversion: start }) -
          oracle.conversionByMarching(slowed, 0.01, 12000, 60000),
      ),
    ).toBeLessThan(1e-7);

    const polyester = (a: number, clock: number): number =>
      K(3.7e22 / 60, 167400, temperatureAt(clock)) * a ** 0.524 * Math.max(0, 1 - a) ** 1.476;
    const short = programme.slice(0, 2);
    expect(
      Math.abs(
        cure.degreeOfCure({ parameterSet: 'glass-polyester', programme: short, startConversion: start }) -
          oracle.conversionByMarching(polyester, 0.01, 3600, 200000),
      ),
    ).toBeLessThan(1e-6);

    const cool = [
      { time: 0 as Time, temperature: 273 as Temperature },
      { time: 300 as Time, temperature: 290 as Temperature },
    ];
    const polyurethane = (a: number, clock: number): number =>
      K(234400, 43590, 273 + (17 * clock) / 300) * Math.max(0, 1 - a) ** 0.87;
    expect(
      Math.abs(
        cure.degreeOfCure({ parameterSet: 'two-part polyurethane', programme: cool }) -
          oracle.conversionByMarching(polyurethane, 0, 300, 20000),
      ),
    ).toBeLessThan(1e-8);
  });
});
