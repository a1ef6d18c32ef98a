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
