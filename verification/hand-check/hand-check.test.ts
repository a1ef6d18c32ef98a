import { describe, expect, it } from 'vitest';
import { measureHandChecks } from './measure.js';
import { readHandCheckSummary } from './summary.js';

describe.each([
  ['drawn now', measureHandChecks(1)],
  ['of the long run', readHandCheckSummary()],
] as const)('hand calculations with a slip, %s', (_, counts) => {
  it('cover three to six digits', () => {
    expect(counts.map(({ digits }) => digits)).toEqual([3, 4, 5, 6]);
    for (const { planted, unexplained } of counts) expect(Math.min(planted, unexplained)).toBeGreaterThan(100);
  });

  it('are never taken for right', () => {
    for (const { taken } of counts) expect(taken).toBe(0);
  });

  it('have their slip named in nine of ten', () => {
    for (const { planted, named, digits } of counts)
      expect(named / planted, `${digits} digits`).toBeGreaterThanOrEqual(0.9);
  });

  it('have none named in 98 of 100 where none of the kind was made', () => {
    for (const { unexplained, namedWrongly, digits } of counts)
      expect(namedWrongly / unexplained, `${digits} digits`).toBeLessThanOrEqual(0.02);
  });
});
