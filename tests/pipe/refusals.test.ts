import { describe, expect, it } from 'vitest';
import { type CalculationError, isCalculationError } from '../../src/formula/index.js';
import * as pipe from '../../src/pipe/index.js';

/** What is refused, with which words and at which number, and what is just not. */

type Given = Readonly<Record<string, unknown>>;

const formulas = new Map(Object.entries(pipe as unknown as Record<string, (...input: unknown[]) => unknown>));

const value = (name: keyof typeof pipe, ...input: readonly unknown[]): unknown => formulas.get(name)?.(...input);

function refusal(name: keyof typeof pipe, ...input: readonly unknown[]): CalculationError {
  try {
    value(name, ...input);
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
  throw new Error(`${name} refused nothing`);
}

/** The last number that the words of a limit name. */
const numberIn = ({ constraint }: CalculationError): number =>
  Number(constraint.match(/-?\d[\d.]*(?:e[+-]?\d+)?/gu)?.at(-1));

const wall = { outsideDiameter: 0.6, wallThickness: 0.01 };
const process = { outsideDiameter: 0.6, allowableStress: 100e6, jointFactor: 0.8, temperatureCoefficient: 0 };
const inside = { insideDiameter: 0.3, allowableStress: 100e6, jointFactor: 0.8, temperatureCoefficient: 0.2 };
const shell = { insideDiameter: 0.58, correctedWall: 0.01, workingPressure: 4e6 };

describe('the wall of process pipe', () => {
  it('is as thick as D/6 at most', () => {
    const special = { code: 'outside-validity', source: 'ASME B31.3, 304.1.2(b)' };
    const thick = { ...process, jointFactor: 1, wallThickness: 0.6 / 6, underTolerance: 0, allowance: 0 };
    const byWall = refusal('allowablePressure', thick);
    expect(byWall).toMatchObject({ ...special, parameter: 'wall left' });
    expect(byWall.limit).toBeCloseTo(0.1, 12);
    expect(refusal('codeLongitudinalStress', { ...thick, pressure: 1e6 })).toMatchObject(special);
    // P D/(2 S) is D/6 where P is a third of S.
    const third = { pressure: 1, outsideDiameter: 6, allowableStress: 3, jointFactor: 1, temperatureCoefficient: 0 };
    expect(refusal('designThicknessOutside', third)).toMatchObject({ ...special, value: 1, limit: 1 });
    const weak = { ...inside, jointFactor: 1, weldStrengthFactor: 0.4, pressure: 30e6, allowance: 0.001 };
    const fromBore = refusal('designThicknessInside', weak);
    // P (d + 2 c)/(2 (S E W - P (1 - Y))), and D is the bore without its allowances and twice that.
    expect(fromBore).toMatchObject(special);
    expect(fromBore.value).toBeCloseTo((30e6 * 0.302) / (2 * 16e6), 12);
    expect(fromBore.limit).toBeCloseTo((0.302 + 2 * (fromBore.value as number)) / 6, 12);
  });

  it('carries 0.385 S E at most', () => {
    const limit = 0.385 * 100e6 * 0.8;
    // With a Y below 1 so much pressure asks for more than D/6.
    const thick = { ...process, temperatureCoefficient: 1, underTolerance: 0, allowance: 0 };
    for (const [name, rest] of [
      ['designThicknessOutside', {}],
      ['designThicknessInside', { insideDiameter: 0.3 }],
      ['minimumWall', {}],
    ] as const) {
      const at = (pressure: number) => ({ ...thick, ...rest, pressure });
      expect(value(name, at(limit)), name).toBeDefined();
      expect(refusal(name, at(limit * 1.001)).limit, name).toBeCloseTo(limit, 3);
    }
    const of = (share: number) => ({ ...thick, wallThickness: (share * 0.6) / (2 + 2 * share) });
    expect((value('allowablePressure', of(0.38)) as number) / 80e6).toBeCloseTo(0.38, 12);
    expect(refusal('allowablePressure', of(0.39)).limit).toBeCloseTo(limit, 3);
  });

  it('is none where allowances leave none, or no wall holds the pressure', () => {
    const spent = { ...process, wallThickness: 0.01, underTolerance: 0, allowance: 0.01 };
    expect(refusal('allowablePressure', spent)).toMatchObject({ code: 'no-solution', limit: 0.01 });
    const welded = { ...inside, weldStrengthFactor: 0.25, pressure: 30e6 };
    const none = refusal('designThicknessInside', welded);
    // S E W/(1 - Y).
    expect(none.code).toBe('no-solution');
    expect(none.limit).toBeCloseTo(25e6, 3);
    const just = { ...welded, jointFactor: 1, temperatureCoefficient: 0, pressure: 25e6 };
    expect(refusal('designThicknessInside', just).code).toBe('no-solution');
  });

  it.each([
    [0, 'invalid-input'],
    [-0.01, 'invalid-input'],
    [Number.POSITIVE_INFINITY, 'invalid-input'],
    [0.6 / 6, 'outside-validity'],
  ])('of a survey is refused by its row: %d m', (thickness, code) => {
    for (const supplementalThickness of [0, 0.001]) {
      const survey = { ...process, supplementalThickness, wallThickness: Float64Array.of(0.01, thickness, 0.01) };
      expect(refusal('mawpAll', survey, new Float64Array(3))).toMatchObject({ code, parameter: 'wallThickness[1]' });
    }
  });
});

describe('the stress in a pipe', () => {
  it('is none of a wall of nothing, not even without pressure', () => {
    const survey = { outsideDiameter: 0.6, pressure: 0, wallThickness: Float64Array.of(0.01, 0) };
    expect(refusal('hoopStressAll', survey, new Float64Array(2)).parameter).toBe('wallThickness[1]');
    const strong = { ...process, outsideDiameter: 1, allowableStress: 4e307, jointFactor: 0.5 };
    // 2 S E t/D.
    const [pressure = 0] = value(
      'mawpAll',
      { ...strong, wallThickness: Float64Array.of(0.1) },
      new Float64Array(1),
    ) as Float64Array;
    expect(pressure / 4e306).toBeCloseTo(1, 12);
  });

  it('tears a pipe open where it equals what a slot bears, and bears no slot where it is the flow stress', () => {
    // D/(2 t) is 16.
    const slot = { outsideDiameter: 0.5, wallThickness: 1 / 64, flowStress: 4e8, defectLength: 0.1 };
    const pressure = (value('throughWallSlot', slot) as number) / 16;
    expect(value('leakOrRupture', { ...slot, pressure })).toBe('rupture');
    expect(value('leakOrRupture', { ...slot, pressure: 0.9999 * pressure })).toBe('leak');
    const spent = refusal('criticalThroughWallLength', { ...slot, pressure: 25e6 });
    expect(spent.code).toBe('no-solution');
    expect(numberIn(spent)).toBe(25e6);
  });

  it('has its greatest shear across the wall where both stresses have one sign and outdo the torsion', () => {
    const of = (hoopStress: number, longitudinalStress: number, torsionStress: number) =>
      value('combinedTrescaStressBeyondPlane', { hoopStress, longitudinalStress, torsionStress });
    expect(of(100e6, 50e6, 10e6)).toBe(true);
    expect(of(100e6, -50e6, 10e6)).toBe(false);
    expect(of(64e6, 64e6, 64e6)).toBe(false);
  });
});

describe('a metal loss', () => {
  it('is no shallow one at a tenth of the wall, for which B31G asks for no action below it', () => {
    const at = (defectDepth: number) => ({ ...wall, defectDepth, defectLength: 0.1 });
    for (const name of [
      'b31gOriginalShallow',
      'b31g1991SafePressureShallow',
      'b31gAllowableLengthBelowTables',
    ] as const) {
      expect(value(name, at(0.1 * wall.wallThickness)), name).toBe(false);
      expect(value(name, at(0.0999 * wall.wallThickness)), name).toBe(true);
    }
  });

  it('is one of the shorter form at the very length where the form changes', () => {
    // z = L^2/(D t) is 20 and 50 to the last digit.
    const [D, L, flowStress] = [0.5, 1, 400e6];
    const at = (t: number) => ({
      outsideDiameter: D,
      wallThickness: t,
      defectDepth: t / 2,
      defectLength: L,
      flowStress,
    });
    const surveyed = (t: number) => ({ ...at(t), depth: Float64Array.of(t / 2), length: Float64Array.of(L) });
    const sound = (t: number) => (flowStress * 2 * t) / D;
    const ofParabola = (sound(0.1) * (1 - 1 / 3)) / (1 - 1 / 3 / Math.sqrt(1 + 0.8 * 20));
    expect((value('b31gOriginal', at(0.1)) as number) / ofParabola).toBeCloseTo(1, 12);
    expect((value('b31gAll', surveyed(0.1), new Float64Array(1)) as Float64Array)[0]).toBeCloseTo(ofParabola, 3);
    expect(value('foliasB31gBeyondRange', at(0.1))).toBe(false);
    const M = Math.sqrt(1 + 0.6275 * 50 - 0.003375 * 2500);
    expect(value('foliasModifiedB31g', at(0.04))).toBeCloseTo(M, 12);
    const modified = (sound(0.04) * (1 - 0.425)) / (1 - 0.425 / M);
    expect((value('modifiedB31gAll', surveyed(0.04), new Float64Array(1)) as Float64Array)[0]).toBeCloseTo(modified, 3);
    // The tables give B = 4 up to 17.5 per cent.
    const length = value('b31gAllowableLength', {
      outsideDiameter: 0.5,
      wallThickness: 1 / 64,
      defectDepth: 0.175 / 64,
    });
    expect(length).toBeCloseTo(1.12 * 4 * Math.sqrt(0.5 / 64), 12);
  });

  it('is refused below what API 579-1 leaves of the wall, and not at it', () => {
    const level1 = { ...shell, defectLength: 0.1 };
    const deep = refusal('localMetalLoss', { ...level1, measuredMinimum: 0.0019 });
    expect(deep.code).toBe('outside-validity');
    expect(numberIn(deep)).toBeCloseTo(0.002, 12);
    expect(value('localMetalLoss', { ...level1, correctedWall: 0.005, measuredMinimum: 0.0013 })).toBeDefined();
    // As thick as the corrected wall and what is still to be lost: a sound pipe.
    const sound = { ...level1, futureAllowance: 0.001, measuredMinimum: 0.01 + 0.001 };
    expect(value('localMetalLoss', sound)).toMatchObject({ accepted: true });
    const profile = [0, 0.1, 0.2].map((position) => ({ position, wall: 0.01 }));
    const whole = { ...shell, allowableFactor: 1, profile };
    expect(value('localMetalLossProfile', whole)).toMatchObject({ remainingStrengthFactor: 1, accepted: true });
  });

  it('is refused where compression uses up the section, and left alone where there is little', () => {
    const loss = { ...wall, defectDepth: 0.008, defectLength: 0.01, tensileStrength: 450e6 };
    const spent = refusal('dnvAxialCompression', { ...loss, defectWidth: 0, axialStress: -450e6 });
    expect(spent).toMatchObject({ code: 'no-solution', parameter: 'axialStress' });
    expect(numberIn(spent)).toBe(-450e6);
    const part = refusal('dnvAxialCompression', { ...loss, defectWidth: 0.3 * Math.PI, axialStress: -440e6 });
    expect(numberIn(part) / (-450e6 * 0.6)).toBeCloseTo(1, 12);
    // All round and short: the form has no meaning here, and without compression no need.
    for (const axialStress of [0, -50e6, 50e6])
      expect(value('dnvAxialCompression', { ...loss, defectWidth: 0.6 * Math.PI, axialStress })).toBe(1);
  });

  it('of 0.85 of the wall is the deepest of DNV-RP-F101', () => {
    const measured = { depthDeviation: 0, fractile: 0, resistanceFactor: 0.77, depthFactor: 1, defectLength: 0.1 };
    const of = (relativeDepth: number) => ({ ...wall, ...measured, tensileStrength: 450e6, relativeDepth });
    expect(value('dnvPartA', of(0.85))).toBeGreaterThan(0);
    expect(refusal('dnvPartA', of(0.8501)).code).toBe('outside-validity');
  });

  it('is refused below 0.8 of the wall by the number that is said', () => {
    const deep = { ...wall, defectDepth: 0.0081, defectLength: 0.1, flowStress: 400e6 };
    expect(numberIn(refusal('modifiedB31g', deep))).toBeCloseTo(0.008, 12);
    expect(value('leastWallPressureAlone', 0.01, 0.8 * 0.01)).toBe(false);
    expect(value('leastWallPressureAny', 0.0013, 0)).toBe(true);
    expect(value('leastWallPressureAny', 0.00129, 0)).toBe(false);
  });

  it('all round may be written with six digits, and none takes nothing', () => {
    const round = 0.6 * Math.PI * (1 + 5e-7);
    expect(value('throughWallArcStress', { outsideDiameter: 0.6, cutWidth: round, flowStress: 4e8 })).toBe(0);
    const sound = { ...wall, defectDepth: 0, defectWidth: round, flowStress: 4e8 };
    const { failureStress } = value('axialFailureStress', sound) as { failureStress: number };
    expect(failureStress / 4e8).toBeCloseTo(1, 13);
  });

  it('of steel that yields where it breaks has that as its flow stress', () => {
    expect(value('flowStressMean', { yieldStrength: 4e8, tensileStrength: 4e8 })).toBe(4e8);
  });

  it.each<[keyof typeof pipe, Given]>([
    ['joinedExtent', { extent: 1e308, farthest: 1e308 }],
    ['joinedExtent', { extent: 1e308, farthest: 0, second: 1e308 }],
    ['neighbourReach', { gap: 1e308, extent: 1e308 }],
  ])('is refused by %s where it is longer than a number holds', (name, input) => {
    expect(refusal(name, input).code).toBe('invalid-input');
  });
});
