import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';
import { sources, sourceTags } from '../../../src/formula/index.js';
import {
  type Ratio,
  rateConstant,
  ratio,
  specificEnergy,
  type Time,
  temperature,
  temperatureDifference,
  time,
} from '../../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 200 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const r = (value: number): Ratio => value as Ratio;

describe('n-th order', () => {
  it('time and conversion undo each other, at order 1 and beside it', () => {
    fc.assert(
      fc.property(fc.oneof(span(0.3, 3), fc.constant(1), span(1 - 1e-9, 1 + 1e-9)), span(0.01, 0.99), (order, a) => {
        const firstRate = rateConstant.perS(1e-3);
        const cureTime = cure.nthOrderTime({ rateConstant: firstRate, order, conversion: r(a) });
        near(cure.nthOrderConversion({ rateConstant: firstRate, order, time: cureTime }), a, 1e-11);
      }),
      settings,
    );
  });

  it('an order next to 1 takes the time of order 1', () => {
    const input = { rateConstant: rateConstant.perS(1e-3), conversion: r(0.9) };
    near(cure.nthOrderTime({ ...input, order: 1 + 1e-12 }), cure.nthOrderTime({ ...input, order: 1 }), 1e-11);
    near(cure.nthOrderTime({ ...input, order: 1 }), -Math.log(0.1) / 1e-3, 1e-14);
  });

  it('an order below 1 is complete in finite time and stays so', () => {
    const input = { rateConstant: rateConstant.perS(1e-3), order: 0.5 };
    expect(cure.nthOrderConversion({ ...input, time: 2000 as Time })).toBe(1);
    expect(cure.nthOrderConversion({ ...input, time: 1e6 as Time })).toBe(1);
    expect(cure.nthOrderConversion({ ...input, time: 1990 as Time })).toBeLessThan(1);
  });
});

describe('autocatalytic laws', () => {
  it('the integral agrees with the closed form where the orders add up to 2', () => {
    fc.assert(
      fc.property(fc.oneof(span(0.2, 1.6), fc.constant(1)), span(0.001, 0.1), span(0.15, 0.97), (m, a0, a) => {
        const input = { rateConstant: rateConstant.perS(1e-3), m, startConversion: r(a0), conversion: r(a) };
        near(cure.autocatalyticTime({ ...input, n: 2 - m }), cure.autocatalyticTimeClosed(input), 1e-10);
      }),
      settings,
    );
  });

  it('with m = 0 is the n-th order law, from nothing too', () => {
    fc.assert(
      fc.property(span(0.5, 2.5), span(0.1, 0.97), (n, a) => {
        near(
          cure.autocatalyticTime({
            rateConstant: rateConstant.perS(1e-3),
            m: 0,
            n,
            startConversion: r(0),
            conversion: r(a),
          }),
          cure.nthOrderTime({ rateConstant: rateConstant.perS(1e-3), order: n, conversion: r(a) }),
          1e-10,
        );
      }),
      settings,
    );
  });

  it('conversion after the time to a conversion is that conversion', () => {
    fc.assert(
      fc.property(span(0.2, 1.2), span(0.8, 2.5), span(0.15, 0.97), (m, n, a) => {
        const input = { rateConstant: rateConstant.perS(1e-3), m, n, startConversion: r(0.01) };
        const cureTime = cure.autocatalyticTime({ ...input, conversion: r(a) });
        near(cure.autocatalyticConversion({ ...input, time: cureTime }), a, 1e-10);
      }),
      settings,
    );
  });

  it('never starts from nothing', () => {
    const input = { rateConstant: rateConstant.perS(1e-3), m: 0.5, n: 1.5, startConversion: r(0) };
    expect(() => cure.autocatalyticTime({ ...input, conversion: r(0.5) })).toThrow(/never starts by itself/);
    expect(() => cure.autocatalyticConversion({ ...input, time: time.minute(5) })).toThrow(/never starts by itself/);
    expect(() => cure.autocatalyticTimeClosed({ ...input, conversion: r(0.5) })).toThrow(/never starts by itself/);
    expect(() =>
      cure.degreeOfCure({
        parameterSet: 'diffusion-limited epoxy',
        programme: [
          { time: time.minute(0), temperature: temperature.degC(20) },
          { time: time.minute(9), temperature: temperature.degC(20) },
        ],
      }),
    ).toThrow(/never starts by itself/);
  });

  it('diffusion only ever slows the cure', () => {
    fc.assert(
      fc.property(span(20, 50), span(0.3, 1), span(100, 50000), (C, aC, cureTime) => {
        const input = {
          rateConstant: rateConstant.perS(1e-3),
          m: 0.8,
          n: 1.6,
          startConversion: r(0.01),
          time: cureTime as Time,
        };
        const slowed = cure.autocatalyticConversion({
          ...input,
          diffusionConstant: C,
          criticalConversion: r(aC),
        });
        expect(slowed).toBeLessThanOrEqual(cure.autocatalyticConversion(input));
      }),
      settings,
    );
  });
});

