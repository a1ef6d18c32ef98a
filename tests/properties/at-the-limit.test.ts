import { describe, expect, it } from 'vitest';
import * as acceptance from '../../src/acceptance/index.js';
import * as cure from '../../src/cure/index.js';
import { type CalculationError, isCalculationError } from '../../src/formula/index.js';
import * as laminate from '../../src/laminate/index.js';
import * as pipe from '../../src/pipe/index.js';
import { temperature, time } from '../../src/quantity/index.js';
import { formulaById } from '../../src/registry/index.js';
import * as resin from '../../src/resin/index.js';
import * as seal from '../../src/seal/index.js';
import * as site from '../../src/site/index.js';
import * as wrap from '../../src/wrap/index.js';
import { timeLeftToLay } from '../../src/wrap/laying/time-left-to-lay.js';

/** What holds at a limit itself, in numbers that a binary fraction holds to the last digit. */

type Given = Readonly<Record<string, unknown>>;
const freezing = { temperature: temperature.degC(0), humidity: 1 };
const laid = { poissonRatio: 0.5, hoopModulus: 2 ** 34, axialModulus: 2 ** 34 };
const longTerm = { pressure: 1e6, outsideDiameter: 0.5, longTermStrength: 1e8, performanceFactor: 0.5 };
const swing = { meanTemperature: 280, swing: 8, sinceColdest: 0, referenceTemperature: 300, minimumTemperature: 290 };
const times = { firstTime: 3600, firstTemperature: 280, secondTime: 1200, secondTemperature: 300 };

describe('a limit that warns', () => {
  it.each<readonly [string, (given: never) => boolean, Given]>([
    ['a change of temperature of 5 K', acceptance.blockedLinePressureChangeBeyondOneStep, { temperatureChange: 5 }],
    ['a wall of an eleventh', pipe.meanDiameterHoopStressBeyondAccuracy, { outsideDiameter: 11, wallThickness: 1 }],
    ['a weighing error of 5 %', resin.weighingErrorTooLarge, { resolution: 0.025, mass: 1 }],
    ['a dew point of 0 degC', site.dewPointBelowFreezing, freezing],
    ['a condensation point of 0 degC', site.condensationPointIsFrost, freezing],
    ['the colder temperature measured', cure.isoconversionalTimeExtrapolates, { ...times, temperature: 280 }],
    ['the warmer temperature measured', cure.isoconversionalTimeExtrapolates, { ...times, temperature: 300 }],
    [
      'a swing that is too cold at every hour',
      cure.cureWaitOverSwingLeavesTestedSpan,
      { ...swing, lowestTested: 288, highestTested: 305 },
    ],
    ['no wall left', laminate.thicknessLongTermCountsSubstrate, { ...longTerm, yieldStrength: 1, remainingWall: 0 }],
    ['no strength of the pipe', laminate.thicknessLongTermCountsSubstrate, { yieldStrength: 0, remainingWall: 1 }],
    ['a pressure that shortens as much as it lengthens', laminate.pressureIgnoredAxialHasLimit, laid],
  ])('does not at %s', (_, warns, given) => {
    expect(warns(given as never)).toBe(false);
  });
});

function refusalOf(id: string, given: Given): CalculationError | undefined {
  const formula = formulaById(id);
  if (formula === undefined) throw new RangeError(`no formula ${id}`);
  try {
    formula.compute(Object.fromEntries(Object.entries(given).filter(([name]) => name in formula.inputs)) as never);
    return undefined;
  } catch (error) {
    if (isCalculationError(error)) return error;
    throw error;
  }
}

