import { describe, expect, it } from 'vitest';
import {
  defaultStrains,
  energyFromTests,
  firstPlyFailure,
  governingOverlap,
  governingThickness,
  holeResistance,
  hygrothermalResultants,
  orientationFactor,
  pressureLongTerm,
  pressureSharingBiaxial,
  taperedEndShear,
  thicknessLongTerm,
  thicknessSlot,
  thicknessYieldedHoop,
  thicknessYieldedLive,
  tsaiWuRatio,
} from '../../src/laminate/index.js';
import { formulaById } from '../../src/registry/index.js';

/** What holds at a limit itself, in numbers that a binary fraction holds to the last digit, and far out where digits are lost. */

type Given = Readonly<Record<string, unknown>>;

/** Not every input is that of the formula. */
function compute(id: string, given: Given): unknown {
  const formula = formulaById(`laminate/${id}`);
  if (formula === undefined) throw new RangeError(`no formula ${id}`);
  return formula.compute(Object.fromEntries(Object.entries(given).filter(([name]) => name in formula.inputs)) as never);
}

const moduli = { substrateModulus: 2e11, hoopModulus: 2e10, axialModulus: 1e10 };
const diameter = { outsideDiameter: 0.5 };
const hole = { outsideDiameter: 1, wallThickness: 0.25 };
/** nu^2 E_a/E_c of a half is one. */
const bond = {
  holeDiameter: 0.02,
  hoopModulus: 2 ** 30,
  axialModulus: 2 ** 32,
  energyReleaseRate: 9,
  serviceFactor: 1,
};
const fibres = { fibreStrength: 2e9, fibreModulus: 7e10, matrixModulus: 3e9, fibreVolumeFraction: 0.75 };
const ply = { alongModulus: 4e10, acrossModulus: 1e10, shearModulus: 4e9, poissonRatio: 0.25 };
const warm = { transitionTemperature: 300 };
const fitting = { thickness: 0.01 };
/** log N - 3. */
const cyclic = { pressureRatio: 0.5, slope: 1, intercept: 3, freeCycles: 1 };
const wall = { ...diameter, remainingWall: 2 ** -6, allowableStrain: 0.002 };
const yielded = { ...wall, ...moduli, pressure: 2 ** 21, yieldStrength: 2 ** 24 };
const wideSlot = {
  ...diameter,
  ...moduli,
  slotWidth: 0.05,
  stripModulus: 2e10,
  energyReleaseRate: 9,
  serviceFactor: 0.5,
};
/** f sqrt(4 gamma E/(pi W)). */
const ceiling = 0.5 * Math.sqrt((4 * 9 * 2e10) / (Math.PI * 0.05));

