import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleOf, type Kind, type Quantity, readQuantity, units, writeQuantity } from '../../src/quantity/index.js';

const kinds = Object.keys(units) as Kind[];
const settings = { seed: 20261125, numRuns: 300 };

const read = (kind: Kind, text: string): number => {
  const reading = readQuantity(kind, text);
  if (!reading.ok) throw new Error(reading.problem);
  return reading.quantity;
};

const problem = (kind: Kind, text: string): string => {
  const reading = readQuantity(kind, text);
  return reading.ok ? `read as ${reading.quantity}` : reading.problem;
};

describe('reading', () => {
  it.each<[Kind, string, number]>([
    ['length', '8.18 mm', 0.00818],
    ['length', '1/2 in', 0.0127],
    ['length', '1 1/2 in', 0.0381],
    ['length', '1-1/2 in', 0.0381],
    ['length', '-1/4 in', -0.00635],
    ['length', '2"', 0.0508],
    ['length', '3 feet', 0.9144],
    ['length', '60 µm', 6e-5],
    ['length', ' 1.5e2mm ', 0.15],
    ['length', '.5 m', 0.5],
    ['gauge pressure', '10 bar', 1e6],
    ['gauge pressure', '0 psig', 0],
    ['absolute pressure', '1013 mbar', 101300],
    ['temperature', '30 degC', 303.15],
    ['temperature', '32 °F', 273.15],
    ['temperature', '-273.15 degC', 0],
    ['temperature difference', '9 deltaF', 5],
    ['corrosion rate', '31557.6 mm/year', 1e-6],
    ['time', '1 year', 31557600],
    ['time', '1 d', 86400],
    ['ratio', '50 %', 0.5],
    ['ratio', '0.5', 0.5],
    ['strain', '2500 microstrain', 0.0025],
    ['angle', '180 deg', Math.PI],
    ['moment', '3 N·m', 3],
    ['thermal expansion', '2.187e-5 /K', 2.187e-5],
    ['rate constant', '7200 /h', 2],
    ['length', '2 IN', 0.0508],
    ['gauge pressure', '6 BAR', 600000],
  ])('takes as %s the text %s', (kind, text, si) => {
    expect(read(kind, text)).toBe(si);
  });

  it('takes 150 psig and 5.5 mm/year for what they are made of', () => {
    const [pound, inch] = [0.45359237 * 9.80665, 0.0254];
    expect(read('gauge pressure', '150 psig')).toBeCloseTo((150 * pound) / (inch * inch), 6);
    expect(read('corrosion rate', '5.5 mm/year') * 365.25 * 86400).toBeCloseTo(0.0055, 15);
  });

  it('binds a unit that serves several kinds to the kind that is asked for, and says how it was written', () => {
    expect(read('gauge pressure', '100 psi')).toBe(read('absolute pressure', '100 psi'));
    expect(readQuantity('absolute pressure', '1.5 bar')).toEqual({
      ok: true,
      quantity: 150000,
      number: 1.5,
      unit: 'bar',
    });
    expect(readQuantity('length', '2 inches')).toMatchObject({ number: 2, unit: 'in' });
  });

  it('takes the example that it gives for every kind', () => {
    for (const kind of kinds) {
      const examples = [...exampleOf(kind).matchAll(/"([^"]+)"/gu)].map((match) => match[1] ?? '');
      expect(examples.length, kind).toBeGreaterThan(0);
      for (const example of examples) expect(readQuantity(kind, example).ok, `${kind}: ${example}`).toBe(true);
    }
  });
});

describe('capitals', () => {
  it('mean what small letters mean where no prefix hangs on them', () => {
    for (const [typed, unit] of [
      ['PSI', 'psi'],
      ['Psig', 'psig'],
      ['BARG', 'barg'],
    ] as const)
      expect(readQuantity('gauge pressure', `150 ${typed}`)).toEqual(readQuantity('gauge pressure', `150 ${unit}`));
    expect(readQuantity('stress', '35 KSI')).toEqual(readQuantity('stress', '35 ksi'));
    expect(readQuantity('mass', '2 LBS')).toEqual(readQuantity('mass', '2 lb'));
  });

  it('are refused with what was probably meant where they may be a prefix: mega or milli', () => {
    expect(problem('stress', '35 MPA')).toMatch(/the unit "MPA" is unknown; did you mean MPa\?/u);
    expect(problem('length', '8 MM')).toMatch(/did you mean mm\?/u);
    expect(problem('mass', '8 MG')).toMatch(/did you mean mg\?/u);
    expect(problem('length', '8 furlong')).not.toMatch(/did you mean/u);
  });

  it('of a unit of another kind stay one of another kind', () => {
    expect(problem('length', '8 PSI')).toMatch(/psi is a unit of .*, not of length/u);
  });
});

