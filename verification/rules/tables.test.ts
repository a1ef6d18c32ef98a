import { describe, expect, it } from 'vitest';
import { barcolReadings } from '../../src/acceptance/index.js';
import { degreeOfCure } from '../../src/cure/index.js';
import { kineticSets } from '../../src/cure/kinetics/kinetic-law.js';
import { absolute, type Temperature, temperature } from '../../src/quantity/index.js';
import { magnusSets } from '../../src/site/air/magnus-set.js';
import { saturationPressure, surfaceGate, vapourPressureFromWetBulb } from '../../src/site/index.js';

/** Tables of published and recalled constants, typed in from the notes; no script writes them. */

/** e_0 in hPa, b, c in degrees Celsius, span in degrees Celsius. The upper end of Tetens was chosen here,
 * and its b is 7.5 ln 10. */
const overWater = [
  ['sonntag', 6.112, 17.62, 243.12, -45, 60],
  ['alduchov-eskridge', 6.1094, 17.625, 243.04, -40, 50],
  ['bolton', 6.112, 17.67, 243.5, -30, 35],
  ['tetens', 6.1078, 17.269388197455342, 237.3, 0, 60],
  ['sonntag-ice', 6.112, 22.46, 272.62, -65, 0.01],
] as const;

describe('the coefficients of vapour pressure', () => {
  it('are those of the notes', () => {
    const inCode = magnusSets.map(({ name, atZero, b, c, from, to }) => [name, atZero, b, c, from, to]);
    const inList = overWater.map(([name, hPa, b, c, from, to]) => [name, Number(`${hPa}e2`), b, c, from, to]);
    expect(inCode).toEqual(inList);
  });

  it.each(overWater.slice(0, 4))('of %s give e_0 at 0 degC', (set, hPa) => {
    const found = saturationPressure({ temperature: temperature.degC(0), set: set as 'sonntag' });
    expect(absolute.inPa(found)).toBeCloseTo(100 * hPa, 9);
  });

  it('of the wet bulb are 6.53e-4 (1 + 0.000944 t)', () => {
    const [dryBulb, wetBulb] = [temperature.degC(40), temperature.degC(20)];
    const found = vapourPressureFromWetBulb({ dryBulb, wetBulb, pressure: absolute.Pa(100_000) });
    const atWetBulb = 611.2 * Math.exp((17.62 * 20) / (243.12 + 20));
    expect(found).toBeCloseTo(atWetBulb - 6.53e-4 * (1 + 0.000944 * 20) * 100_000 * 20, 6);
  });
});

describe('the published sets of cure kinetics', () => {
  const perMinute = (value: number): number => value / 60;

  it('are those of the notes', () => {
    expect(kineticSets.map(({ name, law }) => [name, law])).toEqual([
      [
        'two-branch epoxy',
        {
          law: 'two-branch',
          frequencyFactors: [perMinute(2.101e9), perMinute(-2.014e9), perMinute(1.96e5)],
          activationEnergies: [80.7e3, 77.8e3, 56.6e3],
          switchAt: 0.3,
          ceiling: 0.47,
        },
      ],
      [
        'glass-polyester',
        { law: 'autocatalytic', frequencyFactor: perMinute(3.7e22), activationEnergy: 167.4e3, m: 0.524, n: 1.476 },
      ],
      ['two-part polyurethane', { law: 'n-th order', frequencyFactor: 2.344e5, activationEnergy: 43_590, n: 0.87 }],
      [
        'diffusion-limited epoxy',
        {
          law: 'autocatalytic',
          frequencyFactor: 152_800,
          activationEnergy: 66_500,
          m: 0.8129,
          n: 2.736,
          diffusion: { constant: 43.09, atZero: -1.684, perKelvin: 0.005475 },
        },
      ],
    ]);
  });

  it.each(kineticSets.map(({ name }) => [name] as const))('of %s can be run', (parameterSet) => {
    const programme = [0, 600].map((time) => ({ time, temperature: 400 as Temperature }));
    const found = degreeOfCure({ parameterSet, programme, startConversion: 0.01 } as never);
    expect(found).toBeGreaterThan(0.01);
  });
});

/** ASTM D2583, table 1, as recalled: hardness and readings. */
const barcol = {
  homogeneous: [
    [20, 9],
    [30, 8],
    [40, 7],
    [50, 6],
    [60, 5],
    [70, 4],
    [80, 3],
  ],
  reinforced: [
    [30, 29],
    [40, 22],
    [50, 16],
    [60, 10],
    [70, 5],
  ],
} as const;

describe('the readings of an indenter', () => {
  it.each(Object.entries(barcol))('in %s material are those of the table, each from its row on', (material, rows) => {
    rows.forEach(([hardness, readings], index) => {
      const at = (H: number): number => barcolReadings({ hardness: H, material: material as 'reinforced' });
      expect(at(hardness)).toBe(readings);
      expect(at(hardness + 9.99)).toBe(readings);
      if (index > 0) expect(at(hardness - 1e-6)).toBe(rows[index - 1]?.[1]);
    });
  });
});

describe('the salt on prepared steel', () => {
  it('passes only where the precision of one test, 8.2 mg/m2, lies below the limit', () => {
    const gate = (mgPerM2: number) =>
      surfaceGate({
        requiredGrade: 'Sa 2 1/2',
        grade: 'Sa 2 1/2',
        requiredProfile: 60e-6,
        profile: 70e-6,
        sincePreparation: 0,
        openTime: 3600,
        visiblyClean: true,
        rustBloom: false,
        saltLimit: 20e-6,
        saltReadings: [mgPerM2 * 1e-6],
      } as never).reasons.at(-1)?.decision;
    expect([gate(11.799), gate(11.801)]).toEqual(['go', 'wait']);
    expect([gate(28.199), gate(28.201)]).toEqual(['wait', 'stop']);
  });
});
