import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesOf, isUnfilled, textOfBoxes } from '../../docs/worksheet/case/amount-text.js';
import { type Kind, readQuantity, units } from '../../src/quantity/index.js';

const kinds = Object.keys(units) as Kind[];
const kindAndUnit = fc
  .constantFrom(...kinds)
  .chain((kind) => fc.tuple(fc.constant(kind), fc.constantFrom(...Object.keys(units[kind]))));

describe('the two boxes of a quantity', () => {
  it('give back every number and unit', () => {
    fc.assert(
      fc.property(kindAndUnit, fc.double({ noNaN: true, noDefaultInfinity: true }), ([kind, unit], number) => {
        const text = textOfBoxes(kind, { number: String(number), unit });
        expect(textOfBoxes(kind, boxesOf(kind, text))).toBe(text);
        const reading = readQuantity(kind, text);
        if (!reading.ok) return;
        expect([String(reading.number), reading.unit]).toEqual([String(number), unit]);
        expect(boxesOf(kind, text)).toEqual({ number: String(number), unit });
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('keep the unit while the number is not there yet', () => {
    fc.assert(
      fc.property(kindAndUnit, ([kind, unit]) => {
        const text = textOfBoxes(kind, { number: ' ', unit });
        expect(boxesOf(kind, text)).toEqual({ number: '', unit });
        expect(isUnfilled(text)).toBe(true);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('hand the door no number whose unit nobody chose', () => {
    for (const kind of kinds)
      expect(readQuantity(kind, textOfBoxes(kind, { number: '0.5', unit: '' })).ok, kind).toBe(false);
  });

  it('take a unit that was typed after the number, before the one chosen', () => {
    expect(textOfBoxes('length', { number: '8 5/8 in', unit: 'mm' })).toBe('8 5/8 in');
    expect(boxesOf('length', '8 5/8 in')).toEqual({ number: '8 5/8', unit: 'in' });
    expect(boxesOf('gauge pressure', '150 PSI')).toEqual({ number: '150', unit: 'psi' });
  });

  it('leave what is no quantity as it was typed', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.string({ maxLength: 12 }), (kind, text) => {
        if (readQuantity(kind, text).ok) return;
        const boxes = boxesOf(kind, text);
        if (boxes.unit !== '') expect(text.startsWith(' ')).toBe(true);
        else if (!text.trimEnd().endsWith('?')) expect(boxes.number).toBe(text);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });
});
