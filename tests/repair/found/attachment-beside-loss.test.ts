import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** 168.3 x 7.11 mm: API 579-1 wants 1.8 sqrt(154.08 mm * 7.11 mm), 59.6 mm, free of discontinuities beside the loss. */
const named = withPaths(quietLoss, { 'assessment.method': 'API 579-1 Level 1', 'repair.method': 'substrate yielded' });

const noted = (changes: Paths): string[] =>
  designOf(withPaths(named, changes)).warnings.flatMap(({ text }) => (/discontinuity/u.test(text) ? [text] : []));

describe('the nearest attachment beside a loss that API 579-1 judges', () => {
  it('shows by its distance that no discontinuity is too near', () => {
    expect(noted({ 'defect.nearestAttachment': '59.7 mm' })).toEqual([]);
    expect(noted({ 'defect.nearestAttachment': '59.5 mm' })).toEqual([
      expect.stringContaining('the nearest attachment is closer than 1.8 sqrt(D_i t_c)'),
    ]);
    expect(noted({ 'defect.nearestAttachment': undefined })).toEqual([
      expect.stringContaining('no distance to the nearest structural discontinuity was given'),
    ]);
  });

  it('counts at the end of the life, when the loss has grown towards it', () => {
    // 0.1 mm/year over twenty years at both edges.
    const growing = { 'defect.growth': { depth: '0 mm/year', length: '0.1 mm/year' } };
    expect(noted({ ...growing, 'defect.nearestAttachment': '63.7 mm' })).toEqual([]);
    expect(noted({ ...growing, 'defect.nearestAttachment': '63.5 mm' })).toHaveLength(1);
  });

  it('changes no safe pressure: nearer is never better', () => {
    const pressures = ['1 m', '59.7 mm', '59.5 mm', '0 mm', undefined].map((free) => {
      const { strength } = designOf(withPaths(named, { 'defect.nearestAttachment': free })).found ?? {};
      return strength?.safePressure;
    });
    expect(pressures[0]).toBeGreaterThan(0);
    expect(new Set(pressures).size).toBe(1);
  });
});
