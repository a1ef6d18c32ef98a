import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeCase, encodeCase, parseCase, writeCase } from '../../src/json/index.js';
import { type Kind, length, type Quantity, readQuantity, temperature, units } from '../../src/quantity/index.js';
import { exampleDocument, exampleNames, exampleText } from './examples.js';

describe('a case on its way through text', () => {
  test.each(exampleNames)('%s comes back as it was written, to the bit', (name) => {
    const first = parseCase(exampleText(name));
    const again = parseCase(writeCase(first));
    expect(again.case).toEqual(first.case);
    expect([...again.typed.keys()].sort()).toEqual([...first.typed.keys()].sort());
    expect(again.lookUps).toEqual(first.lookUps);
    expect(writeCase(again)).toBe(writeCase(first));
  });

  test('a text that is already the shortest stays as it is, in its own unit', () => {
    const document = exampleDocument('hydrocarbon-line-corrosion.json');
    const text = encodeCase(decodeCase(document));
    expect(text.pipe).toEqual({
      ...document.pipe,
      material: { ...document.pipe.material, thermalExpansion: '0.0000065 1/degF' },
    });
    expect(text.defect).toEqual(document.defect);
    expect(text.site).toEqual(document.site);
  });

  test('a longer text is written in its shortest form in the same unit', () => {
    const document = exampleDocument();
    document.defect.axialLength = '2 1/2 in';
    document.defect.remainingWall = '3.100 mm';
    const text = encodeCase(decodeCase(document));
    expect(text.defect.axialLength).toBe('2.5 in');
    expect(text.defect.remainingWall).toBe('3.1 mm');
  });

  test('a value that no text in the typed unit gives is written in SI', () => {
    const decoded = decodeCase(exampleDocument('hydrocarbon-line-corrosion.json'));
    expect(decoded.typed.get('site.airTemperature')?.unit).toBe('degF');
    const ulp = 2 ** -44;
    const odd = [...Array(100).keys()]
      .map((i) => temperature.kelvin(300 + i * ulp))
      .find((airTemperature) => !reads('temperature', airTemperature, 'degF'));
    if (odd === undefined) throw new Error('every temperature near 300 K has a text in degF');
    const site = { ...decoded.case.site, airTemperature: odd };
    const text = encodeCase({ ...decoded, case: { ...decoded.case, site } });
    expect(text.site.airTemperature).toBe(`${odd} K`);
    expect(decodeCase(text).case.site.airTemperature).toBe(odd);
  });

  test('a case that never was text is written in SI and reads back', () => {
    const { case: repairCase } = decodeCase(exampleDocument('hydrocarbon-line-corrosion.json'));
    const text = encodeCase({ case: repairCase });
    expect(text.service.designPressure).toBe(`${repairCase.service.designPressure} Pa`);
    const { lookedUp: _, ...numbers } = repairCase;
    expect(decodeCase(text).case).toEqual(numbers);
  });

  test('a row of a table is named again as long as it gives the same values', () => {
    const decoded = decodeCase(exampleDocument());
    expect(encodeCase(decoded).pipe.size).toEqual({ nps: '8', schedule: '40' });
    const thicker = { ...decoded.case, pipe: { ...decoded.case.pipe, wallThickness: length.mm(9) } };
    const text = encodeCase({ ...decoded, case: thicker });
    expect(text.pipe.outsideDiameter).toBe('0.2191 m');
    expect(text.pipe.wallThickness).toBe('0.009 m');
    expect(decodeCase(text).case.pipe.wallThickness).toBe(length.mm(9));
  });

  test('every quantity of a case keeps its bits, whatever unit it is typed in', () => {
    const lengthUnit = fc.constantFrom(...Object.keys(units.length));
    const size = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, lengthUnit, size, fc.constantFrom('day', 'year', 'h'), (mmValue, unit, life, timeUnit) => {
        const document = exampleDocument();
        const perMm = Number(units.length[unit]?.[1]) / Number(units.length[unit]?.[0]) / 1000;
        document.filler.thicknessOverDefect = `${mmValue * 2 * perMm} ${unit}`;
        document.filler.thickness = `${mmValue * perMm} ${unit}`;
        document.repair.life = `${life} ${timeUnit}`;
        const decoded = decodeCase(document);
        expect(decodeCase(encodeCase(decoded)).case).toEqual(decoded.case);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});

/** Whether some text of up to 17 digits in `unit`, or a neighbour of it, reads back to the value. */
function reads<K extends Kind>(kind: K, value: Quantity<K>, unit: string): boolean {
  const [numerator, denominator, shift = 0] = units[kind][unit] ?? [1, 1];
  const near = (value * denominator) / numerator - shift;
  for (let step = -8; step <= 8; step++) {
    const reading = readQuantity(kind, `${near * (1 + step * Number.EPSILON)} ${unit}`);
    if (reading.ok && reading.quantity === value) return true;
  }
  return false;
}
