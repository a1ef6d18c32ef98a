import { describe, expect, it } from 'vitest';
import { type CalculationError, isCalculationError } from '../../src/formula/index.js';
import * as pipe from '../../src/pipe/index.js';
import { formulaById } from '../../src/registry/index.js';

/** What holds at a limit of the pipe itself, in numbers that a binary fraction holds to the last digit. */

type Given = Readonly<Record<string, unknown>>;

function outcomeOf(id: string, given: Given): { readonly result?: unknown; readonly refusal?: CalculationError } {
  const formula = formulaById(`pipe/${id}`);
  if (formula === undefined) throw new RangeError(`no formula ${id}`);
  try {
    const own = Object.entries(given).filter(([name]) => name in formula.inputs);
    return { result: formula.compute(Object.fromEntries(own) as never) };
  } catch (error) {
    if (isCalculationError(error)) return { refusal: error };
    throw error;
  }
}

const wall = { outsideDiameter: 10, wallThickness: 1 };
/** z = L^2/(D t) is 20. */
const long = { outsideDiameter: 10, wallThickness: 2, defectLength: 20 };
/** z is 50. */
const longer = { outsideDiameter: 8, wallThickness: 1, defectLength: 20 };
const steel = { allowableStress: 2 ** 27, jointFactor: 1, temperatureCoefficient: 0 };
const shell = { insideDiameter: 0.5, correctedWall: 2 ** -6, workingPressure: 5e6, defectLength: 0.1 };
const partA = { depthDeviation: 0, fractile: 0, resistanceFactor: 1, tensileStrength: 4e8 };
const slot = { outsideDiameter: 0.5, wallThickness: 2 ** -6, flowStress: 4e8, defectLength: 0.1 };
const at1991 = { designPressure: 1e6, operatingPressure: 1e6 };

describe('what is told beyond a limit', () => {
  it.each<readonly [string, (given: never) => boolean, Given, Given]>([
    [
      'a tenth of the wall, tables',
      pipe.b31gAllowableLengthBelowTables,
      { ...wall, defectDepth: 0.1 },
      { ...wall, defectDepth: 0.099 },
    ],
    [
      'a tenth of the wall, 1991',
      pipe.b31g1991SafePressureShallow,
      { ...wall, defectDepth: 0.1 },
      { ...wall, defectDepth: 0.099 },
    ],
    [
      'a tenth of the wall, original form',
      pipe.b31gOriginalShallow,
      { ...wall, defectDepth: 0.1 },
      { ...wall, defectDepth: 0.099 },
    ],
    ['a z of 20', pipe.foliasB31gBeyondRange, long, { ...long, defectLength: 20.001 }],
    [
      'a shear that takes the one principal stress to nothing',
      pipe.combinedTrescaStressBeyondPlane,
      { hoopStress: 4, longitudinalStress: 1, torsionStress: 2 },
      { hoopStress: 2, longitudinalStress: 3, torsionStress: 2 },
    ],
  ])('is not at %s', (_, told, at, beyond) => {
    expect([told(at as never), told(beyond as never)]).toEqual([false, true]);
  });
});

