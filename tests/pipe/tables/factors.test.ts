import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, ratio, stress, type Temperature, temperature } from '../../../src/quantity/index.js';
import {
  type ClassLocation,
  coefficientY,
  type GasPipelineSituation,
  gasCodeDesignFactor,
  gasDesignFactor,
  gasHeatFactor,
  gasJointFactor,
  gasTemperatureFactor,
  gasUnknownYieldStrength,
  liquidCodeDesignFactor,
  liquidDesignFactor,
  liquidJointFactor,
  millUnderTolerance,
  plateUnderTolerance,
  processJointFactor,
  weldStrengthFactor,
} from '../../../src/tables.js';

describe('factors of 49 CFR 192', () => {
  it('fall with the class location, and no situation raises one', () => {
    const classes: readonly ClassLocation[] = [1, 2, 3, 4];
    expect(classes.map((c) => gasDesignFactor(c, 'none of these').value)).toEqual([0.72, 0.6, 0.5, 0.4]);
    const situations: readonly GasPipelineSituation[] = [
      'uncased crossing or encroachment',
      'supported by a bridge',
      'fabricated assembly',
      'compressor, regulating or measuring station',
      'platform or riser',
    ];
    const lowered = situations.map((situation) => classes.map((c) => gasDesignFactor(c, situation).value));
    expect(lowered).toEqual([
      [0.6, 0.5, 0.5, 0.4],
      [0.6, 0.6, 0.5, 0.4],
      [0.6, 0.6, 0.5, 0.4],
      [0.5, 0.5, 0.5, 0.4],
      [0.5, 0.5, 0.5, 0.4],
    ]);
  });

  it('for joints depend on specification and pipe class', () => {
    expect(gasJointFactor('API 5L', 'electric resistance welded').value).toBe(1);
    expect(gasJointFactor('ASTM A53', 'furnace butt welded').value).toBe(0.6);
    expect(gasJointFactor('other', 'over NPS 4').value).toBe(0.8);
    expect(() => gasJointFactor('ASTM A106', 'furnace butt welded')).toThrow('for ASTM A106, one of seamless');
    expect(() => gasJointFactor('toString', 'seamless')).toThrow('must be one of ASTM A53');
  });

  it('for temperature are 1 to 250 degF, the entries of the table at them, and linear in degF between', () => {
    expect(gasTemperatureFactor(temperature.degF(-20)).value).toBe(1);
    const entries = [250, 300, 350, 400, 450].map((F) => gasTemperatureFactor(temperature.degF(F)).value);
    expect(entries).toEqual([1, 0.967, 0.933, 0.9, 0.867]);
    expect(gasTemperatureFactor(temperature.degF(275)).value).toBeCloseTo(0.9835, 12);
    expect(gasTemperatureFactor(temperature.degF(440)).value).toBeCloseTo(0.8736, 12);
    expect(() => gasTemperatureFactor(temperature.degF(450.1))).toThrow('49 CFR 192.115');
    expect(() => gasTemperatureFactor(temperature.kelvin(0))).not.toThrow();
    for (const bad of [Number.NaN, -1])
      expect(() => gasTemperatureFactor(bad as Temperature)).toThrow('temperature is');
  });

  it('never rise with temperature', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 505, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (T, more) => {
          fc.pre(T + more <= temperature.degF(450));
          const [cold, hot] = [
            gasTemperatureFactor(temperature.kelvin(T)),
            gasTemperatureFactor(temperature.kelvin(T + more)),
          ];
          expect(hot.value).toBeLessThanOrEqual(cold.value + 1e-15);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('say what was read in the regulation and what is recalled', () => {
    expect(gasDesignFactor(1, 'none of these').tag).toBe('published');
    expect([gasHeatFactor.value, gasHeatFactor.tag]).toEqual([0.75, 'published']);
    expect([gasUnknownYieldStrength.value, gasUnknownYieldStrength.tag]).toEqual([stress.psi(24000), 'recalled']);
  });

  it('are refused for a class or a situation that does not exist', () => {
    expect(() => gasDesignFactor(5 as ClassLocation, 'none of these')).toThrow('classLocation is 5');
    expect(() => gasDesignFactor(1, 'lake' as GasPipelineSituation)).toThrow('situation is lake');
  });
});

describe('factors of 49 CFR 195 and of the pipeline codes', () => {
  it('are those of the tables', () => {
    expect(liquidDesignFactor('none of these').value).toBe(0.72);
    expect(liquidDesignFactor('platform or riser').value).toBe(0.6);
    expect(liquidDesignFactor('cold expanded and then heated').value).toBe(0.54);
    expect(liquidJointFactor('furnace lap welded').value).toBe(0.8);
    expect(liquidJointFactor('furnace butt welded').value).toBe(0.6);
    expect(liquidJointFactor('seamless').value).toBe(1);
    expect(gasCodeDesignFactor('class 1, division 1')).toMatchObject({ value: 0.8, tag: 'recalled' });
    expect(gasCodeDesignFactor('class 4')).toMatchObject({ value: 0.4, tag: 'secondary' });
    expect(liquidCodeDesignFactor('general')).toMatchObject({ value: 0.72, tag: 'secondary' });
    expect(liquidCodeDesignFactor('slurry')).toMatchObject({ value: 0.8, tag: 'recalled' });
  });

  it('are refused for words that the tables do not have', () => {
    expect(() => liquidDesignFactor('slurry' as 'platform or riser')).toThrow('situation is slurry');
    expect(() => liquidJointFactor('glued' as 'seamless')).toThrow('joint is glued');
    expect(() => gasCodeDesignFactor('class 5' as 'class 4')).toThrow('location is class 5');
    expect(() => liquidCodeDesignFactor('gas' as 'slurry')).toThrow('service is gas');
  });
});

describe('factors of process piping', () => {
  it('Y is 0.4 for cool steel and rises to 0.7 in the creep range, later for austenitic steel', () => {
    const Y = (material: 'ferritic steel' | 'austenitic steel', celsius: number) =>
      coefficientY(material, temperature.degC(celsius)).value;
    expect([20, 482, 510, 538, 677].map((c) => Y('ferritic steel', c))).toEqual([0.4, 0.4, 0.5, 0.7, 0.7]);
    expect([20, 566, 593, 621, 649].map((c) => Y('austenitic steel', c))).toEqual([0.4, 0.4, 0.5, 0.7, 0.7]);
    expect(Y('ferritic steel', 496)).toBeCloseTo(0.45, 12);
    expect(() => Y('ferritic steel', 678)).toThrow('304.1.1');
  });

  it('W is 1 below 427 degC for every steel, and falls for chromium-molybdenum steel', () => {
    const materials = [
      'carbon steel',
      'chromium-molybdenum steel',
      'austenitic steel, autogenous and annealed',
      'austenitic steel with filler metal',
    ] as const;
    for (const material of materials) {
      for (const celsius of [-40, 20, 426])
        expect(weldStrengthFactor(material, temperature.degC(celsius)).value).toBe(1);
      expect(() => weldStrengthFactor(material, temperature.degC(650))).toThrow('302.3.5');
    }
    const chromium = [427, 454, 482, 510, 538, 566, 593, 621, 649].map(
      (celsius) => weldStrengthFactor('chromium-molybdenum steel', temperature.degC(celsius)).value,
    );
    expect(chromium).toEqual([1, 0.95, 0.91, 0.86, 0.82, 0.77, 0.73, 0.68, 0.64]);
    expect(weldStrengthFactor('austenitic steel with filler metal', temperature.degC(538))).toMatchObject({
      value: 0.95,
      tag: 'recalled',
    });
    expect(() => weldStrengthFactor('carbon steel', temperature.degC(600))).toThrow('302.3.5');
  });

  it('E and the under-tolerances carry their tags', () => {
    expect(processJointFactor('seamless')).toMatchObject({ value: 1, tag: 'secondary' });
    expect(processJointFactor('electric resistance welded')).toMatchObject({ value: 0.85, tag: 'secondary' });
    expect(processJointFactor('electric fusion welded, single butt')).toMatchObject({ value: 0.8, tag: 'recalled' });
    expect(millUnderTolerance).toMatchObject({ value: ratio.percent(12.5), tag: 'secondary' });
    expect(length.inMm(plateUnderTolerance.value)).toBeCloseTo(0.25, 12);
    expect(() => processJointFactor('glued' as 'seamless')).toThrow('joint is glued');
  });
});
