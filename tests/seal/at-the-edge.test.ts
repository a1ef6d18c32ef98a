import { describe, expect, it } from 'vitest';
import * as seal from '../../src/seal/index.js';

/** What holds at a limit of the seal itself, in numbers that a binary fraction holds to the last digit. */

type Given = Readonly<Record<string, unknown>>;

describe('a limit that warns', () => {
  const plate = { holeDiameter: 2, thickness: 1, modulus: 3, support: 'clamped', poissonRatio: 0 };
  const sheet = { thickness: 0.0003, modulus: 2e11, yieldStrength: 2e8, diameter: 0.2 };

  it.each<readonly [string, (given: never) => boolean, Given, Given]>([
    [
      'bands as wide as the pad',
      seal.bandsOverPadLiesBeside,
      { bands: 2, bandWidth: 0.5, padDiameter: 1 },
      { bands: 3 },
    ],
    // 3 p a s^3/(16 E) of a radius of 1 and a slenderness of 1.
    ['a sag of half the thickness', seal.backingPlateDeflectionLarge, { ...plate, pressure: 8 }, { pressure: 8.001 }],
    [
      'a pipe of 50 mm',
      seal.padHalfAngleBelowPractice,
      { padDiameter: 0.02, outsideDiameter: 0.05 },
      { outsideDiameter: 0.0499 },
    ],
    ['a sheet of 0.3 mm', seal.backingSheetOutsidePractice, sheet, { thickness: 0.000299 }],
    ['a sheet of 0.4 mm', seal.backingSheetOutsidePractice, { ...sheet, thickness: 0.0004 }, { thickness: 0.000401 }],
  ])('does not at %s, and does beyond', (_, warns, given, beyond) => {
    expect([warns(given as never), warns({ ...given, ...beyond } as never)]).toEqual([false, true]);
  });
});

describe('where two meet', () => {
  it('a sheet that just reaches yield is bent elastically', () => {
    const of = (yieldStrength: number) =>
      seal.backingSheet({ thickness: 1, modulus: 2, diameter: 1, yieldStrength } as never);
    expect([of(1).forming, of(0.999).forming]).toEqual(['elastic', 'pre-roll']);
  });

  it('gas leaves at the speed of sound from the critical ratio itself on', () => {
    const gas = { temperature: 288, molarMass: 0.029, heatCapacityRatio: 1.4, holeArea: 1e-4, insidePressure: 1 };
    const critical = seal.criticalPressureRatio(gas);
    const at = (outsidePressure: number) => seal.gasLeakRate({ ...gas, outsidePressure } as never).regime;
    expect([at(critical), at(critical + 1e-15)]).toEqual(['choked', 'unchoked']);
  });

  it('a pad for which multiple and margin ask alike goes by the multiple', () => {
    const hole = { holeDiameter: 1, multiple: 3, multipleOf: 'diameter', margin: 1 };
    expect(seal.padSize(hole as never)).toMatchObject({ diameter: 3, governing: 'diameter' });
  });
});

describe('nothing and too much', () => {
  it('no tension that is needed is none to aim at', () => {
    expect(seal.aimedTension({ neededTension: 0, scatter: 0.25 } as never)).toBe(0);
  });

  it.each<readonly [string, (given: never) => unknown, Given, string]>([
    ['a tension beyond any number', seal.aimedTension, { neededTension: 1e308, scatter: 0.99 }, 'aimed tension'],
    [
      'bands wider than any number',
      seal.padBeyondBands,
      { bands: 2, bandWidth: 1e308, padDiameter: 1 },
      'width of all bands',
    ],
    [
      'an answer that is no yes or no',
      seal.attempt,
      { linePressure: 0, highestPressure: 1, phase: 'liquid', hazardous: 'no', writtenProcedure: false },
      'hazardous',
    ],
  ])('%s is refused', (_, compute, given, parameter) => {
    expect(() => compute(given as never)).toThrow(expect.objectContaining({ code: 'invalid-input', parameter }));
  });

  it('a pad that reaches further than half round is refused with the widest that does not', () => {
    const at = () => seal.padHalfAngle({ padDiameter: 1, outsideDiameter: 0.5 } as never);
    expect(at).toThrow(expect.objectContaining({ code: 'outside-validity', limit: Math.PI / 4 }));
  });
});

describe('the load on the end of the pipe', () => {
  const end = { pressure: 1e6, outsideDiameter: 0.5 };
  const load = (axialForce?: number) => seal.endLoad({ ...end, axialForce } as never);

  it('grows by a pull and not by a push', () => {
    expect(load(5e4) - load()).toBeCloseTo(5e4, 6);
    expect([load(-5e4), load(0)]).toEqual([load(), load()]);
  });
});
