import { describe, expect, it } from 'vitest';
import { type CalculationError, isCalculationError } from '../../src/formula/index.js';
import * as laminate from '../../src/laminate/index.js';

/** What is refused, with which words and at which number, and what is just not. */

type Given = Readonly<Record<string, unknown>>;

const formulas = new Map(Object.entries(laminate as unknown as Record<string, (input: Given) => unknown>));

const value = (name: keyof typeof laminate, input: Given): unknown => formulas.get(name)?.(input);

function refusal(name: keyof typeof laminate, input: Given): CalculationError {
  try {
    value(name, input);
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
  throw new Error(`${name} refused nothing`);
}

/** The number that the words of a limit name. */
const numberIn = ({ constraint }: CalculationError): number => Number(/-?\d[\d.e+]*/u.exec(constraint)?.[0]);

const closedEnd = {
  laminateThickness: 0.01,
  outsideDiameter: 0.2,
  hoopModulus: 20e9,
  axialModulus: 20e9,
  poissonRatio: 0.1,
  allowableStrain: 0.0025,
  externalForce: 0,
};
const longTerm = { outsideDiameter: 0.2, longTermStrength: 100e6, performanceFactor: 0.5 };
const wideSlot = {
  outsideDiameter: 0.3,
  slotWidth: 0.1,
  hoopModulus: 20e9,
  stripModulus: 10e9,
  energyReleaseRate: 100,
  serviceFactor: 0.5,
};
const lifeTable = { table: [{ life: 6e8, hoop: 0.004, axial: 0.002, softAxial: 0.001 }], designLife: 3e8 };
const strains = { ...lifeTable, hoopModulus: 20e9, axialModulus: 15e9, failureStrain: 0.01 };
const ply = { alongModulus: 40e9, acrossModulus: 10e9, shearModulus: 4e9, poissonRatio: 0.3 };
const strengths = {
  alongTension: 1e9,
  alongCompression: 0.5e9,
  acrossTension: 50e6,
  acrossCompression: 150e6,
  shearStrength: 70e6,
};
const biaxial = {
  outsideDiameter: 0.2,
  wrappedDiameter: 0.2,
  allowableStress: 150e6,
  substrateModulus: 200e9,
  substratePoisson: 0.3,
  hoopModulus: 20e9,
  axialModulus: 15e9,
  poissonRatio: 0.1,
  hoopStrain: 0.0025,
  axialStrain: 0.0025,
  leastAxialForce: 0,
};

describe('the laminate is refused', () => {
  it.each<[keyof typeof laminate, Given, Given]>([
    ['thicknessOnFitting', { thickness: 0.01, stressFactor: 0.99 }, { parameter: 'stressFactor' }],
    ['serviceFactor', { leakFactor: 0, temperatureFactor: 1, cyclicFactor: 1 }, { parameter: 'leakFactor' }],
    [
      'serviceFactor',
      { leakFactor: 1, temperatureFactor: 1.01, cyclicFactor: 0.5 },
      { parameter: 'temperatureFactor' },
    ],
    ['pressureLongTerm', { ...longTerm, laminateThickness: 0.01, yieldStrength: 2e8 }, { parameter: 'remainingWall' }],
    [
      'pressureLongTerm',
      { ...longTerm, laminateThickness: 0.01, remainingWall: 0.003 },
      { parameter: 'yieldStrength' },
    ],
    ['defaultStrains', { ...strains, warmHoopModulus: 18e9 }, { parameter: 'warmAxialModulus', value: 'missing' }],
    ['defaultStrains', { ...strains, warmAxialModulus: 14e9 }, { parameter: 'warmHoopModulus', value: 'missing' }],
    [
      'alongStrength',
      { fibreStrength: 2e9, fibreModulus: 70e9, matrixModulus: 3e9, fibreVolumeFraction: 0.6, voidFraction: 0.5 },
      { parameter: 'fibreVolumeFraction + voidFraction' },
    ],
    ['offAxisModulus', { ...ply, angle: 1.6 }, { parameter: 'angle' }],
    // The product of both Poisson's ratios is 1 to the last digit.
    ['plateModulus', { hoopModulus: 10e9, axialModulus: 40e9, poissonRatio: 0.5 }, { parameter: 'poissonRatio' }],
  ])('by %s for %j', (name, input, expected) => {
    expect(refusal(name, input)).toMatchObject({ code: 'invalid-input', ...expected });
  });

  it.each<[keyof typeof laminate, Given]>([
    ['maximumStressRatio', { ...strengths, alongStress: 1e-310, acrossStress: 0, shearStress: 0 }],
    ['reducedStiffness', { ...ply, alongModulus: 1.7e308, acrossModulus: 1.7e308, poissonRatio: 0.9 }],
    ['turnedStiffness', { ...ply, alongModulus: 1.7e308, acrossModulus: 1.7e308, poissonRatio: 0.9, angle: 0.3 }],
  ])('by %s where the result is more than a number holds', (name, input) => {
    expect(refusal(name, input).code).toBe('invalid-input');
  });

  it('where a push, a force or a shear takes more than is held, at the number that it names', () => {
    const tooMuch = refusal('pressureIgnoredAxial', { ...closedEnd, externalForce: 320e3 });
    // eps t pi D E_a.
    expect(tooMuch).toMatchObject({ code: 'no-solution', parameter: 'externalForce' });
    expect(numberIn(tooMuch)).toBeCloseTo(100e3 * Math.PI, 3);
    expect(value('pressureIgnoredAxial', { ...closedEnd, laminateThickness: 0 })).toBe(0);
    const noLimit = refusal('pressureIgnoredAxial', { ...closedEnd, hoopModulus: 16e9, poissonRatio: 0.45 });
    expect(noLimit).toMatchObject({ code: 'no-solution', parameter: 'poissonRatio' });
    expect(numberIn(noLimit)).toBe(0.4);

    const held = { axialForce: 1e4, outsideDiameter: 0.2 };
    expect(refusal('pressureOfEndForce', { ...held, externalForce: 10_001 })).toMatchObject({
      code: 'no-solution',
      parameter: 'externalForce',
      value: 10_001,
    });
    expect(value('pressureOfEndForce', { ...held, externalForce: 1e4 })).toBe(0);

    const sheared = { outsideDiameter: 0.2, shearForce: 1e4, torque: 0 };
    const twice = 8e4 / (Math.PI * 0.04);
    const little = refusal('pressureOfEquivalent', { ...sheared, equivalentPressure: 0.999 * twice });
    expect(little).toMatchObject({ code: 'no-solution', parameter: 'equivalentPressure' });
    expect(little.limit).toBeCloseTo(twice, 3);
    expect(value('pressureOfEquivalent', { ...sheared, shearForce: 0, equivalentPressure: 0 })).toBe(0);
    expect(value('pressureIgnoredHoop', { ...closedEnd, laminateThickness: 0 })).toBe(0);
  });

  it('at and above the ceiling of its bond over a wide slot', () => {
    const ceiling = 0.5 * Math.sqrt((4 * 100 * 10e9) / (Math.PI * 0.1));
    const above = refusal('thicknessWideSlot', { ...wideSlot, pressure: 1.001 * ceiling });
    expect(above).toMatchObject({ code: 'no-solution', parameter: 'pressure', value: 1.001 * ceiling });
    expect(numberIn(above)).toBeCloseTo(ceiling, 3);
    expect(value('thicknessWideSlot', { ...wideSlot, pressure: 0.999 * ceiling })).toBeGreaterThan(0);
  });

  it.each([[30], [20]])('where nothing above absolute zero is left under a margin of 30 K: %d K', (transition) => {
    expect(refusal('upperTemperatureLimit', { transitionTemperature: transition, margin: 30 })).toMatchObject({
      code: 'no-solution',
      limit: 30,
    });
  });

  it('where the form of the cycles has not begun or ends', () => {
    const cycles = { cycles: 10_000, pressureRatio: 0.2, freeCycles: 1 };
    // log10(10000) is 4.
    expect(refusal('cyclicFactor', { ...cycles, slope: 1, intercept: 4 })).toMatchObject({ parameter: 'cycles' });
    const before = refusal('cyclicFactor', { ...cycles, slope: 2, intercept: 10 });
    expect(before.code).toBe('outside-validity');
    expect(numberIn(before)).toBeCloseTo(1e5, 6);
    expect(refusal('cyclicFactor', { ...cycles, slope: 1e308, intercept: 4 }).parameter).toBe('bracket under the root');
  });

  it('where the default strain is too near to where it breaks, and not at that number', () => {
    const near = refusal('defaultStrains', { ...strains, failureMargin: 4 });
    expect(near).toMatchObject({ code: 'outside-validity', parameter: 'defaultStrain', value: 0.004 });
    expect(near.limit).toBeCloseTo(0.0025, 12);
    const at = { ...strains, failureMargin: 0.01 / 0.004 };
    expect(value('defaultStrains', at)).toMatchObject({ hoop: 0.004, axial: 0.002 });
  });
});

describe('the laminate is not refused', () => {
  it('at the very limit', () => {
    expect(value('thicknessOnFitting', { thickness: 0.01, stressFactor: 1 })).toBe(0.01);
    expect(value('leakServiceFactor', { designLife: 1e7, firstYear: 1, decay: 0.01 })).toBe(1);
    const yielded = {
      outsideDiameter: 0.25,
      yieldStrength: 256e6,
      remainingWall: 2 ** -8,
      substrateModulus: 200e9,
      hoopModulus: 20e9,
      allowableStrain: 0.0025,
    };
    // 8 MPa on this pipe is its yield.
    expect(value('thicknessYieldedLive', { ...yielded, pressure: 10e6, livePressure: 8e6 })).toBeGreaterThan(0);
    const shared = { ...yielded, allowableStress: 256e6, substrateWall: 2 ** -8 };
    expect(value('thicknessSharingLive', { ...shared, pressure: 8e6, livePressure: 8e6 })).toBe(0);
  });

  it('without any load, or without any wall to hold one', () => {
    const unloaded = { outsideDiameter: 0.2, pressure: 0, shearForce: 0, torque: 0 };
    expect(value('equivalentPressure', unloaded)).toBe(0);
    const noWall = { ...biaxial, substrateWall: 0 };
    expect(value('pressureSharingBiaxial', { ...noWall, laminateThickness: 0, externalForce: 0 })).toBe(0);
    expect(value('thicknessSharingBiaxial', { ...noWall, pressure: 0, axialForce: 0 })).toBe(0);
  });

  it('for shares of fibres in whatever unit they are counted', () => {
    expect(value('orientationFactor', { directions: [{ angle: 0, share: 1e200 }] })).toBe(1);
  });
});

describe('of equal ones the first governs', () => {
  it.each([
    [{ hoop: 0.01, axial: 0.01, leak: 0.01 }, 'hoop'],
    [{ hoop: 0.01, axial: 0.01, leak: 0 }, 'hoop'],
    [{ hoop: 0.01, axial: 0, leak: 0.01 }, 'hoop'],
    [{ hoop: 0, axial: 0.01, leak: 0.01 }, 'axial'],
  ])('among thicknesses: %j', (input, governing) => {
    expect(value('governingThickness', input)).toEqual({ thickness: 0.01, governing });
  });

  it.each([
    [{ geometry: 0.1, adhesive: 0.1, minimum: 0.1, hole: 0.1 }, 'geometry'],
    [{ geometry: 0.05, adhesive: 0.1, minimum: 0.1, hole: 0.1 }, 'minimum'],
    [{ geometry: 0.05, adhesive: 0.1, minimum: 0.05, hole: 0.1 }, 'adhesive'],
  ])('among overlaps: %j', (input, governing) => {
    expect(value('governingOverlap', input)).toEqual({ overlap: 0.1, governing });
  });

  it('among plies: two alike fail together', () => {
    const alike = { ...ply, ...strengths, thickness: 0.001, angle: 0 };
    const loads = { loadX: 1e5, loadY: 0, shearFlow: 0 };
    const found = value('firstPlyFailure', { plies: [alike, alike], ...loads }) as Readonly<Record<string, number>>;
    expect(found['ply']).toBe(1);
    // 50 MPa along the fibres is a twentieth of their strength; it strains them by 1e9/40e9 there, and across by 0.3 of that.
    for (const [name, expected] of Object.entries({ byStrain: 20, byTsaiWu: 20, strainX: 0.025, strainY: -0.0075 }))
      expect((found[name] ?? 0) / expected, name).toBeCloseTo(1, 12);
  });
});

describe('the laminate keeps its digits', () => {
  it.each([[1e-3], [1], [1e3], [1e20]])(
    'without pressure during application, whatever the stiffness of the pipe: %d GPa',
    (GPa) => {
      const input = {
        pressure: 10e6,
        livePressure: 0,
        outsideDiameter: 0.25,
        yieldStrength: 256e6,
        remainingWall: 2 ** -8,
        substrateModulus: GPa * 1e9,
        hoopModulus: 20e9,
        allowableStrain: 0.0025,
      };
      // (P D/2 - s t_s)/(eps E_c): the form then has the root of a laminate over a pipe that has yielded.
      const expected = (1.25e6 - 1e6) / (0.0025 * 20e9);
      expect((value('thicknessYieldedLive', input) as number) / expected).toBeCloseTo(1, 13);
    },
  );

  it.each([[1e-12], [1], [1e12]])('by Tsai and Wu, where tension is %d of compression and one stress acts', (share) => {
    const given = { ...strengths, alongCompression: 1e9 / share, acrossStress: 0, shearStress: 0 };
    const ratio = (alongStress: number) => value('tsaiWuRatio', { ...given, alongStress }) as number;
    expect(ratio(2e8) / 5).toBeCloseTo(1, 13);
    expect((ratio(-2e8) * 0.2 * share) / 1).toBeCloseTo(1, 13);
  });

  it('a hole of half the root of diameter and wall needs the overlap of its pipe alone', () => {
    const pipe = { outsideDiameter: 0.25, wallThickness: 0.0625 };
    expect(value('overlapFromHoleBeyondShare', { ...pipe, holeDiameter: 0.0625 })).toBe(true);
    expect(value('overlapFromHoleBeyondShare', { ...pipe, holeDiameter: 0.0624 })).toBe(false);
  });

  it('moisture swells it as so much more heat would', () => {
    const grown = { ...ply, thickness: 0.001, angle: 0.3 };
    const wet = { alongExpansion: 6e-6, acrossExpansion: 30e-6, alongSwelling: 0.002, acrossSwelling: 0.3 };
    const hot = { alongExpansion: 7e-6, acrossExpansion: 180e-6, alongSwelling: 0, acrossSwelling: 0 };
    const of = (growth: Given): Given =>
      value('hygrothermalResultants', {
        plies: [{ ...grown, ...growth }],
        temperatureChange: 40,
        moistureChange: 0.02,
      }) as Given;
    for (const [name, one] of Object.entries(of(wet))) {
      expect(Math.abs((one as number) - (of(hot)[name] as number)), name).toBeLessThan(
        1e-9 * Math.abs(of(hot)['loadX'] as number),
      );
    }
    expect(of(hot)['loadX']).not.toBe(0);
  });
});