describe('at a limit of the laminate', () => {
  const invalid = 'invalid-input';
  const outside = 'outside-validity';
  const unsolved = 'no-solution';

  it.each<readonly [string, string, Given, Given, string, string]>([
    [
      'the ceiling of the bond',
      'thickness-wide-slot',
      { ...wideSlot, pressure: 0.9999 * ceiling },
      { pressure: 1.0001 * ceiling },
      unsolved,
      'pressure',
    ],
    [
      'half of sqrt(D t)',
      'overlap-from-hole',
      { ...hole, holeDiameter: 0.249 },
      { holeDiameter: 0.25 },
      outside,
      'holeDiameter',
    ],
    [
      'what the moduli allow',
      'hole-pressure-ceiling',
      { ...bond, poissonRatio: 0.499 },
      { poissonRatio: 0.5 },
      invalid,
      'poissonRatio',
    ],
    [
      'no room for resin',
      'along-strength',
      { ...fibres, voidFraction: 0.25 },
      { voidFraction: 0.5 },
      invalid,
      'fibreVolumeFraction + voidFraction',
    ],
    ['a quarter turn', 'off-axis-modulus', { ...ply, angle: Math.PI / 2 }, { angle: 1.6 }, invalid, 'angle'],
    [
      'no heat left',
      'upper-temperature-limit',
      { ...warm, margin: 299 },
      { margin: 300 },
      unsolved,
      'transitionTemperature',
    ],
    [
      'less than no heat',
      'upper-temperature-limit',
      { ...warm, margin: 299 },
      { margin: 301 },
      unsolved,
      'transitionTemperature',
    ],
    [
      'straight pipe',
      'thickness-on-fitting',
      { ...fitting, stressFactor: 1 },
      { stressFactor: 0.999 },
      invalid,
      'stressFactor',
    ],
    ['where the form begins', 'cyclic-factor', { ...cyclic, cycles: 1001 }, { cycles: 1000 }, outside, 'cycles'],
    [
      'a slope beyond a number',
      'cyclic-factor',
      { ...cyclic, cycles: 1e8, slope: 1e307 },
      { slope: 1e308 },
      invalid,
      'bracket under the root',
    ],
    [
      'what the wall holds at yield',
      'thickness-yielded-live',
      { ...yielded, livePressure: 2 ** 20 },
      { livePressure: 2 ** 20 + 1 },
      outside,
      'livePressure',
    ],
  ])('%s, one side passes and the other is refused: %s', (_, id, passes, refused, code, parameter) => {
    expect(compute(id, passes)).toBeGreaterThan(0);
    expect(() => compute(id, { ...passes, ...refused })).toThrow(expect.objectContaining({ code, parameter }));
  });

  const none = { laminateThickness: 0, axialForce: 0, externalForce: 0, pressure: 0 };
  const biaxial = {
    ...none,
    ...diameter,
    ...moduli,
    leastAxialForce: 0,
    wrappedDiameter: 0.5,
    allowableStress: 1e8,
    substrateWall: 0,
    substratePoisson: 0.3,
    poissonRatio: 0.2,
    hoopStrain: 0.002,
    axialStrain: 0.002,
  };
  const shear = { ...none, ...diameter, shearForce: 0, torque: 0 };
  const taken = { ...diameter, axialForce: 1e5, externalForce: 1e5 };

  it.each<readonly [string, string, Given]>([
    ['no load', 'equivalent-pressure', shear],
    ['no load', 'pressure-of-equivalent', { ...shear, equivalentPressure: 0 }],
    ['a force that takes all', 'pressure-of-end-force', taken],
    ['no laminate and no force', 'pressure-ignored-axial', { ...none, ...wall, ...moduli, poissonRatio: 0.2 }],
    ['no laminate and no force', 'pressure-ignored-hoop', { ...none, ...wall, ...moduli, poissonRatio: 0.2 }],
    ['neither pipe nor laminate', 'pressure-sharing-biaxial', biaxial],
    ['no pipe and no load', 'thickness-sharing-biaxial', biaxial],
    [
      'all that the wall holds, and all of it on while the laminate cured',
      'thickness-sharing-live',
      { ...wall, ...moduli, allowableStress: 2 ** 24, pressure: 2 ** 20, livePressure: 2 ** 20 },
    ],
  ])('%s, there is none: %s', (_, id, given) => {
    expect(compute(id, given)).toBe(0);
  });

  const laid = { ...none, ...wall, ...moduli, laminateThickness: 0.01, poissonRatio: 0.2 };

  it.each<readonly [string, string, Given, number]>([
    [
      'cycles, ten to the intercept over the slope',
      'cyclic-factor',
      { ...cyclic, slope: 2, intercept: 6, cycles: 2 },
      1e3,
    ],
    [
      'half of E_c/E_a',
      'pressure-ignored-axial',
      { ...laid, hoopModulus: 1e10, axialModulus: 2e10, poissonRatio: 0.3 },
      0.25,
    ],
    ['eps t pi D E_a', 'pressure-ignored-axial', { ...laid, externalForce: 1e6 }, 1e5 * Math.PI],
    ['8 F/(pi D^2)', 'pressure-of-equivalent', { ...shear, equivalentPressure: 0, shearForce: 1e5 * Math.PI }, 3.2e6],
    ['the ceiling of the bond', 'thickness-wide-slot', { ...wideSlot, pressure: 1e9 }, ceiling],
  ])('a refusal names the limit that is %s: %s', (_, id, given, limit) => {
    expect(() => compute(id, given)).toThrow(expect.objectContaining({ limit: expect.closeTo(limit, 6) }));
  });

  it('a force that alone is too much has no pressure, also where pressure would relieve it', () => {
    // More than half of the hoop strain comes off along the pipe: E_a nu_ca/E_c is 0.6, and the wall is as good as gone.
    const relieved = {
      ...biaxial,
      laminateThickness: 0.01,
      substrateWall: 1e-9,
      hoopModulus: 1e10,
      axialModulus: 2e10,
      poissonRatio: 0.3,
    };
    const held = 2e10 * 0.01 * Math.PI * 0.5 * 0.002;
    const at = (externalForce: number) =>
      pressureSharingBiaxial({ ...relieved, allowableStress: 1e9, externalForce } as never);
    expect(at(0.99 * held)).toBeGreaterThan(0);
    expect(() => at(1.01 * held)).toThrow(expect.objectContaining({ code: unsolved, parameter: 'externalForce' }));
  });
});