describe('Kamal-Sourour', () => {
  it('the integral agrees with the closed form where both orders are 1', () => {
    fc.assert(
      fc.property(span(1e-5, 1e-2), span(1e-4, 1e-2), span(0.05, 0.97), (first, second, a) => {
        const input = { firstRate: rateConstant.perS(first), secondRate: rateConstant.perS(second), conversion: r(a) };
        near(cure.kamalTime({ ...input, m: 1, n: 1, startConversion: r(0) }), cure.kamalTimeClosed(input), 1e-10);
      }),
      settings,
    );
  });

  it('runs fastest at its peak', () => {
    fc.assert(
      fc.property(span(1e-5, 1e-2), span(1e-4, 1e-2), (first, second) => {
        const peak = cure.kamalPeak({ firstRate: rateConstant.perS(first), secondRate: rateConstant.perS(second) });
        const rate = (a: number): number => (first + second * a) * (1 - a);
        for (const a of [0, 0.1, 0.3, 0.5, 0.8]) expect(rate(peak)).toBeGreaterThanOrEqual(rate(a) * (1 - 1e-12));
      }),
      settings,
    );
  });

  it('without any rate there is no time', () => {
    expect(() =>
      cure.kamalTime({
        firstRate: rateConstant.perS(0),
        secondRate: rateConstant.perS(0),
        m: 0,
        n: 1,
        startConversion: r(0),
        conversion: r(0.5),
      }),
    ).toThrow(/stalls/);
  });
});

describe('programmes', () => {
  it('at one temperature a programme gives what the isothermal law gives', () => {
    for (const [minutes, celsius] of [
      [30, 135],
      [100, 135],
      [250, 135],
      [40, 177],
    ] as const) {
      const programme = [
        { time: time.minute(0), temperature: temperature.degC(celsius) },
        { time: time.minute(minutes), temperature: temperature.degC(celsius) },
      ];
      const conversion = cure.degreeOfCure({ parameterSet: 'two-branch epoxy', programme });
      near(cure.twoBranchTime({ temperature: temperature.degC(celsius), conversion }), time.minute(minutes), 1e-6);
    }
  });

  it('a corner on a straight line changes nothing', () => {
    const corner = (minutes: number, celsius: number): cure.ProgrammePoint => ({
      time: time.minute(minutes),
      temperature: temperature.degC(celsius),
    });
    const two = [corner(0, 60), corner(100, 160)];
    const three = [corner(0, 60), corner(30, 90), corner(100, 160)];
    const of = (programme: readonly cure.ProgrammePoint[]): number =>
      cure.degreeOfCure({ parameterSet: 'two-branch epoxy', programme });
    near(of(three), of(two), 1e-7);
  });

  it('the two-branch law stalls in the cold and says so', () => {
    expect(() => cure.twoBranchTime({ temperature: temperature.degC(0), conversion: r(0.5) })).toThrow(/stalls/);
    expect(() =>
      cure.degreeOfCure({
        parameterSet: 'two-branch epoxy',
        programme: [
          { time: time.minute(5), temperature: temperature.degC(20) },
          { time: time.minute(1), temperature: temperature.degC(20) },
        ],
      }),
    ).toThrow(/must not lie before/);
    expect(() => cure.degreeOfCure({ parameterSet: 'two-branch epoxy', programme: [] })).toThrow(
      /at least two corners/,
    );
  });

  it('a rate too large to follow is refused with the cure that was reached', () => {
    const law = { law: 'n-th order', frequencyFactor: 1e300, activationEnergy: 1, n: 1 } as never;
    const corners = [0, 1e12].map((at) => ({ time: at, temperature: 400 })) as never;
    expect(() => cure.degreeOfCureByLaw(law, corners, r(0.25))).toThrow(
      expect.objectContaining({ code: 'no-solution', value: expect.closeTo(0.25, 12) }),
    );
  });

  it('every published set has a known source and a tag no better than it', () => {
    expect(cure.kineticSets.map(({ name }) => name)).toEqual([
      'two-branch epoxy',
      'glass-polyester',
      'two-part polyurethane',
      'diffusion-limited epoxy',
    ]);
    for (const { source, tag } of cure.kineticSets) {
      expect(sourceTags.indexOf(tag)).toBeGreaterThanOrEqual(sourceTags.indexOf(sources[source].reached));
    }
  });
});

