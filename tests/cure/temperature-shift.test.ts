import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cure from '../../src/cure/index.js';
import { CalculationError, isCalculationError } from '../../src/formula/index.js';
import { arrheniusRate, arrheniusShift, molarGasConstant } from '../../src/mechanics/index.js';
import {
  degC,
  deltaK,
  hour,
  inKJPerMol,
  kelvin,
  kg,
  kJPerMol,
  minute,
  perS,
  ratio,
  readQuantity,
  type Temperature,
} from '../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const sheet = {
  time: hour(24),
  referenceTemperature: degC(23),
  testedFrom: degC(5),
  testedTo: degC(40),
  minimumTemperature: degC(5),
  mechanism: 'two-part reaction',
} as const;

describe('constants', () => {
  it('the molar gas constant is the product of the two constants that define it', () => {
    near(molarGasConstant, 6.02214076e23 * 1.380649e-23, 1e-15);
  });

  it('a kilocalorie per mole is 4.184 kilojoules per mole', () => {
    for (const [kcal, kJ] of [
      ['14 kcal/mol', 58.576],
      ['24.5 kcal/mol', 102.508],
    ] as const) {
      const reading = readQuantity('activation energy', kcal);
      if (!reading.ok) throw new Error(reading.problem);
      near(inKJPerMol(reading.quantity), kJ, 1e-15);
    }
  });
});

describe('shift of a rate by temperature', () => {
  it('the shift factor is the ratio of two rate constants', () => {
    fc.assert(
      fc.property(span(260, 400), span(260, 400), span(30e3, 110e3), (T, reference, E) => {
        const rate = (temperature: number): number =>
          arrheniusRate({
            frequencyFactor: perS(1e9),
            activationEnergy: kJPerMol(E / 1000),
            temperature: kelvin(temperature),
          });
        const factor = arrheniusShift({
          activationEnergy: kJPerMol(E / 1000),
          referenceTemperature: kelvin(reference),
          temperature: kelvin(T),
        });
        near(factor, rate(T) / rate(reference), 1e-12);
      }),
      settings,
    );
  });

  it('a factor beyond what a number holds is refused, not returned as zero or infinity', () => {
    const call = (temperature: Temperature): number =>
      arrheniusShift({ activationEnergy: kJPerMol(1e6), referenceTemperature: degC(20), temperature });
    expect(() => call(kelvin(5))).toThrow(/shift factor/);
    expect(() => call(degC(2000))).toThrow(/shift factor/);
  });

  it('the energy from two times and the time at another temperature undo each other', () => {
    fc.assert(
      fc.property(span(278, 330), span(40e3, 90e3), span(600, 90000), (T, E, time) => {
        fc.pre(Math.abs(T - 296.15) > 0.5);
        const shifted = cure.timeAtTemperature({
          ...sheet,
          time: minute(time / 60),
          activationEnergy: kJPerMol(E / 1000),
          temperature: kelvin(T),
          minimumTemperature: degC(0),
        });
        const energy = cure.activationEnergyFromTimes({
          firstTime: minute(time / 60),
          firstTemperature: degC(23),
          secondTime: shifted,
          secondTemperature: kelvin(T),
        });
        near(energy, E, 1e-9);
      }),
      settings,
    );
  });

  it('the energy that a Q10 implies gives that Q10 back', () => {
    fc.assert(
      fc.property(span(1.05, 5), span(270, 340), span(2, 30), (factor, T, step) => {
        const activationEnergy = cure.activationEnergyFromQ10({
          factor: ratio.fraction(factor),
          temperature: kelvin(T),
          step: deltaK(step),
        });
        near(cure.q10({ activationEnergy, temperature: kelvin(T), step: deltaK(step) }), factor, 1e-12);
      }),
      settings,
    );
  });

  it('halving per ten kelvin is no single activation energy: it rises with temperature', () => {
    const implied = [5, 10, 15, 25].map((low) =>
      inKJPerMol(cure.activationEnergyFromQ10({ factor: ratio.fraction(2), temperature: degC(low) })),
    );
    expect(implied.map((energy) => Number(energy.toFixed(1)))).toEqual([46.2, 47.8, 49.5, 52.9]);
  });

  it('energies from times and from the reciprocal rates are the same', () => {
    fc.assert(
      fc.property(span(100, 1000), span(1.1, 20), (time, factor) => {
        const temperatures = { firstTemperature: degC(10), secondTemperature: degC(35) };
        const byTimes = cure.activationEnergyFromTimes({
          ...temperatures,
          firstTime: minute(time * factor),
          secondTime: minute(time),
        });
        const byRates = cure.activationEnergyFromRates({
          ...temperatures,
          firstRate: perS(1 / (60 * time * factor)),
          secondRate: perS(1 / (60 * time)),
        });
        near(byTimes, byRates, 1e-12);
      }),
      settings,
    );
  });

  it('a hotter sample that took longer has no activation energy', () => {
    const input = {
      firstTime: hour(1),
      firstTemperature: degC(10),
      secondTime: hour(2),
      secondTemperature: degC(20),
    };
    expect(() => cure.activationEnergyFromTimes(input)).toThrow(/hotter of the two must take the shorter time/);
    expect(() => cure.activationEnergyFromTimes({ ...input, secondTemperature: degC(10) })).toThrow(/must differ/);
    expect(() => cure.isoconversionalTime({ ...input, temperature: degC(15) })).toThrow(/hotter of the two/);
    expect(() =>
      cure.activationEnergyFromRates({
        firstRate: perS(2),
        firstTemperature: degC(10),
        secondRate: perS(1),
        secondTemperature: degC(20),
      }),
    ).toThrow(/hotter of the two must be the faster/);
  });

  it('the isoconversional time passes through both measured points', () => {
    fc.assert(
      fc.property(span(1.1, 30), span(280, 300), span(301, 340), (factor, T1, T2) => {
        const input = {
          firstTime: minute(factor * 10),
          firstTemperature: kelvin(T1),
          secondTime: minute(10),
          secondTemperature: kelvin(T2),
        };
        near(cure.isoconversionalTime({ ...input, temperature: kelvin(T1) }).time, minute(factor * 10), 1e-12);
        near(cure.isoconversionalTime({ ...input, temperature: kelvin(T2) }).time, minute(10), 1e-12);
        expect(cure.isoconversionalExtrapolates({ ...input, temperature: kelvin(T2 + 1) })).toBe(true);
        expect(cure.isoconversionalExtrapolates({ ...input, temperature: kelvin((T1 + T2) / 2) })).toBe(false);
      }),
      settings,
    );
  });
});