describe('what the pipe counts by long-term strength', () => {
  const given = { ...diameter, pressure: 1e7, laminateThickness: 0.01, longTermStrength: 1e8, performanceFactor: 0.5 };
  it.each([
    ['thickness', thicknessLongTerm],
    ['pressure', pressureLongTerm],
  ])('takes yield strength and wall, or neither: %s', (_, formula) => {
    const asked = (parameter: string) =>
      expect.objectContaining({ code: 'invalid-input', parameter, value: undefined });
    expect(() => formula({ ...given, yieldStrength: 2e8 } as never)).toThrow(asked('remainingWall'));
    expect(() => formula({ ...given, remainingWall: 0.004 } as never)).toThrow(asked('yieldStrength'));
    expect(formula(given as never)).toBeGreaterThan(0);
  });
});

describe('the default strains', () => {
  const row = { life: 100, hoop: 0.004, axial: 0.002, softAxial: 0.001 };
  const given = { table: [row], designLife: 100, hoopModulus: 2e10, axialModulus: 2e10, failureStrain: 0.01 };
  const of = (changes: object) => defaultStrains({ ...given, ...changes } as never);

  it('hold at 1 % to failure, two and a half times the strain', () => {
    expect(of({}).hoop).toBe(0.004);
    const brittle = { code: 'outside-validity', parameter: 'defaultStrain', limit: 0.005 };
    expect(() => of({ failureMargin: 2, table: [{ ...row, hoop: 0.0051 }] })).toThrow(expect.objectContaining(brittle));
  });

  it.each([
    ['warmAxialModulus', { warmHoopModulus: 2e10 }],
    ['warmHoopModulus', { warmAxialModulus: 2e10 }],
  ])('ask for %s beside the other', (parameter, warmed) => {
    const constraint = 'must be given as well, or neither of the warm moduli';
    expect(() => of(warmed)).toThrow(expect.objectContaining({ code: 'invalid-input', parameter, constraint }));
  });
});

