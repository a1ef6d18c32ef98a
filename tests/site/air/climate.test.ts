import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sources, sourceTags } from '../../../src/formula/index.js';
import {
  absolute,
  area,
  conductivity,
  type Ratio,
  ratio,
  type Temperature,
  temperature,
  temperatureDifference,
  volume,
} from '../../../src/quantity/index.js';
import * as site from '../../../src/site/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const r = (value: number): Ratio => value as Ratio;
const sets = ['sonntag', 'alduchov-eskridge', 'bolton', 'tetens'] as const;

describe('dew point', () => {
  it('is never above the air and equals it at saturation, by every set', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sets), span(10, 35), span(0.5, 1), (set, t, humidity) => {
        const airTemperature = temperature.degC(t);
        expect(site.dewPoint({ temperature: airTemperature, humidity: r(humidity), set })).toBeLessThanOrEqual(
          airTemperature,
        );
        near(site.dewPoint({ temperature: airTemperature, humidity: r(1), set }), airTemperature, 1e-14);
      }),
      settings,
    );
  });

  it('rises with humidity and with air temperature', () => {
    fc.assert(
      fc.property(span(-10, 40), span(0.1, 1), span(0, 10), span(0, 1), (t, humidity, dT, share) => {
        const here = site.dewPoint({ temperature: temperature.degC(t), humidity: r(humidity) });
        const warmer = site.dewPoint({ temperature: temperature.degC(t + dT), humidity: r(humidity) });
        const damper = site.dewPoint({
          temperature: temperature.degC(t),
          humidity: r(humidity + (1 - humidity) * share),
        });
        expect(warmer).toBeGreaterThanOrEqual(here);
        expect(damper).toBeGreaterThanOrEqual(here);
      }),
      settings,
    );
  });

  it('and relative humidity undo each other, by every set', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sets), span(15, 35), span(0.45, 1), (set, t, humidity) => {
        const airTemperature = temperature.degC(t);
        const dewPoint = site.dewPoint({ temperature: airTemperature, humidity: r(humidity), set });
        fc.pre(dewPoint <= airTemperature);
        near(site.relativeHumidity({ temperature: airTemperature, dewPoint, set }), humidity, 1e-12);
        const vapourPressure = (humidity * site.saturationPressure({ temperature: airTemperature, set })) as ReturnType<
          typeof absolute.Pa
        >;
        near(site.dewPointFromVapourPressure({ vapourPressure, set }), dewPoint, 1e-13);
      }),
      settings,
    );
  });

  it('differs between the sets by a few hundredths of a kelvin', () => {
    fc.assert(
      fc.property(span(10, 35), span(0.6, 1), (t, humidity) => {
        const points = sets.map((set) =>
          site.dewPoint({ temperature: temperature.degC(t), humidity: r(humidity), set }),
        );
        expect(Math.max(...points) - Math.min(...points)).toBeLessThan(0.05);
      }),
      settings,
    );
  });

  it('relative humidity rises with the dew point and falls with the air temperature', () => {
    fc.assert(
      fc.property(span(0, 20), span(0, 5), span(0, 10), (dew, dDew, gap) => {
        const of = (air: number, point: number): number =>
          site.relativeHumidity({ temperature: temperature.degC(air), dewPoint: temperature.degC(point) });
        const air = dew + dDew + gap;
        expect(of(air, dew + dDew)).toBeGreaterThanOrEqual(of(air, dew));
        expect(of(air + 2, dew)).toBeLessThanOrEqual(of(air, dew));
      }),
      settings,
    );
    expect(() => site.relativeHumidity({ temperature: temperature.degC(10), dewPoint: temperature.degC(11) })).toThrow(
      /at most the air/,
    );
  });

  it('below freezing is stated as frost, which forms earlier than dew', () => {
    fc.assert(
      fc.property(span(-20, 10), span(0.1, 0.9), (t, humidity) => {
        const air = { temperature: temperature.degC(t), humidity: r(humidity) };
        const dew = site.dewPoint(air);
        const { point, isFrost } = site.condensationPoint(air);
        expect(isFrost).toBe(dew < 273.15);
        expect(site.dewPointBelowFreezing(air)).toBe(isFrost);
        expect(site.condensationPointIsFrost(air)).toBe(isFrost);
        if (isFrost) {
          expect(point).toBe(site.frostPoint(air));
          expect(point).toBeGreaterThanOrEqual(dew);
          expect(point).toBeLessThan(273.16);
        } else expect(point).toBe(dew);
      }),
      settings,
    );
    expect(() => site.frostPoint({ temperature: temperature.degC(20), humidity: r(0.8) })).toThrow(/ice/);
  });

  it('the frost point gives the vapour pressure of the air over ice', () => {
    fc.assert(
      fc.property(span(-20, 9), span(0.1, 0.5), (t, humidity) => {
        const point = site.frostPoint({ temperature: temperature.degC(t), humidity: r(humidity) });
        near(
          site.saturationPressureOverIce({ temperature: point }),
          humidity * site.saturationPressure({ temperature: temperature.degC(t) }),
          1e-12,
        );
      }),
      settings,
    );
  });

  it('outside the span of the coefficients is refused', () => {
    expect(() => site.dewPoint({ temperature: temperature.degC(40), humidity: r(0.5), set: 'bolton' })).toThrow(
      /-30 to 35 degC/,
    );
    expect(() => site.dewPoint({ temperature: temperature.degC(2), humidity: r(0.3), set: 'tetens' })).toThrow(
      /0 to 60 degC/,
    );
    expect(() => site.dewPoint({ temperature: temperature.degC(61), humidity: r(0.3) })).toThrow(/-45 to 60 degC/);
    expect(() => site.dewPoint({ temperature: temperature.degC(20), humidity: r(0) })).toThrow(/humidity/);
    expect(() => site.dewPoint({ temperature: temperature.degC(20), humidity: r(1.01) })).toThrow(/humidity/);
    expect(() => site.dewPoint({ temperature: temperature.kelvin(-3), humidity: r(0.5) })).toThrow(/temperature/);
  });

  it('every set names a known source, with a tag no better than it', () => {
    for (const { source, tag } of site.magnusSets) {
      expect(sourceTags.indexOf(tag)).toBeGreaterThanOrEqual(sourceTags.indexOf(sources[source].reached));
    }
    for (const { source, tag } of [...site.surfaceGrades, ...site.comparatorSegments]) {
      expect(sourceTags.indexOf(tag)).toBeGreaterThanOrEqual(sourceTags.indexOf(sources[source].reached));
    }
    for (const { source, tag, value } of site.climateLimits) {
      expect(value).toMatch(/\d/);
      if (source === undefined) expect(['practice', 'chosen']).toContain(tag);
      else expect(sourceTags.indexOf(tag)).toBeGreaterThanOrEqual(sourceTags.indexOf(sources[source].reached));
    }
  });
});