const wall = { outsideDiameter: 6, jointFactor: 1, temperatureCoefficient: 0, allowableStress: 3 * 2 ** 20 };
const shared = { outsideDiameter: 0.5, remainingWall: 2 ** -6, allowableStress: 2 ** 24, livePressure: 2 ** 20 };
const moduli = { substrateModulus: 2e11, hoopModulus: 2e10 };
const slot = { pressure: 1e6, slotWidth: 0.05, stripModulus: 2e10, shearModulus: 3e9, energyReleaseRate: 200 };
const ring = { pressure: 1e6, outsideDiameter: 0.5, unbondedLength: 0.05, hoopModulus: 2e10, energyReleaseRate: 200 };
/** f sqrt(4 gamma E/(m h pi W)) for a root of 1.4, and for a ring without it. */
const slotCeiling = Math.sqrt((4 * 200 * 2e10) / (1.4 * Math.PI * 0.05));
const ringCeiling = Math.sqrt((4 * 200 * 2e10) / (Math.PI * 0.05));
const wide = { laminateThickness: 0.01, outsideDiameter: 0.5, slotWidth: 0.05, hoopModulus: 2e10, stripModulus: 2e10 };
const bend = { overlap: 0.5, bendRadius: 0.75, outsideDiameter: 0.5, lineRadius: 0.5 };
const strain = {
  defaultStrain: 2 ** -9,
  temperatureFactor: 1,
  cyclicFactor: 1,
  designTemperature: 364,
  installationTemperature: 300,
  substrateExpansion: 2 ** -15,
  laminateExpansion: 0,
};
const soil = { ringMoment: 2 ** 10, outsideDiameter: 0.5, poissonRatio: 0, axialForce: 0, laminateThickness: 2 ** -5 };
/** eps E t of 6 m/t: the soil takes all of the strain. */
const bent = { ...soil, hoopModulus: 2 ** 30, allowableStrain: (6 * 2 ** 10) / 2 ** -10 / 2 ** 30 };
/** A stress so small that its strength ratio is beyond a number. */
const unstressed = {
  alongStress: Number.MIN_VALUE,
  acrossStress: 0,
  shearStress: 0,
  alongTension: 1e9,
  alongCompression: 1e9,
  acrossTension: 1e8,
  acrossCompression: 1e8,
  shearStrength: 1e8,
  alongModulus: 4e10,
  acrossModulus: 1e10,
  shearModulus: 4e9,
  poissonRatio: 0.25,
};
const boiling = temperature.degC(50);
const wrapped = {
  pressure: 1e6,
  innerRadius: 0.08,
  interfaceRadius: 0.085,
  outerRadius: 0.1,
  pipeModulus: 2e11,
  pipePoisson: 0.3,
  hoopModulus: 1e10,
  axialModulus: 1e10,
  radialModulus: 1e10,
  ends: 'closed ends',
};
/** A wrap that is alike every way, which keeps its volume at a half. */
const alike = (poisson: number) => ({
  ...wrapped,
  hoopToAxial: poisson,
  hoopToRadial: poisson,
  axialToRadial: poisson,
});

