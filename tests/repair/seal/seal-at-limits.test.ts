import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { caseOf, designOf } from '../../faults/answers.js';
import { emptied, leak, live, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** The seal of a leak at its limits: what it holds, what it says of the jet, and when nobody seals by hand. */

const sealOf = (changes: Paths = {}) => {
  const { seal } = designOf(withPaths(leak, changes));
  if (seal === undefined || seal === 'none') throw new Error('no seal');
  return seal;
};
const recorded = (changes: Paths, file = leak) => {
  const { record = [] } = designRepair(caseOf(withPaths(file, changes)), { record: true });
  return record;
};

const gas: Paths = {
  'service.phase': 'gas',
  'repair.class': 3,
  ...live('0.2 bar'),
  'seal.fluid': { phase: 'gas', molarMass: '18 g/mol', heatCapacityRatio: 1.3, atmosphere: '1.013 bar' },
};

describe('the jet of a leak', () => {
  it('of liquid has a speed and a flow, by the pressure that drives it and its density', () => {
    const { jet } = sealOf();
    expect(jet?.speed).toBeCloseTo(Math.sqrt((2 * 0.2e5) / 1000), 9);
    expect(jet?.volumeFlow).toBeGreaterThan(0);
    expect(jet?.reaction).toBeGreaterThan(0);
    expect(jet).not.toHaveProperty('massFlow');
  });

  it('of gas has a mass and a regime', () => {
    const { jet } = sealOf(gas);
    expect(jet).toMatchObject({ massFlow: expect.any(Number), regime: expect.any(String) });
    expect(jet).not.toHaveProperty('speed');
    expect(jet?.reaction).toBeCloseTo(sealOf().jet?.reaction ?? Number.NaN, 9);
    const cold = sealOf({ ...gas, 'site.pipeTemperature': '10 degC' }).jet?.massFlow ?? Number.NaN;
    expect((jet?.massFlow ?? 0) / cold).toBeCloseTo(Math.sqrt(283.15 / 291.15), 6);
  });

  it('is not described where nothing drives it or nobody says what it is', () => {
    expect(sealOf(emptied)).not.toHaveProperty('jet');
    expect(sealOf({ 'seal.fluid': undefined })).not.toHaveProperty('jet');
  });
});

describe('the band of a seal', () => {
  it('is pulled only against a line under pressure', () => {
    const { fastenerTension, torque, strapStress, contactPressure } = sealOf();
    for (const value of [fastenerTension, torque, strapStress, contactPressure]) expect(value).toBeGreaterThan(0);
    // The torque at the low end of its scatter still gives the tension: T = K d F/(1 - s).
    expect(torque).toBeCloseTo((0.2 * 0.008 * (fastenerTension ?? 0)) / 0.7, 9);
    const loose = sealOf(emptied);
    for (const name of ['fastenerTension', 'torque', 'strapStress', 'contactPressure'])
      expect(loose).not.toHaveProperty(name);
    expect(loose.forceOnPad).toBe(0);
  });

  it.each(['seal.band.factor', 'seal.band.holdingFactor', 'seal.sheet.factor', 'seal.pipeFactor'])(
    'keeps its factor, or the crew is told the number: %s',
    (path) => {
      const told = (factor: number) =>
        designOf(withPaths(leak, { [path]: factor })).warnings.filter(({ text }) => text.startsWith(`${path} is`));
      expect(told(1.25)).toEqual([]);
      const [warning] = told(1.24);
      expect(warning?.step).toBe('seal');
      expect(warning?.amounts?.map(({ value }) => value)).toEqual([1.24, 1.25]);
    },
  );

  it('presses on a sheet no smaller than the pad', () => {
    const { padDiameter } = sealOf();
    const small = (metres: number) =>
      designOf(withPaths(leak, { 'seal.sheet.across': `${metres} m` })).reasons.filter(({ text }) =>
        text.includes('sheet is smaller'),
      );
    expect(small(padDiameter)).toEqual([]);
    const [reason] = small(padDiameter - 1e-4);
    expect(reason?.found?.value).toBeCloseTo(padDiameter - 1e-4, 12);
    expect(reason?.limit?.value).toBeCloseTo(padDiameter, 12);
  });

  it('may be tried up to its highest pressure and not above', () => {
    const { highestPressure } = sealOf();
    const refused = (pascals: number) =>
      designOf(withPaths(leak, { 'line.pressure': `${pascals} Pa` })).reasons.filter(({ text }) =>
        text.includes('may not be sealed'),
      );
    expect(refused(highestPressure)).toEqual([]);
    const [reason] = refused(highestPressure * (1 + 1e-9));
    expect([reason?.found?.value, reason?.limit?.value]).toEqual([highestPressure * (1 + 1e-9), highestPressure]);
  });

  it('leaves to the pipe the end load of the design pressure and the stated force', () => {
    const end = (force: string) => sealOf({ 'loads.axialForce': force }).endLoadNotCarried;
    expect(end('10 kN') - end('none')).toBeCloseTo(10e3, 6);
    expect(end('none') / ((Math.PI / 4) * 0.219075 ** 2 * 6e5)).toBeCloseTo(1, 3);
  });
});

describe('a leak that is sealed by hand', () => {
  const refused = (changes: Paths) =>
    designOf(
      withPaths(leak, { 'seal.siteLimit': '10 bar', 'service.designPressure': '9 bar', ...changes }),
    ).reasons.filter(({ text }) => text.includes('sealed by hand only'));
  const numbers = (changes: Paths): (readonly (number | undefined)[])[] =>
    refused(changes).map(({ found, limit }) => [found?.value, limit?.value]);

  it('has contents no hotter than a hand bears', () => {
    const hot = (degrees: string): Paths => ({
      'site.pipeTemperature': degrees,
      'laminate.resists.temperature': '90 degC',
    });
    expect(refused(hot('321.15 K'))).toEqual([]);
    expect(numbers(hot('322.15 K'))).toEqual([[322.15, 321.15]]);
  });

  it('is under no more pressure than a water main', () => {
    expect(refused({ 'line.pressure': '7 bar' })).toEqual([]);
    expect(numbers({ 'line.pressure': '7.1 bar' })).toEqual([[7.1e5, 7e5]]);
  });

  it('pushes no harder than two hands hold', () => {
    const wide = (bar: string): Paths => ({ 'defect.holeDiameter': '15 mm', 'line.pressure': bar });
    expect(refused(wide('5.6 bar'))).toEqual([]);
    const [push] = numbers(wide('5.7 bar'));
    expect(push?.[0]).toBeCloseTo(2 * (Math.PI / 4) * 0.015 ** 2 * 5.7e5, 3);
    expect(push?.[1]).toBe(200);
  });

  it('is refused for gas and for hazards, and for neither where nothing comes out', () => {
    const dry = { ...emptied, 'service.hazards': ['toxic'], 'repair.class': 3 };
    expect(refused(dry)).toEqual([]);
    expect(refused({ ...gas, ...emptied })).toEqual([]);
    expect(refused({ 'service.hazards': ['toxic'], 'repair.class': 3 })).toHaveLength(1);
    expect(refused(gas)).toHaveLength(1);
  });
});

describe('a seal in the record', () => {
  const attempts = (changes: Paths) =>
    recorded(changes).flatMap((entry) =>
      entry.sort === 'step' && entry.formula === 'seal/attempt' ? [entry.input] : [],
    );

  it('is tried with what the line holds, and with the procedure that the case names', () => {
    const [plain] = attempts({});
    expect(plain).toMatchObject({ hazardous: false, writtenProcedure: true, phase: 'liquid' });
    expect(attempts({ 'line.writtenProcedure': 'none' })[0]).toMatchObject({ writtenProcedure: false });
    expect(attempts(emptied)).toEqual([]);
    expect(attempts({ 'service.hazards': ['toxic'], 'repair.class': 3 })[0]).toMatchObject({ hazardous: true });
  });

  it('has no part where the wall stays, and none where no hole is there yet', () => {
    const headed = (changes: Paths, file = quietLoss): boolean =>
      recorded(changes, file).some((entry) => entry.sort === 'heading' && entry.title === 'Leak seal');
    expect(headed({})).toBe(false);
    expect(headed({ 'defect.remainingWall': '0.5 mm', 'defect.axialLength': '60 mm' })).toBe(true);
    expect(designOf(withPaths(quietLoss, { 'defect.remainingWall': '0.5 mm' })).seal).toBe('none');
    expect(designOf(quietLoss).seal).toBe('none');
    expect(headed({}, leak)).toBe(true);
  });
});

describe('a seal for a wall that goes through only later', () => {
  it('is asked about, since it is not planned today, and the laminate is designed over the hole that will be there', () => {
    const { verdict, missing, seal, laminate } = designOf(
      withPaths(quietLoss, {
        seal: leak['seal'],
        'defect.remainingWall': '0.5 mm',
        'defect.axialLength': '60 mm',
        'service.designPressure': '2 bar',
        'laminate.resists': { contents: 'process water', temperature: '80 degC', statedBy: 'table of the maker' },
        'seal.putty.resists': { contents: 'process water', temperature: '80 degC', statedBy: 'table of the maker' },
      }),
    );
    expect([verdict, seal, laminate?.footprint?.under]).toEqual(['needs input', 'none', 'hole']);
    expect(missing.map(({ field }) => field)).toEqual(['seal']);
    // The circle round 60 mm by 40 mm.
    expect(laminate?.footprint?.diameter).toBeCloseTo(Math.hypot(0.06, 0.04), 9);
  });
});
