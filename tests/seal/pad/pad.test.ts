import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../../src/formula/index.js';
import { type Area, angle, type GaugePressure, gauge, type Length, length } from '../../../src/quantity/index.js';
import {
  circleArea,
  leakForce,
  padHalfAngle,
  padHalfAngleBelowPractice,
  padSize,
  padSizeBelowPractice,
} from '../../../src/seal/index.js';
import { off, run, span } from '../../properties/spans.js';

describe('the pad', () => {
  const hole = (d: number) => ({ holeDiameter: length.mm(d), multiple: 3, margin: length.mm(25) });

  it('takes the largest reading and names it: the margin at a small hole, the multiple at a large one', () => {
    expect(padSize({ ...hole(10), multipleOf: 'not stated' })).toMatchObject({ governing: 'margin' });
    expect(length.inMm(padSize({ ...hole(10), multipleOf: 'not stated' }).diameter)).toBeCloseTo(60, 9);
    expect(padSize({ ...hole(40), multipleOf: 'not stated' })).toMatchObject({ governing: 'diameter' });
    expect(length.inMm(padSize({ ...hole(40), multipleOf: 'not stated' }).diameter)).toBeCloseTo(120, 9);
    expect(padSize({ ...hole(200), multipleOf: 'area' })).toMatchObject({ governing: 'area' });
    expect(length.inMm(padSize({ ...hole(200), multipleOf: 'area' }).diameter)).toBeCloseTo(200 * Math.sqrt(3), 9);
  });

  it('of a multiple of the area has that multiple of the area, and the other reading its square', () => {
    run(
      fc.property(span(0.001, 0.1), span(1, 20), (d, multiple) => {
        const { byArea, byDiameter } = padSize({
          holeDiameter: d as Length,
          multiple,
          multipleOf: 'area',
          margin: length.mm(0),
        });
        const area = (diameter: Length) => circleArea({ diameter });
        expect(off(area(byArea), multiple * area(d as Length))).toBeLessThan(1e-12);
        expect(off(area(byDiameter), multiple * multiple * area(d as Length))).toBeLessThan(1e-12);
      }),
    );
  });

  it('never shrinks with hole, multiple or margin, nor below what a stated area asks', () => {
    const words = fc.constantFrom('area', 'diameter', 'not stated');
    run(
      fc.property(
        span(0.001, 0.1),
        span(1, 9),
        span(0, 0.05),
        words,
        span(0, 1),
        (d, multiple, m, multipleOf, more) => {
          const of = (hole: number, k: number, margin: number) =>
            padSize({ holeDiameter: hole as Length, multiple: k, multipleOf, margin: margin as Length }).diameter;
          const pad = of(d, multiple, m);
          expect(of(d * (1 + more), multiple, m)).toBeGreaterThanOrEqual(pad);
          expect(of(d, multiple * (1 + more), m)).toBeGreaterThanOrEqual(pad);
          expect(of(d, multiple, m + more)).toBeGreaterThanOrEqual(pad);
          const stated = padSize({ holeDiameter: d as Length, multiple, multipleOf: 'area', margin: m as Length });
          expect(pad).toBeGreaterThanOrEqual(stated.diameter);
        },
      ),
    );
  });

  it('that is read as not stated is the pad of the diameter', () => {
    const [a, b] = (['not stated', 'diameter'] as const).map((multipleOf) => padSize({ ...hole(33), multipleOf }));
    expect(a).toEqual(b);
  });

  it('is held against the practice of the trade without using it', () => {
    const input = { ...hole(10), multipleOf: 'diameter' } as const;
    expect(padSizeBelowPractice(input)).toBe(false);
    expect(padSizeBelowPractice({ ...input, multiple: 2.9 })).toBe(true);
    expect(padSizeBelowPractice({ ...input, margin: length.mm(24) })).toBe(true);
  });
});

describe('the half-angle of the pad', () => {
  it('is half the arc over the radius', () => {
    expect(angle.inDeg(padHalfAngle({ padDiameter: length.mm(60), outsideDiameter: length.mm(168.3) }))).toBeCloseTo(
      ((60 / 168.3) * 180) / Math.PI,
      10,
    );
  });

  it('reaches half round and no further', () => {
    const outsideDiameter = length.mm(100);
    expect(
      padHalfAngle({ padDiameter: (outsideDiameter * Math.PI * 0.4999999) as Length, outsideDiameter }),
    ).toBeLessThan(Math.PI / 2);
    const tooFar = () =>
      padHalfAngle({ padDiameter: (outsideDiameter * Math.PI * 0.5000001) as Length, outsideDiameter });
    expect(tooFar).toThrow(CalculationError);
    expect(tooFar).toThrow(/full-circle seal/);
  });

  it('warns below the pipe that the trade seals with a band', () => {
    expect(padHalfAngleBelowPractice({ padDiameter: length.mm(40), outsideDiameter: length.mm(48.3) })).toBe(true);
    expect(padHalfAngleBelowPractice({ padDiameter: length.mm(40), outsideDiameter: length.mm(60.3) })).toBe(false);
  });
});

describe('the force of the leak', () => {
  it('on the pad is never below that on the hole, and neither falls with pressure', () => {
    run(
      fc.property(span(0, 1e8), span(1e-6, 1e-3), span(0, 0.1), span(0, 1e7), (p, hole, more, rise) => {
        const at = (pressure: number) =>
          leakForce({ pressure: pressure as GaugePressure, holeArea: hole as Area, padArea: (hole + more) as Area });
        expect(at(p).onPad).toBeGreaterThanOrEqual(at(p).onHole);
        expect(at(p + rise).onPad).toBeGreaterThanOrEqual(at(p).onPad);
        expect(at(p + rise).onHole).toBeGreaterThanOrEqual(at(p).onHole);
      }),
    );
  });

  it('refuses a pad smaller than the hole', () => {
    const small = circleArea({ diameter: length.mm(9) });
    const large = circleArea({ diameter: length.mm(10) });
    expect(() => leakForce({ pressure: gauge.bar(1), holeArea: large, padArea: small })).toThrow(/holeArea/);
  });
});