describe('a limit that refuses', () => {
  const invalid = 'invalid-input';
  const outside = 'outside-validity';
  const unsolved = 'no-solution';

  it.each<readonly [string, string, Given, string, string]>([
    ['a wall of D/6', 'pipe/code-hoop-stress', { ...wall, pressure: 1, wallThickness: 1 }, outside, 'wallThickness'],
    ['a wall of D/6', 'pipe/mawp', { ...wall, wallThickness: 1 }, outside, 'wallThickness'],
    ['a wall of D/6', 'pipe/minimum-wall', { ...wall, pressure: 2 ** 20 }, outside, 'pressure design thickness'],
    [
      'a wall of D/6',
      'pipe/design-thickness-inside',
      { ...wall, insideDiameter: 4, allowableStress: 6 * 2 ** 20, weldStrengthFactor: 0.5, pressure: 2 ** 20 },
      outside,
      'pressure design thickness',
    ],
    ['a strain that the mismatch takes', 'laminate/allowable-strain', strain, unsolved, 'defaultStrain'],
    [
      'a live pressure that takes the pipe',
      'laminate/thickness-sharing-live',
      { ...shared, ...moduli, pressure: 2 ** 21 },
      unsolved,
      'livePressure',
    ],
    [
      'a live pressure that takes the pipe',
      'laminate/pressure-sharing-live',
      { ...shared, ...moduli, laminateThickness: 0.01 },
      unsolved,
      'livePressure',
    ],
    [
      'a live pressure that takes the pipe',
      'laminate/stress-left-at-work',
      { ...shared, substrateWall: 2 ** -6, axialForce: 0 },
      unsolved,
      'allowableStress',
    ],
    [
      'soil that takes more than the strain',
      'laminate/pressure-ring-bending',
      { ...bent, ringMoment: 1.001 * soil.ringMoment },
      unsolved,
      'laminateThickness',
    ],
    [
      'a pressure above the ceiling',
      'laminate/thickness-slot',
      { ...slot, serviceFactor: 0.5, pressure: 0.5001 * slotCeiling },
      unsolved,
      'pressure',
    ],
    [
      'a pressure above the ceiling',
      'laminate/thickness-ring',
      { ...ring, serviceFactor: 0.5, pressure: 0.5001 * ringCeiling },
      unsolved,
      'pressure',
    ],
    [
      'a laminate that carries all',
      'laminate/wide-slot-resistance',
      { ...wide, energyReleaseRate: 200, serviceFactor: 1, bondedShare: 1 },
      invalid,
      'bondedShare',
    ],
    [
      'a factor above one',
      'laminate/thickness-long-term',
      { ...longTerm, performanceFactor: 1.001 },
      invalid,
      'performanceFactor',
    ],
    [
      'a factor above one',
      'laminate/pressure-long-term',
      { ...longTerm, laminateThickness: 0.01, performanceFactor: 1.001 },
      invalid,
      'performanceFactor',
    ],
    ['a bend of D/2', 'laminate/bend-factor', { bendRadius: 0.25, outsideDiameter: 0.5 }, invalid, 'bendRadius'],
    ['a bend below D/2', 'laminate/bend-factor', { bendRadius: 0.2, outsideDiameter: 0.5 }, invalid, 'bendRadius'],
    ['a bend of D/2', 'wrap/overlap-on-bend', { ...bend, bendRadius: 0.25, lineRadius: 0.25 }, invalid, 'bendRadius'],
    ['a line outside the bend', 'wrap/overlap-on-bend', { ...bend, lineRadius: 1.001 }, invalid, 'lineRadius'],
    [
      'less than on straight pipe',
      'laminate/thickness-as-straight',
      { thickness: 0.01, stressFactor: 0.999 },
      invalid,
      'stressFactor',
    ],
    [
      'water that boils',
      'site/moist-air-from-wet-bulb',
      { dryBulb: boiling, wetBulb: boiling, pressure: site.saturationPressureAshrae({ temperature: boiling }) },
      outside,
      'wetBulb',
    ],
    ['a vapour beyond any', 'site/dew-point-from-vapour-pressure', { vapourPressure: 1e11 }, outside, 'vapourPressure'],
    ['hardly any stress', 'laminate/maximum-strain-ratio', unstressed, invalid, 'strength ratio'],
    [
      'a rate of nothing',
      'mechanics/arrhenius-rate',
      { frequencyFactor: 1, activationEnergy: 1e6, temperature: 100 },
      outside,
      'temperature',
    ],
    ['a wrap that gains volume', 'mechanics/wrapped-cylinder', alike(0.501), invalid, 'hoopToAxial'],
    [
      'two like times',
      'cure/isoconversional-time',
      { ...times, secondTime: 3600, temperature: 290 },
      outside,
      'secondTime',
    ],
  ])('does at %s: %s', (_, id, given, code, parameter) => {
    expect(refusalOf(id, given)).toMatchObject({ code, parameter });
  });

  const moist = { dryBulb: temperature.degC(1), wetBulb: temperature.degC(0), pressure: 101325 };

  it.each<readonly [string, string, Given]>([
    [
      '0.385 S E',
      'pipe/design-thickness-outside',
      { ...wall, temperatureCoefficient: 1, allowableStress: 1e8, pressure: 0.385 * 1e8 },
    ],
    ['a factor of one', 'laminate/thickness-long-term', { ...longTerm, performanceFactor: 1 }],
    ['a factor of one', 'laminate/pressure-long-term', { ...longTerm, laminateThickness: 0.01, performanceFactor: 1 }],
    ['soil that takes just the strain', 'laminate/pressure-ring-bending', bent],
    [
      'a pressure below the ceiling',
      'laminate/thickness-slot',
      { ...slot, serviceFactor: 0.5, pressure: 0.4999 * slotCeiling },
    ],
    [
      'a pressure below the ceiling',
      'laminate/thickness-ring',
      { ...ring, serviceFactor: 0.5, pressure: 0.4999 * ringCeiling },
    ],
    ['the outside of the bend', 'wrap/overlap-on-bend', { ...bend, lineRadius: 1 }],
    ['that of straight pipe', 'laminate/thickness-as-straight', { thickness: 0.01, stressFactor: 1 }],
    ['the coldest of the span', 'site/saturation-pressure-ashrae', { temperature: 173.15 }],
    ['water at its freezing point', 'site/vapour-pressure-from-wet-bulb', moist],
    ['a wrap that nearly keeps its volume', 'mechanics/wrapped-cylinder', alike(0.499)],
  ])('does not at %s: %s', (_, id, given) => {
    expect(refusalOf(id, given)).toBeUndefined();
  });

  it('of D/6 counts the allowance on both sides of the bore', () => {
    // t below D/6 with D = d + 2c + 2t comes to 2 P below S E W - P (1 - Y), whatever the allowance is.
    const bore = { ...wall, insideDiameter: 4, allowableStress: 1e8, weldStrengthFactor: 0.5, allowance: 0.4 };
    const at = (pressure: number) => refusalOf('pipe/design-thickness-inside', { ...bore, pressure });
    expect(at((0.999 * 0.5e8) / 3)).toBeUndefined();
    expect(at((1.001 * 0.5e8) / 3)).toMatchObject({ code: outside });
    expect(refusalOf('pipe/minimum-wall', { ...wall, pressure: 2 ** 20 })?.limit).toBe(1);
  });
});