describe('a limit that refuses', () => {
  const outside = 'outside-validity';
  const bore = { ...steel, insideDiameter: 4, allowableStress: 6 * 2 ** 20, weldStrengthFactor: 0.5 };

  it.each<readonly [string, string, Given, Given]>([
    [
      'no wall left',
      'allowable-pressure',
      { ...steel, ...wall, underTolerance: 0, allowance: 1 },
      { code: 'no-solution', parameter: 'wallThickness', limit: 1 },
    ],
    [
      'D/6',
      'allowable-pressure',
      { ...steel, outsideDiameter: 6, wallThickness: 1, underTolerance: 0 },
      { code: outside, parameter: 'wall left', limit: 1 },
    ],
    [
      'more than 0.385 S E of a weak joint',
      'allowable-pressure',
      {
        ...steel,
        ...{ outsideDiameter: 6.125, wallThickness: 1, underTolerance: 0, jointFactor: 0.5 },
        temperatureCoefficient: 0.625,
      },
      // 2/(6.125 - 1.25) is 0.41 of S E.
      { code: outside, parameter: 'allowable pressure', limit: 0.385 * 2 ** 26 },
    ],
    [
      'D/6',
      'code-longitudinal-stress',
      { ...steel, outsideDiameter: 6, wallThickness: 1, pressure: 1 },
      { code: outside, parameter: 'wallThickness', limit: 1 },
    ],
    [
      'D/6',
      'design-thickness-outside',
      { ...bore, outsideDiameter: 6, pressure: 2 ** 20 },
      { code: outside, parameter: 'pressure design thickness', limit: 1 },
    ],
    [
      'D/6',
      'design-thickness-inside',
      { ...bore, pressure: 2 ** 20 },
      { code: outside, parameter: 'pressure design thickness', limit: 1 },
    ],
    [
      'a pressure that leaves nothing of S E W',
      'design-thickness-inside',
      { ...bore, jointFactor: 0.5, weldStrengthFactor: 0.25, pressure: 2 ** 20, temperatureCoefficient: 0.25 },
      { code: 'no-solution', parameter: 'pressure', limit: 2 ** 20 },
    ],
    [
      'a wall that is thicker than the sound one with what it still loses',
      'local-metal-loss',
      { ...shell, futureAllowance: 2 ** -8, measuredMinimum: 1.001 * (2 ** -6 + 2 ** -8) },
      { code: 'invalid-input', parameter: 'measuredMinimum', limit: 2 ** -6 + 2 ** -8 },
    ],
  ])('does at %s: %s', (_, id, given, refusal) => {
    expect(outcomeOf(id, given).refusal).toMatchObject(refusal);
  });

  const at385 = { ...steel, pressure: 0.385 * 2 ** 27, temperatureCoefficient: 1 };
  const whole = { accepted: true, remainingStrengthFactor: 1 };

  it.each<readonly [string, string, Given, unknown]>([
    // t of P d/(2 S), and P D/(2 (S + P)).
    ['0.385 S E', 'design-thickness-inside', { ...at385, insideDiameter: 1 }, expect.closeTo(0.1925, 12)],
    [
      '0.385 S E',
      'minimum-wall',
      { ...at385, outsideDiameter: 1 },
      expect.objectContaining({ required: expect.closeTo(0.1925 / 1.385, 12) }),
    ],
    [
      '0.385 S E',
      'allowable-pressure',
      {
        ...steel,
        ...{ outsideDiameter: 2 / 0.385 + 1, wallThickness: 1, underTolerance: 0, temperatureCoefficient: 0.5 },
      },
      0.385 * 2 ** 27,
    ],
    [
      'the least wall',
      'local-metal-loss',
      { ...shell, leastWall: 2 ** -8, measuredMinimum: 2 ** -8 },
      expect.objectContaining({ remainingWallRatio: 0.25, accepted: false }),
    ],
    [
      'the sound wall with what it still loses',
      'local-metal-loss',
      { ...shell, futureAllowance: 2 ** -8, measuredMinimum: 2 ** -6 + 2 ** -8, allowableFactor: 1 },
      expect.objectContaining(whole),
    ],
    [
      'the strength that is allowed',
      'local-metal-loss-profile',
      { ...shell, allowableFactor: 1, profile: [0, 0.1].map((position) => ({ position, wall: 2 ** -6 })) },
      expect.objectContaining(whole),
    ],
    [
      'a depth of 0.85 of the wall',
      'dnv-part-a',
      { ...partA, ...wall, relativeDepth: 0.85, depthFactor: 1, defectLength: 1e12 },
      // As long as can be: 2 t f/(D - t) (1 - x).
      expect.closeTo((4e8 * 0.15 * 2) / 9, 0),
    ],
  ])('does not at %s: %s', (_, id, given, result) => {
    expect(outcomeOf(id, given)).toEqual({ result });
  });
});

