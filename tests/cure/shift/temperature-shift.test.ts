import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as cure from '../../../src/cure/index.js';
import { CalculationError, isCalculationError } from '../../../src/formula/index.js';
import { arrheniusRate, arrheniusShift, molarGasConstant } from '../../../src/mechanics/index.js';
import {
  activationEnergy,
  mass,
  rateConstant,
  ratio,
  readQuantity,
  type Temperature,
  temperature,
  temperatureDifference,
  time,
} from '../../../src/quantity/index.js';

const settings = { seed: 20261125, numRuns: 300 };
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const near = (found: number, wanted: number, relative = 1e-9): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
};
const sheet = {
  time: time.hour(24),
  referenceTemperature: temperature.degC(23),
  testedFrom: temperature.degC(5),
  testedTo: temperature.degC(40),
  minimumTemperature: temperature.degC(5),
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
      near(activationEnergy.inKJPerMol(reading.quantity), kJ, 1e-15);
    }
  });
});

describe('shift of a rate by temperature', () => {
  it('the shift factor is the ratio of two rate constants', () => {
    fc.assert(
      fc.property(span(260, 400), span(260, 400), span(30e3, 110e3), (T, reference, E) => {
        const rate = (siteTemperature: number): number =>
          arrheniusRate({
            frequencyFactor: rateConstant.perS(1e9),
            activationEnergy: activationEnergy.kJPerMol(E / 1000),
            temperature: temperature.kelvin(siteTemperature),
          });
        const factor = arrheniusShift({
          activationEnergy: activationEnergy.kJPerMol(E / 1000),
          referenceTemperature: temperature.kelvin(reference),
          temperature: temperature.kelvin(T),
        });
        near(factor, rate(T) / rate(reference), 1e-12);
      }),
      settings,
    );
  });

  it('a factor beyond what a number holds is refused, not returned as zero or infinity', () => {
    const call = (siteTemperature: Temperature): number =>
      arrheniusShift({
        activationEnergy: activationEnergy.kJPerMol(1e6),
        referenceTemperature: temperature.degC(20),
        temperature: siteTemperature,
      });
    expect(() => call(temperature.kelvin(5))).toThrow(/shift factor/);
    expect(() => call(temperature.degC(2000))).toThrow(/shift factor/);
  });

  it('the energy from two times and the time at another temperature undo each other', () => {
    fc.assert(
      fc.property(span(278, 330), span(40e3, 90e3), span(600, 90000), (T, E, testedTime) => {
        fc.pre(Math.abs(T - 296.15) > 0.5);
        const shifted = cure.timeAtTemperature({
          ...sheet,
          time: time.minute(testedTime / 60),
          activationEnergy: activationEnergy.kJPerMol(E / 1000),
          temperature: temperature.kelvin(T),
          minimumTemperature: temperature.degC(0),
        });
        const energy = cure.activationEnergyFromTimes({
          firstTime: time.minute(testedTime / 60),
          firstTemperature: temperature.degC(23),
          secondTime: shifted,
          secondTemperature: temperature.kelvin(T),
        });
        near(energy, E, 1e-9);
      }),
      settings,
    );
  });

  it('the energy that a Q10 implies gives that Q10 back', () => {
    fc.assert(
      fc.property(span(1.05, 5), span(270, 340), span(2, 30), (factor, T, step) => {
        const fittedEnergy = cure.activationEnergyFromQ10({
          factor: ratio.fraction(factor),
          temperature: temperature.kelvin(T),
          step: temperatureDifference.kelvin(step),
        });
        near(
          cure.q10({
            activationEnergy: fittedEnergy,
            temperature: temperature.kelvin(T),
            step: temperatureDifference.kelvin(step),
          }),
          factor,
          1e-12,
        );
      }),
      settings,
    );
  });

  it('halving per ten kelvin is no single activation energy: it rises with temperature', () => {
    const implied = [5, 10, 15, 25].map((low) =>
      activationEnergy.inKJPerMol(
        cure.activationEnergyFromQ10({ factor: ratio.fraction(2), temperature: temperature.degC(low) }),
      ),
    );
    expect(implied.map((energy) => Number(energy.toFixed(1)))).toEqual([46.2, 47.8, 49.5, 52.9]);
  });

  it('energies from times and from the reciprocal rates are the same', () => {
    fc.assert(
      fc.property(span(100, 1000), span(1.1, 20), (testedTime, factor) => {
        const temperatures = { firstTemperature: temperature.degC(10), secondTemperature: temperature.degC(35) };
        const byTimes = cure.activationEnergyFromTimes({
          ...temperatures,
          firstTime: time.minute(testedTime * factor),
          secondTime: time.minute(testedTime),
        });
        const byRates = cure.activationEnergyFromRates({
          ...temperatures,
          firstRate: rateConstant.perS(1 / (60 * testedTime * factor)),
          secondRate: rateConstant.perS(1 / (60 * testedTime)),
        });
        near(byTimes, byRates, 1e-12);
      }),
      settings,
    );
  });

  it('a hotter sample that took longer has no activation energy', () => {
    const input = {
      firstTime: time.hour(1),
      firstTemperature: temperature.degC(10),
      secondTime: time.hour(2),
      secondTemperature: temperature.degC(20),
    };
    expect(() => cure.activationEnergyFromTimes(input)).toThrow(/hotter of the two must take the shorter time/);
    expect(() => cure.activationEnergyFromTimes({ ...input, secondTemperature: temperature.degC(10) })).toThrow(
      /must differ/,
    );
    expect(() => cure.isoconversionalTime({ ...input, temperature: temperature.degC(15) })).toThrow(
      /hotter of the two/,
    );
    expect(() =>
      cure.activationEnergyFromRates({
        firstRate: rateConstant.perS(2),
        firstTemperature: temperature.degC(10),
        secondRate: rateConstant.perS(1),
        secondTemperature: temperature.degC(20),
      }),
    ).toThrow(/hotter of the two must be the faster/);
  });

  it('the isoconversional time passes through both measured points', () => {
    fc.assert(
      fc.property(span(1.1, 30), span(280, 300), span(301, 340), (factor, T1, T2) => {
        const input = {
          firstTime: time.minute(factor * 10),
          firstTemperature: temperature.kelvin(T1),
          secondTime: time.minute(10),
          secondTemperature: temperature.kelvin(T2),
        };
        near(
          cure.isoconversionalTime({ ...input, temperature: temperature.kelvin(T1) }).time,
          time.minute(factor * 10),
          1e-12,
        );
        near(cure.isoconversionalTime({ ...input, temperature: temperature.kelvin(T2) }).time, time.minute(10), 1e-12);
        expect(cure.isoconversionalTimeExtrapolates({ ...input, temperature: temperature.kelvin(T2 + 1) })).toBe(true);
        expect(cure.isoconversionalTimeExtrapolates({ ...input, temperature: temperature.kelvin((T1 + T2) / 2) })).toBe(
          false,
        );
      }),
      settings,
    );
  });
});

