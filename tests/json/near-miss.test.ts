import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { editDistance, nearMiss } from '../../src/json/near-miss.js';

const runs = { seed: 20261125, numRuns: 300 };
const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'D'), maxLength: 8 });

describe('near misses', () => {
  test('the distance of known pairs is that of the definition', () => {
    expect(editDistance('', 'abc')).toBe(3);
    expect(editDistance('wall', 'wall')).toBe(0);
    expect(editDistance('wlal', 'wall')).toBe(1);
    expect(editDistance('wal', 'wall')).toBe(1);
    expect(editDistance('presure', 'pressure')).toBe(1);
    expect(editDistance('kitten', 'sitting')).toBe(3);
  });

  test('the distance is symmetric, zero only for equal words, and at most the longer length', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const edits = editDistance(a, b);
        expect(edits).toBe(editDistance(b, a));
        expect(edits === 0).toBe(a === b);
        expect(edits).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(edits).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
      }),
      runs,
    );
  });

  test('a mistyped name finds the name that was meant, an alien word finds none', () => {
    const names = ['wallThickness', 'outsideDiameter', 'pressure'];
    expect(nearMiss('wallThicknes', names)).toBe('wallThickness');
    expect(nearMiss('walThikness', names)).toBe('wallThickness');
    expect(nearMiss('outsidediameter', names)).toBe('outsideDiameter');
    expect(nearMiss('wall', names)).toBe('wallThickness');
    expect(nearMiss('temperature', names)).toBeUndefined();
    expect(nearMiss('x', names)).toBeUndefined();
  });
});
