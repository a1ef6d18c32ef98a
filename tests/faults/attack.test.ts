import { describe, expect, it } from 'vitest';
import { isCaseError, parseCase } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { type CaseFile, leak, loss, type Paths, withPaths } from './cases.js';

/** What somebody found who read no code and wanted to hurt a person with a case that the doors accept. */

const verdict = (file: CaseFile, changes: Paths): string => {
  try {
    return designRepair(parseCase(JSON.stringify(withPaths(file, changes))).case).verdict;
  } catch (error) {
    if (isCaseError(error)) return 'refused';
    throw error;
  }
};

describe('the seal of a live leak', () => {
  const sealLimit = (changes: Paths): number => {
    const { seal } = designRepair(parseCase(JSON.stringify(withPaths(leak, changes))).case);
    return seal === undefined || seal === 'none' ? Number.NaN : seal.highestPressure;
  };

  it('presses on the wall that is surely there: an error of its reading counts as metal that is gone', () => {
    const wall = { 'defect.remainingWall': '3.1 mm', 'defect.readingError': '0.9 mm' };
    const gone = { 'defect.remainingWall': '2.2 mm', 'defect.readingError': 'none' };
    expect(sealLimit(wall)).toBeCloseTo(sealLimit(gone), 6);
    expect(sealLimit(wall)).toBeLessThan(sealLimit({ ...wall, 'defect.readingError': 'none' }));
  });

  it('is not designed where the error takes the whole wall', () => {
    const wall = { 'defect.remainingWall': '0.4 mm', 'defect.readingError': '0.4 mm' };
    expect(verdict(leak, wall)).not.toBe('designed');
  });

  it('holds what the line carries: a gas in the hole of a liquid line is refused', () => {
    const gas = { phase: 'gas', molarMass: '28 g/mol', heatCapacityRatio: 1.4, atmosphere: '1.013 bar' };
    expect(verdict(leak, { 'seal.fluid': gas })).toBe('refused');
  });
});

describe('bands across a pad of 54 mm', () => {
  const seal = (changes: Paths) => {
    const design = designRepair(parseCase(JSON.stringify(withPaths(leak, changes))).case);
    if (design.seal === undefined || design.seal === 'none') throw new Error(`no seal: ${design.verdict}`);
    return { ...design.seal, beside: design.warnings.some(({ text }) => text.includes('wider than the pad')) };
  };

  it('hold what they hold over the pad: 20 bands of 20 mm no more than 54/20 of one', () => {
    const [one, two, many] = [1, 2, 20].map((count) => seal({ 'seal.band.count': count }));
    expect(Number(one?.fastenerTension) / Number(two?.fastenerTension)).toBeCloseTo(2, 9);
    expect(Number(one?.fastenerTension) / Number(many?.fastenerTension)).toBeCloseTo(2.7, 9);
    expect([two?.beside, many?.beside]).toEqual([false, true]);
  });

  it('hold no higher pressure by what lies beside it', () => {
    const limits = [3, 20].map((count) => seal({ 'seal.band.count': count, 'seal.siteLimit': '50 bar' }));
    expect(limits[0]?.limitedBy).toBe('pipe');
    expect(limits[1]?.highestPressure).toBeCloseTo(limits[0]?.highestPressure ?? Number.NaN, 6);
  });
});

