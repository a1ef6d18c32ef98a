import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../../src/formula/index.js';
import * as mechanics from '../../../src/mechanics/index.js';
import * as pipe from '../../../src/pipe/index.js';

/** A good value for each input by its name, in SI; the same name means the same thing in all these formulas. */
const good: Readonly<Record<string, number | string>> = {
  pressure: 5e6,
  internalPressure: 5e6,
  externalPressure: 1e6,
  outsideDiameter: 0.1683,
  insideDiameter: 0.15408,
  innerRadius: 0.07,
  outerRadius: 0.08415,
  wallThickness: 0.01,
  radius: 0.08,
  circumference: 0.53,
  tapeThickness: 0.0002,
  designThickness: 0.004,
  allowance: 0.001,
  mechanicalAllowance: 0.001,
  supplementalThickness: 0.001,
  structuralMinimum: 0.0028,
  underTolerance: 0.125,
  hoopStress: 80e6,
  longitudinalStress: 40e6,
  torsionStress: 5e6,
  pressureStress: 40e6,
  thermalStress: -40e6,
  axialForceStress: 5e6,
  bendingStress: 5e6,
  first: 100e6,
  second: 50e6,
  third: -5e6,
  axialForce: -1e4,
  bendingMoment: 1e3,
  modulus: 207e9,
  expansion: 1.2e-5,
  tieInTemperature: 290,
  operatingTemperature: 330,
  poissonRatio: 0.3,
  allowableStress: 138e6,
  yieldStrength: 241e6,
  jointFactor: 0.85,
  weldStrengthFactor: 1,
  temperatureCoefficient: 0.4,
  temperatureFactor: 1,
  designFactor: 0.72,
  heatFactor: 1,
  ends: 'closed',
  restraint: 'restrained',
};

/** Inputs that may be zero, and those that may be negative too. */
const mayBeZero = new Set([
  'pressure',
  'internalPressure',
  'externalPressure',
  'tapeThickness',
  'designThickness',
  'allowance',
  'mechanicalAllowance',
  'supplementalThickness',
  'structuralMinimum',
  'underTolerance',
  'bendingMoment',
  'poissonRatio',
  'temperatureCoefficient',
]);
const mayBeNegative = new Set([
  'longitudinalStress',
  'torsionStress',
  'pressureStress',
  'thermalStress',
  'axialForceStress',
  'bendingStress',
  'first',
  'second',
  'third',
  'axialForce',
]);
/** The hoop stress may be any number in the combined stress, and not negative where it stands for pressure. */
const signs = (id: string, name: string): 'any' | 'zero' | 'positive' =>
  name === 'hoopStress'
    ? id.startsWith('pipe/combined')
      ? 'any'
      : 'zero'
    : mayBeNegative.has(name)
      ? 'any'
      : mayBeZero.has(name)
        ? 'zero'
        : 'positive';

const formulas: readonly AnyFormula[] = [
  mechanics.thickCylinderAxialStressFormula,
  mechanics.thickCylinderHoopStressFormula,
  mechanics.thickCylinderRadialStressFormula,
  pipe.allowablePressureFormula,
  pipe.anchorForceFormula,
  pipe.axialForceStressFormula,
  pipe.bendingStressFormula,
  pipe.boreHoopStressFormula,
  pipe.codeHoopStressFormula,
  pipe.codeLongitudinalStressFormula,
  pipe.combinedTrescaStressFormula,
  pipe.combinedVonMisesStressFormula,
  pipe.designThicknessInsideFormula,
  pipe.designThicknessOutsideFormula,
  pipe.gasDesignPressureFormula,
  pipe.hoopStressFormula,
  pipe.insideDiameterHoopStressFormula,
  pipe.liquidDesignPressureFormula,
  pipe.longitudinalStressFormula,
  pipe.longitudinalStressLimitFormula,
  pipe.longitudinalStressSumFormula,
  pipe.mawpFormula,
  pipe.meanDiameterHoopStressFormula,
  pipe.minimumWallFormula,
  pipe.orderWallFormula,
  pipe.outsideDiameterFromCircumferenceFormula,
  pipe.outsideHoopStressFormula,
  pipe.restrainedPressureStressFormula,
  pipe.restrainedThermalStressFormula,
  pipe.thickWallAxialStressFormula,
  pipe.thickWallCoefficientFormula,
  pipe.thickWallHoopStressFormula,
  pipe.thickWallRadialStressFormula,
  pipe.thinLongitudinalStressFormula,
  pipe.trescaStressFormula,
  pipe.vonMisesStressFormula,
];

function numbersOf(result: unknown): number[] {
  return typeof result === 'number' ? [result] : (Object.values(result as object) as number[]);
}

/** Undefined when the call is refused as it should be; otherwise what came back. */
function answer(formula: AnyFormula, input: object): number[] | undefined {
  try {
    return numbersOf(formula.compute(input));
  } catch (error) {
    if (isCalculationError(error)) return undefined;
    throw error;
  }
}

describe.each(formulas.map((formula) => ({ id: formula.id, formula })))('$id', ({ id, formula }) => {
  const names = Object.keys(formula.inputs);
  const input = Object.fromEntries(names.map((name) => [name, good[name]]));
  const numeric = names.filter((name) => typeof good[name] === 'number');

  it('accepts a good input', () => {
    expect(Object.values(input)).not.toContain(undefined);
    expect(answer(formula, input)?.every(Number.isFinite)).toBe(true);
  });

  it.each(numeric)('refuses %s when it is no finite number', (name) => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(answer(formula, { ...input, [name]: bad })).toBeUndefined();
  });

  it.each(numeric)('refuses zero and negative values of %s where they mean nothing', (name) => {
    const sign = signs(id, name);
    const small = (good[name] as number) * -1e-3;
    if (sign !== 'any') expect(answer(formula, { ...input, [name]: small })).toBeUndefined();
    if (sign === 'positive') expect(answer(formula, { ...input, [name]: 0 })).toBeUndefined();
    else expect(answer(formula, { ...input, [name]: 0 })?.every(Number.isFinite)).toBe(true);
  });

  it('never answers with anything but a finite number, however large or small the input', () => {
    for (const name of numeric)
      for (const size of [1e300, 1e-300, -1e300])
        expect(answer(formula, { ...input, [name]: size })?.every(Number.isFinite) ?? true).toBe(true);
    const all = Object.fromEntries(names.map((name) => [name, typeof good[name] === 'number' ? 1e300 : good[name]]));
    expect(answer(formula, all)?.every(Number.isFinite) ?? true).toBe(true);
  });

  it('refuses a word that is no choice', () => {
    for (const name of names.filter((name) => typeof good[name] === 'string'))
      expect(answer(formula, { ...input, [name]: 'welded' })).toBeUndefined();
    expect(names.length).toBeGreaterThan(0);
  });
});
