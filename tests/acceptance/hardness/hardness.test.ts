import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barcolReadings, barcolShopMean, hardnessGate, hardnessStatistics } from '../../../src/acceptance/index.js';
import { isCalculationError } from '../../../src/formula/index.js';
import type { Ratio } from '../../../src/quantity/index.js';
import { evenSpan, run } from '../../properties/spans.js';

const code = (act: () => unknown): string | undefined => {
  try {
    act();
  } catch (error) {
    if (isCalculationError(error)) return error.code;
    throw error;
  }
  return undefined;
};

describe('hardness statistics', () => {
  it('of equal readings are that reading without scatter', () => {
    expect(hardnessStatistics({ readings: [80, 80, 80] })).toEqual({
      mean: 80,
      count: 3,
      standardDeviation: 0,
      minimum: 80,
    });
  });

  it('do not depend on the order of the readings, and shift with them', () => {
    run(
      fc.property(fc.array(evenSpan(10, 90), { minLength: 2, maxLength: 15 }), evenSpan(0, 10), (readings, shift) => {
        const plain = hardnessStatistics({ readings });
        const moved = hardnessStatistics({ readings: readings.map((reading) => reading + shift).reverse() });
        expect(moved.mean - shift).toBeCloseTo(plain.mean, 9);
        expect(moved.standardDeviation).toBeCloseTo(plain.standardDeviation, 6);
        expect(moved.minimum).toBe(plain.minimum + shift);
      }),
    );
  });

  it('of a single reading are refused, as it has no scatter', () => {
    expect(code(() => hardnessStatistics({ readings: [80] }))).toBe('invalid-input');
  });
});

describe('the hardness gate', () => {
  const shore = (readings: readonly number[], qualifiedHardness?: number) =>
    hardnessGate({ scale: 'Shore D', readings, qualifiedHardness });

  it('passes readings that equal the qualified value', () => {
    run(
      fc.property(evenSpan(20, 100), fc.integer({ min: 5, max: 12 }), (qualified, count) => {
        const gate = shore(new Array<number>(count).fill(qualified), qualified);
        expect(gate.passes).toBe(true);
        expect(gate.fraction).toBeCloseTo(1, 12);
      }),
    );
  });

  it('accepts nothing without a qualified value', () => {
    expect(code(() => shore([80, 80, 80, 80, 80]))).toBe('invalid-input');
    expect(code(() => hardnessGate({ scale: 'Barcol', readings: [50, 50] }))).toBe('invalid-input');
  });

  it('passes a mean of exactly 90 % and one reading of exactly 80 %, and nothing below', () => {
    expect(shore([63, 63, 63, 63, 63], 70).passes).toBe(true);
    expect(shore([62.9, 63, 63, 63, 63], 70).passes).toBe(false);
    expect(shore([56, 70, 70, 70, 70], 70).passes).toBe(true);
    expect(shore([55.9, 70, 70, 70, 70], 70).passes).toBe(false);
  });

  it('needs five Shore D readings, or as many as the procedure asks for', () => {
    expect(shore([80, 80, 80, 80], 80)).toMatchObject({ passes: false, readingsNeeded: 5, count: 4 });
    const input = { scale: 'Shore D', qualifiedHardness: 80, leastReadings: 8 } as const;
    expect(hardnessGate({ ...input, readings: [80, 80, 80, 80, 80, 80, 80] }).passes).toBe(false);
    expect(hardnessGate({ ...input, readings: [80, 80, 80, 80, 80, 80, 80, 80] }).passes).toBe(true);
  });

  it('needs the Barcol readings of the softest laminate that passes', () => {
    const readings = new Array<number>(22).fill(50);
    const input = { scale: 'Barcol', readings, qualifiedHardness: 50 } as const;
    expect(hardnessGate(input)).toMatchObject({ passes: true, readingsNeeded: 22 });
    expect(hardnessGate({ ...input, readings: readings.slice(1) }).passes).toBe(false);
    expect(hardnessGate({ ...input, material: 'homogeneous' }).readingsNeeded).toBe(7);
    expect(code(() => hardnessGate({ ...input, qualifiedHardness: 33 }))).toBe('outside-validity');
    expect(hardnessGate({ ...input, qualifiedHardness: 33, leastReadings: 22 }).readingsNeeded).toBe(22);
  });

  it('never fails a repair for a harder reading in place of a softer one', () => {
    run(
      fc.property(
        fc.array(evenSpan(40, 90), { minLength: 5, maxLength: 9 }),
        evenSpan(60, 95),
        evenSpan(0, 10),
        (readings, h, more) => {
          if (!shore(readings, h).passes) return;
          expect(shore([(readings[0] ?? 0) + more, ...readings.slice(1)], h).passes).toBe(true);
        },
      ),
    );
  });

  it('never passes at a higher qualified value what fails at a lower one', () => {
    run(
      fc.property(
        fc.array(evenSpan(50, 90), { minLength: 5, maxLength: 9 }),
        evenSpan(60, 90),
        evenSpan(0, 10),
        (readings, h, more) => {
          if (shore(readings, h).passes) return;
          expect(shore(readings, h + more).passes).toBe(false);
        },
      ),
    );
  });

  it('takes stricter shares, and no share above one', () => {
    const input = { scale: 'Shore D', readings: [76, 76, 76, 76, 76], qualifiedHardness: 80 } as const;
    expect(hardnessGate(input).passes).toBe(true);
    expect(hardnessGate({ ...input, leastMean: 0.96 as Ratio }).passes).toBe(false);
    expect(code(() => hardnessGate({ ...input, leastMean: 1.01 as Ratio }))).toBe('invalid-input');
  });
});