describe('glass transition', () => {
  const resin = { uncuredTransition: temperature.degC(-20), fullTransition: temperature.degC(90), lambda: 0.5 };

  it('runs from that of the fresh mix to that of the cured resin and rises with cure', () => {
    expect(cure.diBenedetto({ ...resin, conversion: r(0) })).toBe(resin.uncuredTransition);
    near(cure.diBenedetto({ ...resin, conversion: r(1) }), resin.fullTransition, 1e-15);
    near(cure.logarithmicTransition({ ...resin, conversion: r(1) }), resin.fullTransition, 1e-15);
    fc.assert(
      fc.property(span(0, 1), span(0, 1), (a, b) => {
        const [low, high] = [r(Math.min(a, b)), r(Math.max(a, b))];
        const linear = cure.diBenedetto({ ...resin, conversion: high });
        expect(linear).toBeGreaterThanOrEqual(cure.diBenedetto({ ...resin, conversion: low }));
        expect(cure.logarithmicTransition({ ...resin, conversion: high })).toBeLessThanOrEqual(linear * (1 + 1e-15));
      }),
      settings,
    );
  });

  it('gives the degree of cure back', () => {
    fc.assert(
      fc.property(span(0.1, 1), span(0, 1), (lambda, a) => {
        const transition = cure.diBenedetto({ ...resin, lambda, conversion: r(a) });
        fc.pre(transition <= resin.fullTransition);
        const found = cure.conversionFromTransition({ ...resin, lambda, transition });
        expect(Math.abs(found - a)).toBeLessThan(1e-11);
      }),
      settings,
    );
  });

  it('a target is in reach exactly from the required cure temperature upward', () => {
    fc.assert(
      fc.property(span(0.5, 1), span(1e-6, 30), (a, by) => {
        const input = { ...resin, targetConversion: r(a) };
        const at = (cureTemperature: number) =>
          cure.requiredCureTemperature({ ...input, cureTemperature: temperature.kelvin(cureTemperature) });
        const required = at(300).requiredTemperature;
        expect(at(required + by).needsPostHeat).toBe(false);
        expect(at(required - by).needsPostHeat).toBe(true);
        expect(at(required - by).attainableConversion).toBeLessThan(a);
        near(at(required + by).targetTransition, cure.diBenedetto({ ...resin, conversion: r(a) }), 1e-15);
      }),
      settings,
    );
  });

  it('warmer never lowers what can be reached, and nothing passes full cure', () => {
    fc.assert(
      fc.property(span(250, 420), span(0, 60), (cureTemperature, by) => {
        const at = (value: number) =>
          cure.requiredCureTemperature({
            ...resin,
            targetConversion: r(0.9),
            cureTemperature: temperature.kelvin(value),
          });
        const [cool, warm] = [at(cureTemperature), at(cureTemperature + by)];
        expect(warm.attainableConversion).toBeGreaterThanOrEqual(cool.attainableConversion);
        expect(warm.attainableConversion).toBeLessThanOrEqual(1);
        expect(cool.attainableConversion).toBeGreaterThanOrEqual(0);
        expect(warm.attainableTransition).toBeLessThanOrEqual(resin.fullTransition);
      }),
      settings,
    );
  });

  it('the warning stands where heat is needed', () => {
    const input = { ...resin, targetConversion: r(0.95), cureTemperature: temperature.degC(20) };
    expect(cure.requiredCureTemperatureNeedsPostHeat(input)).toBe(true);
    expect(
      cure.requiredCureTemperatureNeedsPostHeat({
        ...input,
        cureTemperature: temperature.degC(80),
        excess: temperatureDifference.kelvin(15),
      }),
    ).toBe(false);
  });
});

describe('gel point and calorimeter', () => {
  it('two groups on each side make chains, which never gel', () => {
    expect(() => cure.gelConversion({ epoxyFunctionality: 2, hardenerFunctionality: 2 })).toThrow(/never gel/);
    near(cure.gelConversion({ epoxyFunctionality: 2, hardenerFunctionality: 4 }), Math.sqrt(1 / 3), 1e-15);
  });

  it('a sample with no heat left is fully cured, one with all of it not at all', () => {
    const totalHeat = specificEnergy.kJPerKg(400);
    expect(cure.degreeOfCureByDsc({ totalHeat, residualHeat: specificEnergy.kJPerKg(0) })).toBe(1);
    expect(cure.degreeOfCureByDsc({ totalHeat, residualHeat: totalHeat })).toBe(0);
    expect(() => cure.degreeOfCureByDsc({ totalHeat, residualHeat: specificEnergy.kJPerKg(401) })).toThrow(/fresh mix/);
    expect(ratio.inPercent(cure.degreeOfCureByDsc({ totalHeat, residualHeat: specificEnergy.kJPerKg(100) }))).toBe(75);
  });
});
