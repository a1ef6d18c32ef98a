import { describe, expect, it } from 'vitest';
import { type Length, length, type Ratio } from '../../src/quantity/index.js';
import { bendLineRadius, overlapOnBend } from '../../src/wrap/index.js';

const bend = { bendRadius: length.mm(300), outsideDiameter: length.mm(200) };
const tight = (bendRadius: number) => ({ ...bend, bendRadius: length.mm(bendRadius) });
const refusedFor = (parameter: string, limit: number) =>
  expect.objectContaining({ code: 'invalid-input', parameter, limit: expect.closeTo(limit, 12) });

describe('the lines of a bend', () => {
  it('lie half a diameter inside and outside the centre line', () => {
    expect(bendLineRadius({ ...bend, line: 'inside' })).toBeCloseTo(0.2, 12);
    expect(bendLineRadius({ ...bend, line: 'outside' })).toBeCloseTo(0.4, 12);
  });

  it.each([100, 60])('are refused on a bend that would cut into itself, of %s mm', (radius) => {
    for (const line of ['inside', 'outside'] as const) {
      expect(() => bendLineRadius({ ...tight(radius), line })).toThrow(refusedFor('bendRadius', 0.1));
    }
    const tape = { ...tight(radius), overlap: 0.5 as Ratio, lineRadius: length.mm(50) };
    expect(() => overlapOnBend(tape)).toThrow(refusedFor('bendRadius', 0.1));
  });
});

describe('the overlap on a bend', () => {
  const at = (lineRadius: number): number =>
    overlapOnBend({ ...bend, overlap: 0.5 as Ratio, lineRadius: lineRadius as Length });

  it('is kept at the outside, and grows as the turns crowd towards the inside', () => {
    expect(at(0.4)).toBeCloseTo(0.5, 12);
    expect(at(0.2)).toBeCloseTo(0.75, 12);
  });

  it('is refused beyond the outside of the bend', () => {
    expect(() => at(0.4 + 1e-6)).toThrow(refusedFor('lineRadius', 0.4));
  });
});