describe('where two forms of a loss meet', () => {
  it.each<readonly [string, string, Given, unknown]>([
    [
      'a length factor of 4 is still a parabola',
      'b31g-1991-allowable-depth',
      { ...at1991, wallThickness: 1, lengthFactor: 4 },
      expect.closeTo(0.15 / (1.1 - 1 / Math.sqrt(17)), 12),
    ],
    [
      'a length factor of 4 is still a parabola',
      'b31g-1991-safe-pressure',
      { ...at1991, wallThickness: 1, lengthFactor: 4, defectDepth: 0.5 },
      expect.closeTo((1.1e6 * (2 / 3)) / (1 - 1 / (3 * Math.sqrt(17))), 3),
    ],
    [
      'half a wall at half the pressure may be of any length',
      'b31g-1991-allowable-length',
      { ...wall, designPressure: 2 / 1.1, operatingPressure: 1, defectDepth: 0.5 },
      'unlimited',
    ],
    [
      'a depth of 0.175 has the B of shallow ones',
      'b31g-allowable-length',
      { ...wall, defectDepth: 0.175 },
      expect.closeTo(1.12 * 4 * Math.sqrt(10), 12),
    ],
    [
      'a z of 50 is of the root',
      'folias-modified-b31g',
      longer,
      expect.closeTo(Math.sqrt(1 + 0.6275 * 50 - 0.003375 * 2500), 12),
    ],
    [
      'a depth that the factors take to the wall carries nothing, however short it is',
      'dnv-part-a',
      { ...partA, ...wall, relativeDepth: 0.5, depthFactor: 2, defectLength: 1e-12 },
      0,
    ],
    [
      'a slot whose stress is that of the pressure tears',
      'leak-or-rupture',
      { ...slot, pressure: pipe.throughWallSlot(slot as never) / 16 },
      'rupture',
    ],
  ])('%s: %s', (_, id, given, result) => {
    expect(outcomeOf(id, given)).toEqual({ result });
  });

  it.each<readonly [string, (survey: never, out: Float64Array) => Float64Array, (one: never) => number, Given]>([
    ['a z of 20', pipe.b31gAll, pipe.b31gOriginal, long],
    ['a z of 50', pipe.modifiedB31gAll, pipe.modifiedB31g, longer],
  ])('%s is the same in a survey as alone', (_, all, one, { defectLength, ...line }) => {
    const given = { ...line, flowStress: 4e8 };
    const out = all(
      { ...given, depth: Float64Array.of(0.5), length: Float64Array.of(defectLength as number) } as never,
      new Float64Array(1),
    );
    expect(out[0]).toBe(one({ ...given, defectDepth: 0.5, defectLength } as never));
  });
});

describe('axial compression on a short loss all round the pipe', () => {
  // A fifth of the section is left, and the hoop share is that of the sound wall, so that the form never reduces.
  const S = 2 ** 29;
  const ring = { outsideDiameter: 0.5, wallThickness: 2 ** -6, defectWidth: 0.5 * Math.PI, defectLength: 1e-6 };
  const at = (share: number, depth = 0.8) =>
    outcomeOf('dnv-axial-compression', {
      ...{ ...ring, defectDepth: depth * 2 ** -6, tensileStrength: S },
      axialStress: share * S,
    });

  it.each([0.1, 0, -0.1, -0.199])('takes nothing off at %d of the strength', (share) => {
    expect(at(share)).toEqual({ result: 1 });
  });

  it.each([-0.201, -0.4, -0.6])('has no solution at %d, beyond what is left', (share) => {
    const limit = expect.closeTo(-0.2 * S, 3);
    expect(at(share).refusal).toMatchObject({ code: 'no-solution', parameter: 'axialStress', limit });
  });

  it('has no solution at just what is left', () => {
    expect(at(-0.5, 0.5).refusal).toMatchObject({ code: 'no-solution', limit: -0.5 * S });
  });
});