describe('of equal ones', () => {
  it.each([
    ['geometry', { geometry: 0.5, minimum: 0.5, adhesive: 0.5, hole: 0.5 }],
    ['minimum', { geometry: 0.25, minimum: 0.5, adhesive: 0.5, hole: 0.5 }],
    ['adhesive', { geometry: 0.25, minimum: 0.25, adhesive: 0.5, hole: 0.5 }],
  ])('the first governs the overlap: %s', (governing, given) => {
    expect(governingOverlap(given as never)).toEqual({ overlap: 0.5, governing });
  });

  it.each([
    ['hoop', { hoop: 0.5, axial: 0.5, leak: 0 }],
    ['hoop', { hoop: 0.5, axial: 0, leak: 0.5 }],
    ['axial', { hoop: 0, axial: 0.5, leak: 0.5 }],
  ])('the first governs the thickness: %s, %o', (governing, given) => {
    expect(governingThickness(given as never)).toEqual({ thickness: 0.5, governing });
  });

  it('the lowest ply is the first to fail', () => {
    const strengths = {
      alongTension: 1e9,
      alongCompression: 6e8,
      acrossTension: 3e7,
      acrossCompression: 1e8,
      shearStrength: 6e7,
    };
    const plies = [0, 0, 0, 0].map((angle) => ({ ...ply, ...strengths, thickness: 2 ** -10, angle }));
    const failure = firstPlyFailure({ plies, loadX: 2 ** 10, loadY: 0, shearFlow: 0 } as never);
    expect(failure.ply).toBe(1);
    // Of one direction pulled along: strength times thickness over load.
    const ratio = (1e9 * 2 ** -8) / 2 ** 10;
    expect(failure.byStrain / ratio).toBeCloseTo(1, 12);
    expect(failure.byTsaiWu / ratio).toBeCloseTo(1, 12);
    expect(failure.strainX / (1e9 / 4e10)).toBeCloseTo(1, 12);
  });
});

describe('the tests of a bond', () => {
  const laminate = { hoopModulus: 2e10, axialModulus: 1e10, poissonRatio: 0.2, shearModulus: 3e9 };
  /** As if the bond had this energy. */
  const tested = (diameters: readonly number[], energyReleaseRate: number, factor = 1) =>
    diameters.map((holeDiameter) => {
      const test = { holeDiameter, laminateThickness: 0.008 };
      return {
        ...test,
        pressure: factor * holeResistance({ ...laminate, ...test, energyReleaseRate, serviceFactor: 1 } as never),
      };
    });
  const of = (given: object) => energyFromTests({ ...laminate, ...given } as never);

  it('may be three, and give the energy that they were made with', () => {
    const found = of({ tests: tested([0.01, 0.02, 0.04], 100), leastTests: 3 });
    expect(found.mean).toBeCloseTo(100, 9);
    expect(found.lowerLimit).toBeCloseTo(100, 3);
    expect(() => of({ tests: tested([0.01, 0.02, 0.04], 100), leastTests: 2 })).toThrow(
      expect.objectContaining({ parameter: 'leastTests' }),
    );
  });

  it('are of one size up to a tenth, and no further', () => {
    const at = (diameter: number) => () => of({ tests: tested([0.01, diameter, 0.04], 100), leastTests: 3 });
    expect(at(0.01 * 1.1)).toThrow(expect.objectContaining({ parameter: 'sizes of hole in tests', value: 2 }));
    expect(at(0.01 * 1.101)).not.toThrow();
  });

  it('of an energy beyond a number are refused', () => {
    const tests = tested([0.01, 0.02, 0.04], 1, 1e155);
    expect(() => of({ tests, leastTests: 3 })).toThrow(expect.objectContaining({ parameter: 'energy release rate' }));
  });
});