describe('waits and working times', () => {
  it('hotter never lengthens a cure wait, with the maker’s energy or without', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 30), fc.boolean(), (T, by, known) => {
        const energy = known ? { activationEnergy: activationEnergy.kJPerMol(57) } : {};
        const cooler = cure.cureWait({ ...sheet, ...energy, temperature: temperature.kelvin(T) });
        const hotter = cure.cureWait({ ...sheet, ...energy, temperature: temperature.kelvin(T + by) });
        expect(hotter.wait).toBeLessThanOrEqual(cooler.wait);
        expect(hotter.shortest).toBeLessThanOrEqual(cooler.shortest);
      }),
      settings,
    );
  });

  it('hotter never lengthens a working time or a pot life', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 30), fc.boolean(), (T, by, known) => {
        const energy = known ? { activationEnergy: activationEnergy.kJPerMol(57) } : {};
        const at = (siteTemperature: number): number =>
          cure.workingTime({ ...sheet, ...energy, temperature: temperature.kelvin(siteTemperature) }).workingTime;
        const inPot = (siteTemperature: number): number =>
          cure.potLife({
            ...sheet,
            ...energy,
            temperature: temperature.kelvin(siteTemperature),
            testedMass: mass.kg(0.1),
            batchMass: mass.kg(1),
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
        const input = { ...sheet, temperature: temperature.kelvin(T) };
        const fittedEnergy = activationEnergy.kJPerMol(energy);
        const slack = 1 + 1e-12;
        const known = cure.cureWait({ ...input, activationEnergy: fittedEnergy });
        expect(known.wait).toBe(known.shortest);
        expect(known.governingEnergy).toBe(fittedEnergy);
        expect(cure.cureWait(input).wait * slack).toBeGreaterThanOrEqual(known.wait);
        expect(cure.workingTime(input).workingTime).toBeLessThanOrEqual(
          cure.workingTime({ ...input, activationEnergy: fittedEnergy }).workingTime * slack,
        );
      }),
      settings,
    );
  });

  it('colder than the reference the high energy governs a wait and the low one a working time; hotter the other way round', () => {
    const cold = { ...sheet, temperature: temperature.degC(10) };
    const hot = { ...sheet, temperature: temperature.degC(35) };
    expect(activationEnergy.inKJPerMol(cure.cureWait(cold).governingEnergy)).toBe(60);
    expect(activationEnergy.inKJPerMol(cure.cureWait(hot).governingEnergy)).toBe(40);
    expect(activationEnergy.inKJPerMol(cure.workingTime(cold).governingEnergy)).toBe(40);
    expect(activationEnergy.inKJPerMol(cure.workingTime(hot).governingEnergy)).toBe(60);
  });

  it('a moisture-cured system is never shifted', () => {
    const moist = {
      ...sheet,
      temperature: temperature.degC(15),
      activationEnergy: activationEnergy.kJPerMol(50),
      mechanism: 'moisture',
    } as const;
    const steps = [{ duration: time.hour(24), temperature: temperature.degC(15) }];
    const swing = {
      meanTemperature: temperature.degC(20),
      swing: temperatureDifference.kelvin(8),
      sinceColdest: time.hour(3),
    };
    const calls: (() => unknown)[] = [
      () => cure.timeAtTemperature(moist),
      () => cure.cureWait(moist),
      () => cure.workingTime(moist),
      () => cure.potLife({ ...moist, testedMass: mass.kg(0.1), batchMass: mass.kg(0.1) }),
      () => cure.overcoatWindow({ ...moist, opens: time.hour(2), closes: time.hour(24) }),
      () => cure.remainingTime({ ...moist, requiredTime: time.hour(24), creditedTime: time.hour(2) }),
      () => cure.equivalentTime({ ...moist, steps }),
      () =>
        cure.equivalentTimeRamp({
          ...moist,
          startTemperature: temperature.degC(10),
          endTemperature: temperature.degC(20),
          duration: time.hour(1),
        }),
      () => cure.equivalentTimeSwing({ ...moist, ...swing, duration: time.hour(48) }),
      () => cure.cureWaitOverHistory({ ...moist, steps, requiredTime: time.hour(24) }),
      () => cure.cureWaitOverSwing({ ...moist, ...swing, requiredTime: time.hour(24) }),
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
    const call = (): unknown => cure.cureWait({ ...sheet, temperature: temperature.degC(4) });
    expect(call).toThrow(CalculationError);
    expect(call).toThrow(/minimum cure temperature.*heat the pipe/);
    expect(() =>
      cure.timeAtTemperature({
        ...sheet,
        temperature: temperature.degC(4),
        activationEnergy: activationEnergy.kJPerMol(50),
      }),
    ).toThrow(/minimum cure temperature/);
    expect(cure.cureWait({ ...sheet, temperature: temperature.degC(5) }).wait).toBeGreaterThan(time.hour(24));
  });

  it('a warning stands wherever the temperature leaves the tested span', () => {
    for (const [celsius, leaves] of [
      [4.9, true],
      [5, false],
      [23, false],
      [40, false],
      [40.1, true],
    ] as const) {
      const input = { ...sheet, temperature: temperature.degC(celsius) };
      expect(cure.cureWaitLeavesTestedSpan(input)).toBe(leaves);
      expect(cure.workingTimeLeavesTestedSpan(input)).toBe(leaves);
      expect(
        cure.timeAtTemperatureLeavesTestedSpan({ ...input, activationEnergy: activationEnergy.kJPerMol(50) }),
      ).toBe(leaves);
    }
    const { testedFrom: _from, testedTo: _to, ...bare } = sheet;
    expect(cure.cureWaitLeavesTestedSpan({ ...bare, temperature: temperature.degC(22) })).toBe(true);
    expect(cure.cureWaitLeavesTestedSpan({ ...bare, temperature: temperature.degC(23) })).toBe(false);
  });

  it('a tested span that leaves out its own reference is refused', () => {
    expect(() =>
      cure.cureWait({ ...sheet, temperature: temperature.degC(20), testedFrom: temperature.degC(25) }),
    ).toThrow(/testedFrom/);
    expect(() =>
      cure.cureWait({ ...sheet, temperature: temperature.degC(20), testedTo: temperature.degC(20) }),
    ).toThrow(/highest tested/);
  });

  it('bounds out of order are refused', () => {
    const input = { ...sheet, temperature: temperature.degC(20) };
    expect(() => cure.cureWait({ ...input, lowEnergy: activationEnergy.kJPerMol(70) })).toThrow(/lowEnergy/);
    expect(() => cure.workingTime({ ...input, highEnergy: activationEnergy.kJPerMol(45) })).toThrow(/typical/);
  });

  it('a batch heavier than the one tested is warned of', () => {
    const input = { ...sheet, temperature: temperature.degC(20), testedMass: mass.kg(0.1) };
    expect(cure.potLifeBatchHeavierThanTested({ ...input, batchMass: mass.kg(0.5) })).toBe(true);
    expect(cure.potLifeBatchHeavierThanTested({ ...input, batchMass: mass.kg(0.1) })).toBe(false);
  });

  it('what is credited and what remains add up to what is required', () => {
    fc.assert(
      fc.property(span(278.15, 313), span(0, 1), (T, share) => {
        const input = {
          ...sheet,
          requiredTime: time.hour(24),
          activationEnergy: activationEnergy.kJPerMol(55),
          temperature: temperature.kelvin(T),
        };
        const whole = cure.remainingTime({ ...input, creditedTime: time.hour(0) });
        near(whole, cure.timeAtTemperature({ ...input, time: time.hour(24) }), 1e-15);
        const rest = cure.remainingTime({ ...input, creditedTime: time.hour(24 * share) });
        expect(Math.abs(rest - whole * (1 - share))).toBeLessThanOrEqual(1e-12 * whole);
        expect(cure.remainingTime({ ...input, creditedTime: time.hour(30) })).toBe(0);
      }),
      settings,
    );
  });
});