describe('two measurements at one temperature, or in the wrong order', () => {
  const pair = { firstTemperature: 280, secondTemperature: 280 };
  it.each<readonly [string, Given, string]>([
    ['cure/activation-energy-from-rates', { firstRate: 2, secondRate: 1 }, 'secondRate'],
    ['cure/activation-energy-from-times', { firstTime: 1, secondTime: 2 }, 'secondTime'],
    ['cure/isoconversional-time', { firstTime: 1, secondTime: 2, temperature: 290 }, 'secondTime'],
  ])('have no energy, and each is told apart: %s', (id, given, slower) => {
    expect(refusalOf(id, { ...given, ...pair })).toMatchObject({
      code: 'invalid-input',
      parameter: 'secondTemperature',
      value: 280,
      unit: 'K',
      constraint: expect.stringMatching(/^must differ/u),
    });
    expect(refusalOf(id, { ...given, ...pair, secondTemperature: 300 })).toMatchObject({
      code: 'outside-validity',
      parameter: slower,
      value: given[slower],
      unit: slower === 'secondRate' ? '1/s' : 's',
      constraint: expect.stringMatching(/^the hotter of the two/u),
    });
  });
});

describe('where one limit meets another', () => {
  it('a vapour that no temperature saturates is told so, not by a temperature', () => {
    expect(refusalOf('site/dew-point-from-vapour-pressure', { vapourPressure: 1e11 })?.value).toBe('beyond any');
    expect(refusalOf('site/dew-point-from-vapour-pressure', { vapourPressure: 1e6 })?.value).toBeGreaterThan(100);
  });

  it('a step that waits for none of the list is told which there are', () => {
    const steps = ['clean', 'wrap'].map((name) => ({ name, duration: 60 }));
    const lost = { steps, links: [{ step: 'wrap', after: 'seal' }] };
    expect(refusalOf('site/schedule', lost)?.constraint).toBe('must be one of clean, wrap');
  });

  it('a forecast is tried for a year and no hour more', () => {
    expect(site.hoursToTry(time.hour(8784))).toBe(8784);
    expect(() => site.hoursToTry(time.hour(8785))).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter: 'site.forecast', value: 8785, limit: 8784 }),
    );
  });

  it('mixing and soaking must leave some of the working time', () => {
    const at = (workingTime: number) => timeLeftToLay({ workingTime, mixingTime: 60, soakTime: 60 } as never);
    expect(() => at(120)).toThrow(expect.objectContaining({ code: 'no-solution', limit: 120 }));
    expect(at(121)).toBe(1);
  });

  it('a pass of the width of its tape is two turns', () => {
    const tape = { outsideDiameter: 0.3, tapeWidth: 0.1, overlap: 0.5, layerThickness: 0.001 };
    const [found] = wrap.staggeredPasses({ ...tape, passes: 1, overallLength: 1, stagger: 0 } as never).rows;
    const { axialWidth = Number.NaN } = found ?? {};
    const narrow = wrap.staggeredPasses({ ...tape, passes: 1, overallLength: axialWidth, stagger: 0 } as never);
    expect(narrow.tapeLength / (2 * Math.PI * (0.3 + 0.001 / 0.5))).toBeCloseTo(1, 12);
    const stepped = { ...tape, passes: 3, overallLength: 0.3, stagger: 0.125 };
    expect(refusalOf('wrap/staggered-passes', stepped)?.value).toBeCloseTo(0.3 - 0.25, 12);
  });

  it('a wall of nothing is no input, and one that the supplement takes is no solution', () => {
    const at = (walls: number[], supplementalThickness: number) => () =>
      pipe.mawpAll(
        { ...wall, wallThickness: Float64Array.from(walls), supplementalThickness } as never,
        new Float64Array(walls.length),
      );
    expect(at([0.5, 0], 0)).toThrow(expect.objectContaining({ code: 'invalid-input', parameter: 'wallThickness[1]' }));
    expect(at([0.5, 0.25], 0.25)).toThrow(expect.objectContaining({ code: 'no-solution' }));
  });

  it('a loss that just meets the allowed factor is accepted', () => {
    const loss = {
      insideDiameter: 0.5,
      correctedWall: 0.01,
      measuredMinimum: 0.006,
      defectLength: 0.1,
      workingPressure: 1e6,
    };
    const { remainingStrengthFactor } = pipe.localMetalLoss(loss as never);
    const met = pipe.localMetalLoss({ ...loss, allowableFactor: remainingStrengthFactor } as never);
    expect([met.accepted, met.reducedPressure]).toEqual([true, 1e6]);
  });

  it('a pad of half the pipe is the widest', () => {
    expect(seal.padHalfAngle({ padDiameter: Math.PI, outsideDiameter: 2 } as never)).toBe(Math.PI / 2);
  });
});