describe('where a form would lose its digits', () => {
  const far = 1e-13;
  const toBe = (found: number, expected: number) => expect(Math.abs(found / expected - 1)).toBeLessThanOrEqual(far);

  it.each([
    [2, { alongStress: 1e6, alongTension: 2e6, alongCompression: 2e12 }],
    [2, { alongStress: -1e6, alongTension: 2e12, alongCompression: 2e6 }],
    [2e6, { alongStress: 1e6, alongTension: 2e12, alongCompression: 2e6 }],
    [2e6, { alongStress: -1e6, alongTension: 2e6, alongCompression: 2e12 }],
  ])('Tsai and Wu under one stress is its strength over it: %s', (ratio, given) => {
    const rest = { acrossStress: 0, shearStress: 0, acrossTension: 3e7, acrossCompression: 1e8, shearStrength: 6e7 };
    toBe(tsaiWuRatio({ ...rest, ...given } as never), ratio);
  });

  it.each([
    ['a wall of next to nothing', { pressure: 2e7, remainingWall: 1e-9 }],
    ['next to no pressure', { pressure: 10, remainingWall: 0.02, yieldStrength: 1 }],
  ])('yield without live pressure is that of equilibrium alone: %s', (_, changes) => {
    const given = { ...yielded, livePressure: 0, ...changes };
    toBe(
      thicknessYieldedLive(given as never),
      thicknessYieldedHoop({ ...given, pipeStress: given.yieldStrength } as never),
    );
  });

  it('a laminate over a slot that only bends has the thickness of a clamped strip', () => {
    for (let exponent = -60; exponent <= -50; exponent++) {
      const P = 10 ** exponent;
      const given = {
        pressure: P,
        slotWidth: 0.05,
        stripModulus: 2e10,
        shearModulus: 3e9,
        energyReleaseRate: 9,
        serviceFactor: 1,
      };
      // gamma = m P^2 W^4/(24 E' t^3).
      const clamped = Math.cbrt((1.4 * P * P * 0.05 ** 4) / (24 * 2e10 * 9));
      expect(Math.abs(thicknessSlot(given as never) / clamped - 1)).toBeLessThanOrEqual(1e-15);
    }
  });

  it('the end of a wrap without taper has the shear of the lag, but for the steps', () => {
    const joint = {
      innerModulus: 2e11,
      innerThickness: 0.01,
      outerModulus: 2e10,
      outerThickness: 0.01,
      bondShearModulus: 1e9,
      bondThickness: 1e-3,
    };
    // lag^2 = G/h (1/(E_i t_i) + 1/(E_o t_o)); tau = eps G/(h lag), by differences more by the eighth part of a step squared.
    const lag = Math.sqrt(1e12 * (1 / 2e9 + 1 / 2e8));
    const step = 0.01 * (12.995 / 13);
    const shear = taperedEndShear({
      ...joint,
      tipThickness: 0.01,
      taperLength: 0.995 / lag,
      strainApart: 1e-3,
    } as never);
    expect(Math.abs((shear * lag) / (1e-3 * 1e12) / (1 + (step * step) / 8) - 1)).toBeLessThanOrEqual(1e-8);
  });
});

it('fibres count by their share of the whole, whatever the whole is', () => {
  const directions = [0, Math.PI / 2].map((angle, across) => ({ angle, share: across === 0 ? 3 : 1 }));
  expect(orientationFactor({ directions } as never)).toBeCloseTo(0.75, 12);
});

it('moisture loads a laminate as warmth does, and both add up', () => {
  const grows = { alongExpansion: 3e-6, acrossExpansion: 2e-5, alongSwelling: 0.02, acrossSwelling: 0.3 };
  const plies = [0.3, -0.7].map((angle) => ({ ...ply, ...grows, thickness: 0.001, angle }));
  const swap = plies.map((each) => ({
    ...each,
    alongExpansion: 0.02,
    acrossExpansion: 0.3,
    alongSwelling: 3e-6,
    acrossSwelling: 2e-5,
  }));
  const of = (given: typeof plies, temperatureChange: number, moistureChange: number) =>
    Object.values(hygrothermalResultants({ plies: given, temperatureChange, moistureChange } as never));
  const [dry, cold, both] = [of(plies, 50, 0), of(plies, 0, 0.01), of(plies, 50, 0.01)];
  expect(cold).toEqual(of(swap, 0.01, 0));
  both.forEach((value, i) => {
    const sum = (dry[i] as number) + (cold[i] as number);
    expect(Math.abs(value - sum)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
  });
});
