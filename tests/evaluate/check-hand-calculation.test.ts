import { describe, expect, it } from 'vitest';
import { checkHandCalculation } from '../../src/formulas.js';

/** Barlow: 10 MPa on 200 mm by 10 mm is 100 MPa; every other number here is worked out by hand from that. */
const ring = { pressure: '10.37 MPa', outsideDiameter: '203.4 mm', wallThickness: '9.81 mm' };
const check = (claimed: string, given: Readonly<Record<string, string>> = ring) =>
  checkHandCalculation('pipe/hoop-stress', given, claimed);
// 10.37 * 203.4 / (2 * 9.81) = 107.5055…
const RIGHT = (10.37 * 203.4) / 19.62;

describe('a hand calculation', () => {
  it('agrees to the digits that are given, and to no more', () => {
    for (const digits of [2, 3, 4, 5, 6]) {
      const found = check(`${RIGHT.toPrecision(digits)} MPa`);
      expect([found.agrees, found.slips]).toEqual([true, []]);
    }
    expect(check('107.6 MPa').agrees).toBe(false);
    expect(check('107.51 MPa').digits).toBe(5);
  });

  it('is held to the digits before the zeros of a whole number', () => {
    expect(check('110 MPa')).toMatchObject({ agrees: true, digits: 2 });
    expect(check('110.0 MPa')).toMatchObject({ agrees: false, digits: 4 });
    expect(check('110. MPa')).toMatchObject({ agrees: false, digits: 3 });
  });

  it('is read in any unit of the result', () => {
    expect(check(`${((RIGHT * 1e6) / 6894.757293168).toPrecision(6)} psi`).agrees).toBe(true);
    expect(() => check('107.5 mm')).toThrow(/claimed/u);
    expect(() => check('much')).toThrow(/claimed/u);
  });

  it.each([
    ['a radius for the diameter', RIGHT / 2, /radius was taken for outside diameter/u],
    ['the inside diameter for the outside', (10.37 * (203.4 - 19.62)) / 19.62, /inside diameter was taken/u],
    ['inches for millimetres', RIGHT * 25.4, /inches/u],
    ['psi for MPa', (RIGHT * 6894.757293168) / 1e6, /psi where it is in MPa/u],
    ['an atmosphere too many', ((10.37 + 0.101325) * 203.4) / 19.62, /atmosphere was added/u],
    ['diameter and wall swapped', (10.37 * 9.81) / 406.8, /swapped/u],
    ['the 2 forgotten', RIGHT * 2, /factor of 2 is too many/u],
  ] as const)('names %s', (_, claimed, words) => {
    const { slips, message } = check(`${claimed.toPrecision(6)} MPa`);
    expect(slips.join('; ')).toMatch(words);
    expect(message).toContain(slips[0]);
  });

  it('names a forgotten square, in the numbers that were typed', () => {
    // A = pi D^2/4 of 80 mm: 5026.548 mm2; without the square 62.83185.
    const found = checkHandCalculation('seal/circle-area', { diameter: '80 mm' }, '62.832 mm2');
    expect(found.slips).toContain('a power of 2 was forgotten');
  });

  it('names more than one slip where more than one gives the claim', () => {
    expect(check(`${(RIGHT / 2).toPrecision(6)} MPa`).slips.length).toBeGreaterThan(1);
  });

  it('says that no common slip is found, and with two digits only right or wrong', () => {
    expect(check('131.77 MPa').message).toContain('No common slip found');
    expect(check('54 MPa').slips).toEqual([]);
    expect(check('54 MPa').message).toContain('fewer than three digits');
  });

  it('names the coefficients of the other rule set', () => {
    // 2 sqrt(200 * 8) = 80 mm by one set, 2.5 sqrt(200 * 8 / 2) = 70.7107 mm by the other.
    const pipe = { outsideDiameter: '200 mm', wallThickness: '8 mm' };
    const named = (given: Readonly<Record<string, string>>, claimed: string) =>
      checkHandCalculation('laminate/overlap-from-geometry', { ...pipe, ...given }, claimed).slips;
    const words = 'the rule for the overlap of ASME PCC-2 was taken for that of ISO 24817';
    expect(named({}, '70.711 mm')).toContain(words);
    expect(named({ coefficient: '2.5', divisor: '2' }, '80.00 mm')).toContain(
      'the rule for the overlap of ISO 24817 was taken for that of ASME PCC-2',
    );
    // A coefficient that is in neither set has no other one.
    expect(named({ coefficient: '2.2' }, '70.711 mm')).not.toContain(words);
  });

  it('names the leak service factor of the other rule set, class by class', () => {
    // 0.83 * 10^(-0.02088 (10 - 1)) = 0.5385; the other set has 0.333 at any life.
    const given = { designLife: '10 year', firstYear: '0.83', decay: '0.02088' };
    expect(checkHandCalculation('laminate/leak-service-factor', given, '0.3330').slips).toContain(
      'the leak service factor of ASME PCC-2 was taken for that of ISO 24817',
    );
  });
});

