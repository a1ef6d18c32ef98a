import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agree, exceeds, spans } from '../../src/numeric/index.js';

const settings = { seed: 20261125, numRuns: 1000 };
const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('a value', () => {
  it('does not exceed a limit that was written down with six digits', () => {
    fc.assert(
      fc.property(size, (limit) => {
        expect(exceeds(limit, Number(limit.toPrecision(7)))).toBe(false);
        expect(exceeds(limit, limit)).toBe(false);
      }),
      settings,
    );
  });

  it('exceeds a limit that it lies above by more than that', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 2e-6, max: 1, noNaN: true }), (limit, share) => {
        expect(exceeds(limit * (1 + share), limit)).toBe(true);
        expect(exceeds(limit, limit * (1 + share))).toBe(false);
      }),
      settings,
    );
  });
});

describe('two readings', () => {
  it('agree within what they may lie apart, whichever is named first', () => {
    expect(agree(0.005, 0.00509, 1e-4)).toBe(true);
    expect(agree(0.00509, 0.005, 1e-4)).toBe(true);
    expect(agree(0.005, 0.00511, 1e-4)).toBe(false);
    expect(agree(0.00511, 0.005, 1e-4)).toBe(false);
  });
});

describe('a stretch', () => {
  it('spans a length wherever it begins, or falls short of it by no more than readings lie apart', () => {
    for (const from of [-1, 0, 5]) {
      expect(spans(from, from + 0.06, 0.06, 1e-4)).toBe(true);
      expect(spans(from, from + 0.05995, 0.06, 1e-4)).toBe(true);
      expect(spans(from, from + 0.0598, 0.06, 1e-4)).toBe(false);
    }
  });
});
