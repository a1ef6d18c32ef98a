import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Kind, readQuantity, units } from '../../src/quantity/index.js';
import { isSame, slipsInto, slipsInWords } from '../../src/quantity/slips.js';

const read = (kind: Kind, text: string): number => {
  const reading = readQuantity(kind, text);
  if (!reading.ok) throw new Error(reading.problem);
  return reading.quantity;
};

/** What is written, the usual span, what was meant, and the slip in words. */
const table: readonly (readonly [
  kind: Kind,
  text: string,
  span: readonly [string, string],
  meant: string,
  way: string,
])[] = [
  ['activation energy', '55 J/mol', ['35 kJ/mol', '100 kJ/mol'], '55 kJ/mol', 'J/mol for kJ/mol'],
  ['activation energy', '13 kJ/mol', ['35 kJ/mol', '100 kJ/mol'], '13 kcal/mol', 'kJ/mol for kcal/mol'],
  ['areal weight', '800 kg/m2', ['100 g/m2', '2000 g/m2'], '800 g/m2', 'kg/m2 for g/m2'],
  ['strain', '0.9', ['0.15 %', '6 %'], '0.9 %', 'a fraction for per cent'],
  ['ratio', '0.6 %', ['5 %', '100 %'], '0.6', 'per cent for a fraction'],
  ['stress', '38.5 psi', ['20 MPa', '1500 MPa'], '38.5 ksi', 'psi for ksi'],
  ['temperature', '23 K', ['-40 degC', '60 degC'], '23 degC', 'K for degC'],
  ['temperature', '296 degC', ['-40 degC', '60 degC'], '296 K', 'degC for K'],
  ['temperature', '77 degC', ['-40 degC', '60 degC'], '77 degF', 'degC for degF'],
  ['length', '8.625 mm', ['20 mm', '1700 mm'], '8.625 in', 'mm for in'],
  ['length', '8.18 m', ['1 mm', '60 mm'], '8.18 mm', 'm for mm'],
  ['gauge pressure', '0.1 bar', ['0.2 bar', '300 bar'], '0.1 MPa', 'bar for MPa'],
  [
    'absolute pressure',
    '0.013 bar',
    ['0.6 bar', '1.1 bar'],
    '1.02625 bar',
    'a gauge pressure for an absolute pressure',
  ],
  ['time', '20 h', ['7 day', '40 year'], '20 year', 'h for year'],
  ['modulus', '207 MPa', ['60 GPa', '220 GPa'], '207 GPa', 'MPa for GPa'],
];

describe('a slip of the pen', () => {
  it.each(table)('%s of %s outside %j was meant as %s: %s', (kind, text, [least, most], meant, way) => {
    const slips = slipsInto(kind, read(kind, text), [read(kind, least), read(kind, most)]);
    const found = slips.find(({ ways }) => ways.includes(way));
    expect(found && isSame(found.value, read(kind, meant))).toBe(true);
  });

  it('is never named where what it would give lies outside the span, and each value stands once', () => {
    const kinds = Object.keys(units) as Kind[];
    const size = fc.double({ min: -9, max: 12, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(fc.constantFrom(...kinds), size, size, size, (kind, value, least, share) => {
        const span = [least, least * (1 + share)] as const;
        const slips = slipsInto(kind, value, span);
        for (const slip of slips) {
          expect(slip.value).toBeGreaterThanOrEqual(span[0]);
          expect(slip.value).toBeLessThanOrEqual(span[1]);
          expect(slips.filter((other) => isSame(other.value, slip.value))).toHaveLength(1);
        }
      }),
      { seed: 20261125, numRuns: 2000 },
    );
  });

  it('is not one of another unit than the one that was written, where that is known', () => {
    const span = [20e6, 1500e6] as const;
    const ways = (unit?: string) =>
      slipsInto('stress', read('stress', '38.5 psi'), span, unit).flatMap((slip) => slip.ways);
    expect(ways()).toEqual(['kPa for MPa', 'psi for ksi', 'psi for MPa']);
    expect(ways('psi')).toEqual(['psi for ksi', 'psi for MPa']);
    expect(slipsInto('gauge pressure', 1, [6e5, 8e6], 'psig')).toEqual([]);
    expect(slipsInto('gauge pressure', read('gauge pressure', '1 psig'), [6e4, 2e5], 'psig')).toEqual([
      { value: 1e5, ways: ['psi for bar'] },
    ]);
  });

  it('is none of a plain number', () => {
    expect(slipsInto('number', 0.001, [0.1, 0.4])).toEqual([]);
    expect(slipsInWords([], 3)).toBe('');
  });

  it('is told in words, the slips of one value together', () => {
    const slips = [
      { value: 1, ways: ['kPa for MPa', 'psi for ksi'] },
      { value: 2, ways: ['psi for MPa'] },
    ];
    expect(slipsInWords(slips, 3)).toBe('; perhaps kPa for MPa or psi for ksi (then {3}), psi for MPa (then {4})');
  });
});