describe('the band of the instruments', () => {
  it('holds the dew point as read and widens with either error', () => {
    fc.assert(
      fc.property(span(8, 32), span(0.35, 1), span(0, 1), span(0, 0.05), (t, humidity, dT, dRH) => {
        const input = { temperature: temperature.degC(t), humidity: r(humidity) };
        const band = site.dewPointBand({
          ...input,
          temperatureError: temperatureDifference.kelvin(dT),
          humidityError: r(dRH),
        });
        expect(band.nominal).toBe(site.dewPoint(input));
        expect(band.highest).toBeGreaterThanOrEqual(band.nominal);
        expect(band.lowest).toBeLessThanOrEqual(band.nominal);
        const wider = site.dewPointBand({
          ...input,
          temperatureError: temperatureDifference.kelvin(dT + 0.2),
          humidityError: r(dRH + 0.02),
        });
        expect(wider.highest).toBeGreaterThanOrEqual(band.highest);
        expect(wider.lowest).toBeLessThan(band.lowest);
      }),
      settings,
    );
  });

  it('at 20 degC and 80 per cent is about 1.1 K either way with both errors to one side', () => {
    const band = site.dewPointBand({ temperature: temperature.degC(20), humidity: ratio.percent(80) });
    expect(band.highest - band.nominal).toBeGreaterThan(1.0);
    expect(band.highest - band.nominal).toBeLessThan(1.2);
  });

  it('air drier than the hygrometer can tell is refused', () => {
    expect(() => site.dewPointBand({ temperature: temperature.degC(20), humidity: ratio.percent(3) })).toThrow(
      /tells nothing/,
    );
  });
});