describe('a pull along the pipe', () => {
  const pulled = (axialForce: string): Paths => ({ 'loads.axialForce': axialForce });
  const limitAt = (given: Paths): number => {
    // By the metal: the line is as strong as it has to be for that.
    const changes = { ...given, 'service.designPressure': '300 bar' };
    const { line } = designRepair(parseCase(JSON.stringify(withPaths(leak, changes))).case);
    return line !== undefined && 'highestPressure' in line ? (line.highestPressure ?? Number.NaN) : Number.NaN;
  };

  it('lowers what a leak under pressure bears while people work on it, and a strong one leaves nothing', () => {
    const wide = { 'defect.circumferentialWidth': '200 mm', 'defect.holeDiameter': '4 mm' };
    // The seal is tightened for 20 kPa, and no more is left beside it.
    expect(limitAt({ ...wide, ...pulled('400 kN') })).toBe(20e3);
    expect(limitAt({ ...wide, ...pulled('900 kN') })).toBe(0);
    expect(verdict(leak, { ...wide, ...pulled('900 kN') })).not.toBe('designed');
  });

  it('goes past the hole by the sound wall beside it, and a push as hard as a pull', () => {
    const wide = { 'defect.circumferentialWidth': '200 mm' };
    expect(limitAt({ ...wide, ...pulled('-400 kN') })).toBe(limitAt({ ...wide, ...pulled('400 kN') }));
  });

  it('is no load that the sound pipe cannot bear: 1,100 kN on a 6 in pipe, pull or push', () => {
    expect(verdict(loss, pulled('1100 kN'))).toBe('not repairable');
    expect(verdict(loss, pulled('-1100 kN'))).toBe('not repairable');
  });

  it('is warned of at the permit where the sound pipe passes its allowable stress', () => {
    const warned = (force: string): boolean =>
      designRepair(parseCase(JSON.stringify(withPaths(loss, pulled(force)))).case).warnings.some(
        ({ text, step }) => step === 'permit' && text.includes('by the stated loads'),
      );
    // 40 bar make 24 MPa along the pipe, 350 kN 97: past the 138 MPa of the row only with 450 kN.
    expect([warned('350 kN'), warned('450 kN')]).toEqual([false, true]);
  });

  it('is warned of by the limit of the pipeline code where the case gives no allowable stress', () => {
    const unstated = { 'pipe.material.allowableStress': undefined };
    const warned = (force: string): boolean =>
      designRepair(parseCase(JSON.stringify(withPaths(loss, { ...unstated, ...pulled(force) }))).case).warnings.some(
        ({ amounts, step }) => step === 'permit' && amounts?.[0]?.name === 'limit along the pipe',
      );
    // 0.75 of 241 MPa are 181; 40 bar make 24 MPa along the pipe, 500 kN 139, 600 kN 166.
    expect([warned('500 kN'), warned('600 kN'), warned('-500 kN'), warned('-660 kN')]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  it('is in the end load that the seal does not carry', () => {
    const endLoad = (changes: Paths): number => {
      const { seal } = designRepair(parseCase(JSON.stringify(withPaths(leak, changes))).case);
      return seal === undefined || seal === 'none' ? Number.NaN : seal.endLoadNotCarried;
    };
    expect(endLoad(pulled('30 kN')) - endLoad(pulled('none'))).toBeCloseTo(30e3, 6);
    expect(endLoad(pulled('-30 kN'))).toBe(endLoad(pulled('none')));
  });
});

describe('a pressure carried lately', () => {
  const limitOf = (changes: Paths): number | undefined => {
    const wall = {
      'defect.profile': undefined,
      'defect.remainingWall': '2 mm',
      'line.pressure': '1 bar',
      'assessment.designFactor': 0.5,
    };
    const { line } = designRepair(parseCase(JSON.stringify(withPaths(loss, { ...wall, ...changes }))).case);
    return line !== undefined && 'highestPressure' in line ? line.highestPressure : undefined;
  };
  const read = (date: string): Paths => ({ 'service.recentPressure': { pressure: '39 bar', date } });
  const unread = limitOf({}) ?? Number.NaN;

  it.each([
    ['counts 60 days before the survey', '2026-03-07', true],
    ['is none 61 days before it', '2026-03-06', false],
    ['is none ten years before it', '2016-03-06', false],
  ])('%s', (_, date, counts) => {
    expect(Number(limitOf(read(date))) > unread).toBe(counts);
  });

  it('is none where nobody wrote down the day of the survey', () => {
    expect(limitOf({ ...read('2026-05-01'), date: undefined })).toBe(unread);
  });
});

describe('a pipe and a laminate that share the load', () => {
  it('share less where the laminate is laid on a line under pressure: never thinner, and past what is left not at all', () => {
    const thickness = (line: object): number => {
      const sharing = { 'repair.method': 'substrate sharing load', 'service.designPressure': '60 bar', line };
      const design = designRepair(parseCase(JSON.stringify(withPaths(loss, sharing))).case);
      const biaxial = design.laminate?.thickness.candidates.find(({ criterion }) =>
        criterion.startsWith('both stresses'),
      );
      return biaxial?.value ?? Number.NaN;
    };
    const at = (pressure: string) => thickness({ state: 'under pressure', pressure, writtenProcedure: 'WP-1' });
    const empty = thickness({ state: 'empty, dry, isolated, vented' });
    expect(at('5 bar')).toBeGreaterThan(empty);
    expect(at('10 bar')).toBeGreaterThan(at('5 bar'));
  });
});

describe('a line under pressure', () => {
  const live = { state: 'under pressure', pressure: '2 bar', writtenProcedure: 'WP-1' };
  const toxic = { 'service.hazards': ['flammable', 'toxic'], 'repair.class': 3, assessment: { designFactor: 0.72 } };

  it.each(['none', 'None', 'TBD', 'n/a', 'N.A.', 'no', '-', '?', 'to follow'])(
    'is not worked on by a procedure called "%s"',
    (writtenProcedure) => {
      expect(verdict(loss, { ...toxic, line: { ...live, writtenProcedure } })).toBe('not repairable');
      expect(verdict(loss, { ...toxic, line: live })).toBe('designed');
    },
  );

  it('has no static head of gas', () => {
    const line = { ...live, state: 'static head' };
    expect(verdict(loss, { 'service.phase': 'gas', 'repair.class': 3, line })).toBe('refused');
  });

  it.each([
    ['on no day', 'tomorrow'],
    ['after the survey', '2026-12-31'],
  ])('has carried no pressure %s', (_, date) => {
    const dated = { date: '2026-03-11', 'service.recentPressure': { pressure: '1 bar', date } };
    expect(verdict(loss, dated)).toBe('refused');
    expect(verdict(loss, { ...dated, 'service.recentPressure': { pressure: '1 bar', date: '2026-03-01' } })).toBe(
      'designed',
    );
  });
});

describe('the factors of a seal', () => {
  const factors = ['seal.band.factor', 'seal.band.holdingFactor', 'seal.sheet.factor', 'seal.pipeFactor'];
  const lowered = (value: number, fields = factors): (string | undefined)[] =>
    designRepair(parseCase(JSON.stringify(withPaths(leak, Object.fromEntries(fields.map((at) => [at, value]))))).case)
      .warnings.filter(({ text, step }) => step === 'seal' && text.includes('less than a seal keeps'))
      .map(({ text }) => text.split(' ')[0]);

  it('are each warned of below 1.25, and the example as it stands is not', () => {
    expect(lowered(1)).toEqual(factors);
    expect(lowered(1.24)).toEqual(factors);
    expect(lowered(1.25)).toEqual([]);
    expect(lowered(1, [])).toEqual([]);
  });

  it.each(factors)('are warned of one by one: %s', (field) => {
    expect(lowered(1.1, [field])).toEqual([field]);
  });

  it.each([
    [0.001, 'refused'],
    [0.049, 'refused'],
    [0.05, 'designed'],
  ])('do not make up for a nut factor that no thread has: %d is %s', (nutFactor, expected) => {
    expect(verdict(leak, { 'seal.fastener.nutFactor': nutFactor })).toBe(expected);
  });
});

describe('a laminate colder than its qualification', () => {
  const down = (lowest: string, changes: Paths = {}) => ({ 'laminate.lowestTemperature': lowest, ...changes });
  const refusals = (changes: Paths): [unknown, unknown][] =>
    designRepair(parseCase(JSON.stringify(withPaths(loss, changes))).case)
      .reasons.filter(({ text }) => text.includes('colder than the repair system was qualified for'))
      .map(({ found, limit }) => [found && 'value' in found && found.value, limit && 'value' in limit && limit.value]);

  it('is refused with the coldest steel in service and the limit, and not at the limit itself', () => {
    const service = { 'service.lowestTemperature': '-12 degC' };
    expect(refusals(down('-10 degC', service))).toEqual([[261.15, 263.15]]);
    expect(verdict(loss, down('-10 degC', service))).toBe('not repairable');
    expect(refusals(down('-12 degC', service))).toEqual([]);
  });

  it('is refused by the steel of the day of the work too', () => {
    const day = { 'service.lowestTemperature': undefined, 'site.pipeTemperature': '4 degC' };
    expect(refusals(down('5 degC', day))).toEqual([[277.15, 278.15]]);
    expect(refusals(down('4 degC', day))).toEqual([]);
  });
});

describe('the test water of a pipe whose modulus is stated', () => {
  it('stiffens with the pipe: pressure for each kelvin by the modulus of the case', () => {
    const perKelvin = (modulus: string): number => {
      const stated = withPaths(loss, { 'pipe.material.modulus': modulus });
      const design = designRepair(parseCase(JSON.stringify(stated)).case);
      return design.acceptance?.pressureTest.pressurePerKelvin ?? Number.NaN;
    };
    // What gives way to the water: c/p_0 of the water itself, D k/(t E) of the pipe round it.
    const gives = (E: number) => 4.5e-5 / 101_560 + ((6.625 / 0.28) * 0.91) / E;
    expect(perKelvin('207 GPa') / perKelvin('170 GPa')).toBeCloseTo(gives(170e9) / gives(207e9), 2);
  });
});
