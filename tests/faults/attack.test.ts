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
    expect(perKelvin('207 GPa') / perKelvin('100 GPa')).toBeCloseTo(gives(100e9) / gives(207e9), 2);
  });
});
