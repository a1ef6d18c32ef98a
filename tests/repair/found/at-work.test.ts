import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { caseOf, designOf } from '../../faults/answers.js';
import { emptyLeak, live, loss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** Which pressure the thinned pipe carries while people work on it, and what sets it. */

const standing = withPaths(quietLoss, {
  ...live('5 bar'),
  date: '2026-05-06',
  'defect.remainingWall': '1.5 mm',
  'service.designPressure': '50 bar',
});

const lineOf = (changes: Paths, file = standing) => {
  const { line } = designOf(withPaths(file, changes));
  if (line?.limitedBy === undefined) throw new Error('the line was not judged');
  return line;
};
const lately = (date: string): Paths => ({ 'service.recentPressure': { pressure: '46 bar', date } });

describe('a pressure that the line carried lately', () => {
  const safePressure = (): number => lineOf({}).highestPressure ?? Number.NaN;

  it('counts for two months with its margin, where that is more than the safe pressure', () => {
    const { limitedBy, highestPressure } = lineOf(lately('2026-03-07'));
    expect(limitedBy).toBe('recent pressure');
    expect(highestPressure).toBeGreaterThan(safePressure());
    expect(highestPressure).toBeLessThanOrEqual(0.8 * 46e5);
  });

  it.each([
    ['read a day too early', lately('2026-03-06')],
    ['of which nobody knows how long ago it was', { ...lately('2026-03-07'), date: undefined }],
  ])('counts for nothing and is warned of: %s', (_, changes) => {
    const { limitedBy, highestPressure } = lineOf(changes);
    expect([limitedBy, highestPressure]).toEqual(['safe pressure of the thinned wall', safePressure()]);
    const told = (more: Paths): number =>
      designOf(withPaths(standing, more)).warnings.filter(({ text }) => text.includes('carried lately')).length;
    expect([told(changes), told(lately('2026-03-07')), told({})]).toEqual([1, 0, 0]);
  });

  it('counts for nothing where it is less than the safe pressure', () => {
    const low = { 'service.recentPressure': { pressure: '6 bar', date: '2026-05-01' } };
    expect(lineOf(low)).toMatchObject({
      limitedBy: 'safe pressure of the thinned wall',
      highestPressure: safePressure(),
    });
  });

  it('counts for nothing where no method predicts a failure, and the record says so there only', () => {
    const recorded = (changes: Paths): boolean => {
      const { record = [] } = designRepair(caseOf(withPaths(standing, changes)), { record: true });
      return record.some(
        (entry) => entry.sort === 'decision' && entry.what.text.includes('carried lately does not count'),
      );
    };
    const noFailure = { 'defect.remainingWall': '1.2 mm' };
    expect(lineOf({ ...noFailure, ...lately('2026-05-01') }).limitedBy).toBe('safe pressure of the thinned wall');
    expect(recorded({ ...noFailure, ...lately('2026-05-01') })).toBe(true);
    expect([recorded(noFailure), recorded(lately('2026-05-01')), recorded({})]).toEqual([false, false, false]);
  });
});

describe('the thinned wall of today', () => {
  it('carries nothing where the reading error takes all of it', () => {
    const gone = { 'defect.remainingWall': '0.5 mm', 'defect.readingError': '0.5 mm', ...lately('2026-05-01') };
    const { line, verdict, reasons } = designOf(withPaths(standing, gone));
    expect(line).toMatchObject({ highestPressure: 0, limitedBy: 'safe pressure of the thinned wall' });
    expect(verdict).toBe('not repairable');
    expect(reasons.map(({ limit }) => limit?.value)).toContain(0);
  });

  it('is judged by the method that is named, but by none that needs a profile: that says nothing of where it errs', () => {
    const file = withPaths(loss, {
      'service.hazards': [],
      'service.contents': 'process water',
      'service.designPressure': '2000 psi',
    });
    const by = (method: string | undefined) => lineOf({ 'assessment.method': method }, file).highestPressure;
    const unnamed = by(undefined);
    expect(by('effective area')).toBe(unnamed);
    expect(by('API 579-1 Level 2')).toBe(unnamed);
    expect(new Set([by('modified B31G'), by('original B31G'), by('DNV-RP-F101')]).size).toBeGreaterThan(1);
  });

  it('may be worked on at the limit itself and not above it', () => {
    const at = lineOf({}).highestPressure ?? Number.NaN;
    const verdict = (pascals: number) => designOf(withPaths(standing, live(`${pascals} Pa`))).verdict;
    expect(verdict(at)).toBe('designed');
    expect(verdict(at * (1 + 1e-9))).toBe('not repairable');
  });
});

describe('the metal beside a hole', () => {
  const hole = withPaths(emptyLeak, { ...live('0.2 bar'), 'service.designPressure': '200 bar', 'repair.class': 3 });

  // Without a seal the line has no pressure: what the metal would bear is read from the refusal above it.
  const limitOf = (changes: Paths) => {
    const { reasons } = designOf(withPaths(hole, { ...live('199 bar'), ...changes }));
    return reasons.find(({ text }) => text.includes('may not be worked on'))?.limit;
  };

  it('limits the line along the pipe where the loss is wide and a force pulls, else round it', () => {
    expect(limitOf({})?.name).toBe('by the metal round the hole');
    const wide = { 'defect.circumferentialWidth': '650 mm', 'defect.axialLength': '10 mm' };
    expect(limitOf(wide)?.name).toBe('by the metal beside the hole, along the pipe');
  });

  it('carries nothing where the reading error takes the wall', () => {
    const gone = { 'defect.remainingWall': '0.1 mm', 'defect.growth': { depth: '0 mm/year', length: '0 mm/year' } };
    expect(limitOf(gone)).toMatchObject({ value: 0, name: 'by the metal round the hole' });
  });
});

it('says nothing of a line whose limit nobody can know', () => {
  const { line, missing } = designOf(withPaths(standing, { assessment: undefined }));
  expect(line).toBeUndefined();
  expect(missing.map(({ field }) => field)).toContain('assessment.designFactor');
});