describe('waits and working times', () => {
  it('hotter never lengthens a cure wait, with the maker’s energy or without', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 30), fc.boolean(), (T, by, known) => {
        const energy = known ? { activationEnergy: kJPerMol(57) } : {};
        const cooler = cure.cureWait({ ...sheet, ...energy, temperature: kelvin(T) });
        const hotter = cure.cureWait({ ...sheet, ...energy, temperature: kelvin(T + by) });
        expect(hotter.wait).toBeLessThanOrEqual(cooler.wait);
        expect(hotter.shortest).toBeLessThanOrEqual(cooler.shortest);
      }),
      settings,
    );
  });

  it('hotter never lengthens a working time or a pot life', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 30), fc.boolean(), (T, by, known) => {
        const energy = known ? { activationEnergy: kJPerMol(57) } : {};
        const at = (temperature: number): number =>
          cure.workingTime({ ...sheet, ...energy, temperature: kelvin(temperature) }).workingTime;
        const inPot = (temperature: number): number =>
          cure.potLife({
            ...sheet,
            ...energy,
            temperature: kelvin(temperature),
            testedMass: kg(0.1),
            batchMass: kg(1),
          }).workingTime;
        expect(at(T + by)).toBeLessThanOrEqual(at(T));
        expect(inPot(T + by)).toBeLessThanOrEqual(inPot(T));
      }),
      settings,
    );
  });

  it('without the maker’s energy the wait is never below, nor the working time above, that of any energy between the bounds', () => {
    fc.assert(
      fc.property(span(278.15, 330), span(40, 60), (T, energy) => {
        const input = { ...sheet, temperature: kelvin(T) };
        const activationEnergy = kJPerMol(energy);
        const slack = 1 + 1e-12;
        const known = cure.cureWait({ ...input, activationEnergy });
        expect(known.wait).toBe(known.shortest);
        expect(known.governingEnergy).toBe(activationEnergy);
        expect(cure.cureWait(input).wait * slack).toBeGreaterThanOrEqual(known.wait);
        expect(cure.workingTime(input).workingTime).toBeLessThanOrEqual(
          cure.workingTime({ ...input, activationEnergy }).workingTime * slack,
        );
      }),
      settings,
    );
  });

  it('colder than the reference the high energy governs a wait and the low one a working time; hotter the other way round', () => {
    const cold = { ...sheet, temperature: degC(10) };
    const hot = { ...sheet, temperature: degC(35) };
    expect(inKJPerMol(cure.cureWait(cold).governingEnergy)).toBe(60);
    expect(inKJPerMol(cure.cureWait(hot).governingEnergy)).toBe(40);
    expect(inKJPerMol(cure.workingTime(cold).governingEnergy)).toBe(40);
    expect(inKJPerMol(cure.workingTime(hot).governingEnergy)).toBe(60);
  });

  it('a moisture-cured system is never shifted', () => {
    const moist = { ...sheet, temperature: degC(15), activationEnergy: kJPerMol(50), mechanism: 'moisture' } as const;
    const steps = [{ duration: hour(24), temperature: degC(15) }];
    const swing = { meanTemperature: degC(20), swing: deltaK(8), sinceColdest: hour(3) };
    const calls: (() => unknown)[] = [
      () => cure.timeAtTemperature(moist),
      () => cure.cureWait(moist),
      () => cure.workingTime(moist),
      () => cure.potLife({ ...moist, testedMass: kg(0.1), batchMass: kg(0.1) }),
      () => cure.overcoatWindow({ ...moist, opens: hour(2), closes: hour(24) }),
      () => cure.remainingTime({ ...moist, requiredTime: hour(24), creditedTime: hour(2) }),
      () => cure.equivalentTime({ ...moist, steps }),
      () =>
        cure.equivalentTimeRamp({
          ...moist,
          startTemperature: degC(10),
          endTemperature: degC(20),
          duration: hour(1),
        }),
      () => cure.equivalentTimeSwing({ ...moist, ...swing, duration: hour(48) }),
      () => cure.cureWaitOverHistory({ ...moist, steps, requiredTime: hour(24) }),
      () => cure.cureWaitOverSwing({ ...moist, ...swing, requiredTime: hour(24) }),
    ];
    for (const call of calls) {
      try {
        call();
        expect.fail('nothing was refused');
      } catch (error) {
        if (!isCalculationError(error)) throw error;
        expect([error.code, error.parameter]).toEqual(['outside-validity', 'mechanism']);
      }
    }
  });

  it('below the minimum cure temperature there is no wait, only a refusal that says what would help', () => {
    const call = (): unknown => cure.cureWait({ ...sheet, temperature: degC(4) });
    expect(call).toThrow(CalculationError);
    expect(call).toThrow(/minimum cure temperature.*heat the pipe/);
    expect(() => cure.timeAtTemperature({ ...sheet, temperature: degC(4), activationEnergy: kJPerMol(50) })).toThrow(
      /minimum cure temperature/,
    );
    expect(cure.cureWait({ ...sheet, temperature: degC(5) }).wait).toBeGreaterThan(hour(24));
  });

  it('a warning stands wherever the temperature leaves the tested span', () => {
    for (const [celsius, leaves] of [
      [4.9, true],
      [5, false],
      [23, false],
      [40, false],
      [40.1, true],
    ] as const) {
      const input = { ...sheet, temperature: degC(celsius) };
      expect(cure.waitLeavesTestedSpan(input)).toBe(leaves);
      expect(cure.workingTimeLeavesTestedSpan(input)).toBe(leaves);
      expect(cure.timeLeavesTestedSpan({ ...input, activationEnergy: kJPerMol(50) })).toBe(leaves);
    }
    const { testedFrom: _from, testedTo: _to, ...bare } = sheet;
    expect(cure.waitLeavesTestedSpan({ ...bare, temperature: degC(22) })).toBe(true);
    expect(cure.waitLeavesTestedSpan({ ...bare, temperature: degC(23) })).toBe(false);
  });

  it('a tested span that leaves out its own reference is refused', () => {
    expect(() => cure.cureWait({ ...sheet, temperature: degC(20), testedFrom: degC(25) })).toThrow(/testedFrom/);
    expect(() => cure.cureWait({ ...sheet, temperature: degC(20), testedTo: degC(20) })).toThrow(/highest tested/);
  });

  it('bounds out of order are refused', () => {
    const input = { ...sheet, temperature: degC(20) };
    expect(() => cure.cureWait({ ...input, lowEnergy: kJPerMol(70) })).toThrow(/lowEnergy/);
    expect(() => cure.workingTime({ ...input, highEnergy: kJPerMol(45) })).toThrow(/typical/);
  });

  it('a batch heavier than the one tested is warned of', () => {
    const input = { ...sheet, temperature: degC(20), testedMass: kg(0.1) };
    expect(cure.batchHeavierThanTested({ ...input, batchMass: kg(0.5) })).toBe(true);
    expect(cure.batchHeavierThanTested({ ...input, batchMass: kg(0.1) })).toBe(false);
  });

  it('what is credited and what remains add up to what is required', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 1), (T, share) => {
        const input = {
          ...sheet,
          requiredTime: hour(24),
          activationEnergy: kJPerMol(55),
          temperature: kelvin(T),
        };
        const whole = cure.remainingTime({ ...input, creditedTime: hour(0) });
        near(whole, cure.timeAtTemperature({ ...input, time: hour(24) }), 1e-15);
        const rest = cure.remainingTime({ ...input, creditedTime: hour(24 * share) });
        expect(Math.abs(rest - whole * (1 - share))).toBeLessThanOrEqual(1e-12 * whole);
        expect(cure.remainingTime({ ...input, creditedTime: hour(30) })).toBe(0);
      }),
      settings,
    );
  });
});
