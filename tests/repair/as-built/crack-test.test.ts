import { describe, expect, it } from 'vitest';
import { type AsBuiltPoint, compareAsBuilt } from '../../../src/repair/index.js';
import { madeOf } from '../../faults/answers.js';
import { leak, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { goodRecord } from '../../faults/records.js';

/** The test for cracks on the day of laying: ninety days are the most. */

const tested = {
  date: '2026-05-20',
  'service.cracking': {
    environment: 'stress corrosion',
    test: { method: 'wet fluorescent magnetic particles', result: 'no crack found', date: '2026-05-12' },
  },
  resin: 'none',
};

const pointOf = (cracking: Paths, laidOn: string | undefined): AsBuiltPoint | undefined => {
  const design = madeOf(withPaths(quietLoss, { ...tested, ...cracking }));
  const record = { ...withPaths(goodRecord(design), { laidOn }), batches: [] };
  return compareAsBuilt(design, record).points.find(({ point }) => point === 'crack test');
};

describe('the test for cracks', () => {
  it.each([
    ['on its own day', '2026-05-12', 'meets', 0],
    ['ninety days later', '2026-08-10', 'meets', 90],
    ['a day more', '2026-08-11', 'does not meet', 91],
  ])('is held to the day of laying: %s', (_, laidOn, verdict, days) => {
    const point = pointOf({}, laidOn);
    expect(point).toMatchObject({ verdict, limit: { value: 90 * 86_400 } });
    expect(point?.found?.value).toBe(days * 86_400);
  });

  it('is not shown where nobody says when the laminate was laid', () => {
    expect(pointOf({}, undefined)).toMatchObject({ verdict: 'not shown', text: expect.stringContaining('the day') });
  });

  it('is none where nothing cracks', () => {
    expect(pointOf({ 'service.cracking': 'none' }, '2026-05-12')).toBeUndefined();
    const design = madeOf(leak);
    const { points } = compareAsBuilt(design, goodRecord(design));
    expect(points.some(({ point }) => point === 'crack test')).toBe(false);
  });
});