describe('Barcol readings', () => {
  it('are never fewer for a softer material, nor for a laminate than for its resin', () => {
    run(
      fc.property(evenSpan(30, 100), evenSpan(0, 70), (hardness, softer) => {
        const soft = Math.max(30, hardness - softer);
        for (const material of ['homogeneous', 'reinforced'] as const) {
          expect(barcolReadings({ hardness: soft, material })).toBeGreaterThanOrEqual(
            barcolReadings({ hardness, material }),
          );
        }
        expect(barcolReadings({ hardness })).toBeGreaterThan(barcolReadings({ hardness, material: 'homogeneous' }));
      }),
    );
  });

  it('are refused below the first row of the table', () => {
    expect(code(() => barcolReadings({ hardness: 19.9, material: 'homogeneous' }))).toBe('outside-validity');
    expect(code(() => barcolReadings({ hardness: 29.9 }))).toBe('outside-validity');
    expect(barcolReadings({ hardness: 30 })).toBe(29);
  });
});

describe('a material softer than the table', () => {
  it.each([
    ['homogeneous', 20],
    ['reinforced', 30],
  ] as const)('is refused with where the table begins: %s', (material, first) => {
    expect(() => barcolReadings({ hardness: first - 0.1, material })).toThrow(`must be at least ${first},`);
    expect(barcolReadings({ hardness: first, material })).toBeGreaterThan(0);
  });
});

describe('the shop rule', () => {
  it('takes ten to twelve readings', () => {
    const readings = (count: number) => new Array<number>(count).fill(40);
    expect(code(() => barcolShopMean({ readings: readings(9) }))).toBe('outside-validity');
    expect(code(() => barcolShopMean({ readings: readings(13) }))).toBe('outside-validity');
    for (const count of [10, 11, 12])
      expect(barcolShopMean({ readings: readings(count) })).toMatchObject({ mean: 40, count: count - 2 });
  });

  it('drops one high and one low reading and leaves its argument alone', () => {
    const readings = [90, 40, 40, 40, 40, 40, 40, 40, 40, 10];
    expect(barcolShopMean({ readings })).toMatchObject({ mean: 40, droppedHighest: 90, droppedLowest: 10 });
    expect(readings[0]).toBe(90);
  });
});