describe('bad text', () => {
  it.each<[Kind, string, RegExp]>([
    ['length', '', /is not a number with a unit/u],
    ['length', 'mm', /is not a number with a unit/u],
    ['length', '12', /has no unit/u],
    ['gauge pressure', '6,5 bar', /decimals after a point, 6.5/u],
    ['gauge pressure', '1,500 psi', /thousands without a mark/u],
    ['length', '6,5', /decimals after a point/u],
    ['length', '12 furlong', /the unit "furlong" is unknown/u],
    ['length', '12 MPa', /MPa is a unit of gauge pressure, absolute pressure, stress, modulus, not of length/u],
    ['length', '12 mm mm', /the unit "mm mm" is unknown/u],
    ['length', '1,5 mm', /decimals after a point, 6.5/u],
    ['length', 'NaN mm', /is not a number with a unit/u],
    ['length', 'Infinity mm', /is not a number with a unit/u],
    ['length', '--3 mm', /is not a number with a unit/u],
    ['length', '1/0 in', /is not a finite number/u],
    ['length', '1e999 mm', /is not a finite number/u],
    ['length', '1e308 km', /too large/u],
    ['gauge pressure', '150 psia', /psia is a unit of absolute pressure, not of gauge pressure/u],
    ['absolute pressure', '150 psig', /psig is a unit of gauge pressure, not of absolute pressure/u],
    ['temperature difference', '5 degC', /degC is a unit of temperature, not of temperature difference/u],
    ['temperature', '5 deltaF', /deltaF is a unit of temperature difference, not of temperature/u],
    ['temperature', '-1 K', /below absolute zero/u],
    ['temperature', '-273.16 degC', /below absolute zero/u],
    ['temperature', '-460 degF', /below absolute zero/u],
    ['angle', '5 %', /% is a unit of ratio, strain, not of angle/u],
    ['stress', '50', /has no unit/u],
  ])('for %s, %j, is refused in one sentence', (kind, text, words) => {
    const sentence = problem(kind, text);
    expect(sentence).toMatch(words);
    expect(sentence.startsWith(JSON.stringify(text))).toBe(true);
    expect(sentence).not.toMatch(/\n|\. [A-Z]/u);
    expect(sentence.length).toBeLessThan(300);
  });

  it('never throws and never gives what is not finite, whatever the text', () => {
    const piece = fc.oneof(
      fc.string(),
      fc.constantFrom('1', '1/2', ' ', '-', 'e', '.', 'mm', '%', 'degC', 'in', '1e400', 'constructor', '__proto__'),
    );
    const text = fc.array(piece, { maxLength: 5 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(fc.constantFrom(...kinds), text, (kind, given) => {
        const reading = readQuantity(kind, given);
        if (reading.ok) expect(Number.isFinite(reading.quantity)).toBe(true);
        else expect(reading.problem.includes('\n')).toBe(false);
      }),
      { ...settings, numRuns: 5000 },
    );
  });
});

describe('writing', () => {
  it('is the shortest text that reads back', () => {
    expect(writeQuantity('length', read('length', '8.18 mm') as Quantity<'length'>, 'mm')).toBe('8.18 mm');
    expect(writeQuantity('length', read('length', '0.1 in') as Quantity<'length'>, 'in')).toBe('0.1 in');
    expect(writeQuantity('temperature', read('temperature', '30 degC') as Quantity<'temperature'>, 'degC')).toBe(
      '30 degC',
    );
    expect(writeQuantity('ratio', 0.5 as Quantity<'ratio'>, '1')).toBe('0.5');
    expect(writeQuantity('ratio', 0.07 as Quantity<'ratio'>, '%')).toBe('7 %');
  });

  it('keeps a unit that the kind has, and refuses another', () => {
    expect(() => writeQuantity('length', 1 as Quantity<'length'>, 'psi')).toThrow(
      new RangeError('a length is not written in psi'),
    );
    expect(() => writeQuantity('length', 1 as Quantity<'length'>, 'toString')).toThrow(RangeError);
  });

  const value = fc.oneof(
    fc.double({ min: -1e9, max: 1e9, noNaN: true }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer({ min: -1e6, max: 1e6 }).map((whole) => whole / 1000),
  );

  it.each(kinds)('of a %s reads back to the same bits in every unit', (kind) => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(units[kind])), value, (symbol, drawn) => {
        const quantity = (kind === 'temperature' ? Math.abs(drawn) : drawn) + 0;
        const text = writeQuantity(kind, quantity as Quantity<Kind>, symbol);
        expect(read(kind, text), text).toBe(quantity);
      }),
      settings,
    );
  });

  it('of a quantity that was read gives back the number that was typed', () => {
    const typed = fc
      .tuple(fc.integer({ min: 1, max: 99999 }), fc.integer({ min: 0, max: 4 }))
      .map(([whole, places]) => whole / 10 ** places);
    fc.assert(
      fc.property(fc.constantFrom(...kinds), typed, fc.nat(), (kind, number, which) => {
        const symbols = Object.keys(units[kind]);
        const symbol = symbols[which % symbols.length] ?? '1';
        const text = symbol === '1' ? String(number) : `${number} ${symbol}`;
        const written = writeQuantity(kind, read(kind, text) as Quantity<Kind>, symbol);
        expect(Number.parseFloat(written)).toBe(number);
      }),
      { ...settings, numRuns: 3000 },
    );
  });
});
