import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstCoolHour, warmestForWorkingTime } from '../../src/cure/index.js';
import { isCalculationError } from '../../src/formula/index.js';
import type { ActivationEnergy, Temperature, Time } from '../../src/quantity/index.js';
import { shift } from './cure-oracles.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const refusalOf = (call: () => unknown): string | undefined => {
  try {
    call();
    return undefined;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return error.code;
  }
};

/** The warmest between two temperatures at which the shortest time of the energies still reaches what is needed. */
function warmestByHalving(
  energies: readonly number[],
  given: { reference: number; time: number; needed: number; coldest: number; hottest: number },
): number | undefined {
  const reaches = (at: number): boolean =>
    energies.every((energy) => given.time / shift(energy, given.reference, at) >= given.needed);
  if (!reaches(given.coldest)) return undefined;
  let [cool, hot] = [given.coldest, given.hottest];
  if (reaches(hot)) return hot;
  for (let halving = 0; halving < 100; halving++) {
    const middle = (cool + hot) / 2;
    if (reaches(middle)) cool = middle;
    else hot = middle;
  }
  return cool;
}

describe("the warmest 'cure/warmest-for-working-time'", () => {
  const cures = fc.record({
    time: span(300, 7200),
    needed: span(300, 7200),
    reference: span(288, 308),
    coldest: span(273, 288),
    hottest: span(308, 333),
    energy: fc.option(span(35e3, 90e3), { nil: undefined }),
  });

  it('is where halving of the temperature comes to rest, or is refused where even the coldest is too warm', () => {
    let refused = 0;
    fc.assert(
      fc.property(cures, ({ time, needed, reference, coldest, hottest, energy }) => {
        const hand = warmestByHalving(energy === undefined ? [40e3, 50e3, 60e3] : [energy], {
          reference,
          time,
          needed,
          coldest,
          hottest,
        });
        const call = () =>
          warmestForWorkingTime({
            time: time as Time,
            neededTime: needed as Time,
            mechanism: 'two-part reaction',
            referenceTemperature: reference as Temperature,
            minimumTemperature: coldest as Temperature,
            testedFrom: coldest as Temperature,
            testedTo: hottest as Temperature,
            activationEnergy: energy as ActivationEnergy | undefined,
          });
        if (hand === undefined) {
          refused += 1;
          expect(refusalOf(call)).toBe('no-solution');
          return;
        }
        expect(Math.abs(call().temperature - hand)).toBeLessThan(1e-9);
        expect(call().limitedBy).toBe(hand === hottest ? 'tested span' : 'working time');
      }),
      settings,
    );
    expect(refused).toBeGreaterThan(10);
  });

  it('is the minimum alone where that lies above the tested span', () => {
    const given = {
      time: 3600 as Time,
      mechanism: 'two-part reaction' as const,
      referenceTemperature: 293.15 as Temperature,
      testedFrom: 288.15 as Temperature,
      testedTo: 298.15 as Temperature,
      minimumTemperature: 303.15 as Temperature,
    };
    expect(warmestForWorkingTime({ ...given, neededTime: 600 as Time }).temperature).toBe(303.15);
    expect(refusalOf(() => warmestForWorkingTime({ ...given, neededTime: 3600 as Time }))).toBe('no-solution');
  });
});

describe("the hour 'cure/first-cool-hour'", () => {
  const forecasts = fc.array(
    fc.record({ hours: fc.integer({ min: 1, max: 6 }), pipe: span(278, 320), air: span(278, 320) }),
    {
      minLength: 1,
      maxLength: 8,
    },
  );

  it('is the first that is cool when the forecast is asked hour by hour, or none', () => {
    fc.assert(
      fc.property(forecasts, span(280, 320), (forecast, limit) => {
        const hourly = forecast.flatMap(({ hours, pipe, air }) =>
          Array.from({ length: hours }, () => pipe <= limit && air <= limit),
        );
        const first = hourly.indexOf(true);
        const call = () =>
          firstCoolHour({
            forecast: forecast.map(({ hours, pipe, air }) => ({
              duration: (hours * 3600) as Time,
              pipeTemperature: pipe as Temperature,
              airTemperature: air as Temperature,
            })),
            limit: limit as Temperature,
          });
        if (first < 0) expect(refusalOf(call)).toBe('no-solution');
        else expect(call()).toBe(first * 3600);
      }),
      settings,
    );
  });

  it('is refused where nothing is forecast', () => {
    expect(refusalOf(() => firstCoolHour({ forecast: [], limit: 300 as Temperature }))).toBe('no-solution');
  });
});