describe('a hand calculation of a corroded pipe', () => {
  const [D, t, d, L, flow] = [323.85, 9.53, 4, 120, 410];
  const z = L ** 2 / (D * t);
  const burst = (depth: number, M: number): number =>
    (((flow * 2 * t) / D) * (1 - 0.85 * depth)) / (1 - (0.85 * depth) / M);
  const M = Math.sqrt(1 + 0.6275 * z - 0.003375 * z ** 2);
  const slips = (wrong: number): readonly string[] =>
    checkHandCalculation(
      'pipe/modified-b31g',
      {
        outsideDiameter: `${D} mm`,
        wallThickness: `${t} mm`,
        defectDepth: `${d} mm`,
        defectLength: `${L} mm`,
        flowStress: `${flow} MPa`,
      },
      `${wrong.toPrecision(5)} MPa`,
    ).slips;

  it.each([
    [
      'the wall that is left for what is lost',
      burst((t - d) / t, M),
      'the remaining wall was taken for depth of the defect',
    ],
    ['the whole wall for what is lost', burst(1, M), 'wall thickness was taken for depth of the defect'],
    ['no root of the bulging factor', burst(d / t, M ** 2), 'a square root was forgotten'],
    [
      'the sign of its square term',
      burst(d / t, Math.sqrt(1 + 0.6275 * z + 0.003375 * z ** 2)),
      'a plus was written for a minus',
    ],
  ])('names %s, where that alone gives the claim', (_, wrong, words) => {
    expect(slips(burst(d / t, M))).toEqual([]);
    expect(slips(wrong)).toEqual([words]);
  });
});

describe('a hand calculation with temperatures', () => {
  const shift = (reference: number, warm: number, sign = 1): number =>
    Math.exp(((sign * 55_000) / 8.314462618) * (1 / reference - 1 / warm));
  const slips = (wrong: number): readonly string[] =>
    checkHandCalculation(
      'mechanics/arrhenius-shift',
      { activationEnergy: '55 kJ/mol', referenceTemperature: '23 degC', temperature: '12 degC' },
      wrong.toPrecision(5),
    ).slips;

  it('names 273 in place of 273.15', () => {
    expect(slips(shift(296, 285))).toEqual(['273 was added to degrees Celsius in place of 273.15']);
  });

  it('names degrees Celsius under an exponent', () => {
    expect(slips(shift(23, 12))).toEqual(['every temperature was taken in degrees Celsius where it is in kelvin']);
  });

  it('names a turned sign of an exponent, beside what gives the same number', () => {
    expect(slips(shift(296.15, 285.15))).toEqual([]);
    expect(slips(shift(296.15, 285.15, -1))).toContain('the sign of an exponent was turned');
  });
});