describe('steel above the dew point', () => {
  it('steel that shows the reading needed is enough, a hair less is not', () => {
    fc.assert(
      fc.property(span(0, 40), span(0.2, 1), span(0, 6), (t, humidity, required) => {
        const input = {
          airTemperature: temperature.degC(t),
          humidity: r(humidity),
          requiredMargin: temperatureDifference.kelvin(required),
        };
        const { steelNeeded } = site.steelMargin({ ...input, steelTemperature: temperature.degC(t) });
        const at = (steel: number) => site.steelMargin({ ...input, steelTemperature: temperature.kelvin(steel) });
        expect(at(steelNeeded + 1e-9).isEnough).toBe(true);
        expect(at(steelNeeded - 1e-9).isEnough).toBe(false);
        expect(site.steelMarginTooSmall({ ...input, steelTemperature: temperature.kelvin(steelNeeded - 1e-9) })).toBe(
          true,
        );
      }),
      settings,
    );
  });

  it('the worst edge is never better than the reading', () => {
    fc.assert(
      fc.property(span(-5, 40), span(-5, 40), span(0.2, 1), (steel, t, humidity) => {
        const { worstMargin, nominalMargin } = site.steelMargin({
          steelTemperature: temperature.degC(steel),
          airTemperature: temperature.degC(t),
          humidity: r(humidity),
        });
        expect(worstMargin).toBeLessThan(nominalMargin);
      }),
      settings,
    );
  });

  it('steel at the dew point is at 100 per cent, and wet', () => {
    const dewPoint = temperature.degC(12);
    near(site.humidityAtSteel({ steelTemperature: temperature.degC(12), dewPoint }), 1, 1e-15);
    expect(site.humidityAtSteelWet({ steelTemperature: temperature.degC(12), dewPoint })).toBe(true);
    expect(site.humidityAtSteelWet({ steelTemperature: temperature.degC(12.1), dewPoint })).toBe(false);
    expect(site.humidityAtSteel({ steelTemperature: temperature.degC(10), dewPoint })).toBeGreaterThan(1);
  });
});

describe('wet bulb, vapour content and salts', () => {
  it('equal bulbs mean saturated air, by both forms', () => {
    const bulbs = { dryBulb: temperature.degC(18), wetBulb: temperature.degC(18) };
    const pressure = absolute.hPa(1013);
    near(
      site.vapourPressureFromWetBulb({ ...bulbs, pressure }),
      site.saturationPressure({ temperature: temperature.degC(18) }),
      1e-15,
    );
    near(site.moistAirFromWetBulb({ ...bulbs, pressure }).relativeHumidity, 1, 1e-12);
  });

  it('the two wet-bulb forms agree within 1 per cent of humidity', () => {
    fc.assert(
      fc.property(span(5, 40), span(0, 8), (t, depression) => {
        fc.pre(t - depression > 2);
        const bulbs = { dryBulb: temperature.degC(t), wetBulb: temperature.degC(t - depression) };
        const pressure = absolute.hPa(1013.25);
        const byWmo =
          site.vapourPressureFromWetBulb({ ...bulbs, pressure }) /
          site.saturationPressure({ temperature: temperature.degC(t) });
        expect(Math.abs(byWmo - site.moistAirFromWetBulb({ ...bulbs, pressure }).relativeHumidity)).toBeLessThan(0.01);
      }),
      settings,
    );
  });

  it('ice on the bulb, swapped bulbs and impossible air are refused', () => {
    const pressure = absolute.hPa(1013);
    const of = (dry: number, wet: number) => ({
      dryBulb: temperature.degC(dry),
      wetBulb: temperature.degC(wet),
      pressure,
    });
    expect(() => site.vapourPressureFromWetBulb(of(4, -1))).toThrow(/water on the bulb, not ice/);
    expect(() => site.vapourPressureFromWetBulb(of(10, 11))).toThrow(/dry bulb/);
    expect(() => site.vapourPressureFromWetBulb(of(40, 5))).toThrow(/no air is this dry/);
    expect(() => site.moistAirFromWetBulb(of(4, -1))).toThrow(/not ice/);
    expect(() => site.moistAirFromWetBulb(of(40, 5))).toThrow(/no air is this dry/);
  });

  it('vapour content is the share of saturation that humidity says', () => {
    fc.assert(
      fc.property(span(0, 35), span(0, 1), (t, humidity) => {
        const airTemperature = temperature.degC(t);
        near(
          site.absoluteHumidity({ temperature: airTemperature, humidity: r(humidity) }),
          humidity * site.absoluteHumidity({ temperature: airTemperature, humidity: r(1) }),
          1e-14,
        );
      }),
      settings,
    );
  });

  it('twice the area holds half the salts', () => {
    const input = { waterVolume: volume.mL(15), conductivityRise: conductivity.uSPerCm(4) };
    near(
      site.solubleSalts({ ...input, area: area.mm2(1250) }),
      2 * site.solubleSalts({ ...input, area: area.mm2(2500) }),
      1e-14,
    );
    expect(() => site.solubleSalts({ ...input, area: area.m2(0) })).toThrow(/area/);
  });

  it('the ASHRAE form joins at the triple point within a part in ten thousand', () => {
    const at = (airTemperature: Temperature): number => site.saturationPressureAshrae({ temperature: airTemperature });
    near(at(temperature.kelvin(273.16)), at(temperature.kelvin(273.1600001)), 1e-4);
    expect(() => at(temperature.degC(201))).toThrow(/span of the equation/);
    expect(temperature.inDegC(temperature.degC(20))).toBeCloseTo(20, 12);
  });
});
