import { all, create, type FactoryFunctionMap, type Unit as MathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { baseUnits, dimensions } from '../../src/quantity/dimensions.js';
import * as quantity from '../../src/quantity/index.js';
import { type Kind, siSymbol, unitOf, units } from '../../src/quantity/index.js';
import { fromSi, toSi } from '../../src/quantity/quantity.js';
import { seeded } from '../../verification/oracles/random.js';
import { ulp } from '../../verification/oracles/ulp.js';
import { composed, fraction, same } from './composed-units.js';

const math = create(all as FactoryFunctionMap, {});
const kinds = Object.keys(units) as Kind[];
const everyUnit = kinds.flatMap((kind) =>
  Object.entries(units[kind]).map(([symbol, unit]) => [kind, symbol, unit] as const),
);
const rational = everyUnit.filter(([, symbol]) => symbol !== 'deg');

describe('the unit tables', () => {
  it.each(rational)('hold for %s the factor that %s has by its definition', (_, symbol, [top, bottom]) => {
    expect(Number.isInteger(top) && Number.isInteger(bottom)).toBe(true);
    const [found, wanted] = [fraction(top, bottom), composed(symbol)];
    expect(same(found, wanted), `${top}/${bottom} against ${wanted.top}/${wanted.bottom}`).toBe(true);
  });

  it('make half a turn of pi radians 180 degrees', () => {
    const degree = unitOf('angle', 'deg');
    expect(degree).toEqual([Math.PI, 180]);
    expect(toSi(180, degree ?? [1, 1])).toBe(Math.PI);
  });

  it.each(kinds)('begin for %s with the coherent SI unit, whose dimension is that of the kind', (kind) => {
    expect(units[kind][siSymbol(kind)]).toEqual([1, 1]);
    const symbol = siSymbol(kind);
    const table = Object.fromEntries(baseUnits.map((unit) => [unit, dimensions[kind][unit] ?? 0]));
    const none = Object.fromEntries(baseUnits.map((unit) => [unit, 0]));
    if (symbol === '1' || symbol === 'rad') return expect(table).toEqual(none);
    const unit = math.unit(
      1,
      symbol.replace(/\^\((\d)\/2\)/u, (_, top: string) => `^${Number(top) / 2}`),
    );
    // mathjs keeps [mass, length, time, current, temperature, luminous intensity, amount, angle, bit].
    const [kg, m, s, A, K, , mol] = (unit as MathUnit & { dimensions: number[] }).dimensions;
    expect({ kg, m, s, K, mol, A }).toEqual(table);
  });

  it('put the fixed points of water and the absolute zero where they are', () => {
    const [celsius, fahrenheit] = ['degC', 'degF'].map((symbol) => unitOf('temperature', symbol));
    if (celsius === undefined || fahrenheit === undefined) throw new Error('both scales are units of temperature');
    expect(toSi(0, celsius)).toBe(273.15);
    expect(toSi(32, fahrenheit)).toBe(273.15);
    expect(fromSi(toSi(212, fahrenheit), celsius)).toBeCloseTo(100, 12);
    expect(toSi(-273.15, celsius)).toBe(0);
    expect(toSi(-459.67, fahrenheit)).toBe(0);
    expect(toSi(-40, celsius)).toBeCloseTo(toSi(-40, fahrenheit), 12);
  });

  it.each(everyUnit)('bring back the value of a %s in %s to the last bits', (_, symbol, unit) => {
    const random = seeded(`round trip ${symbol}`);
    for (let run = 0; run < 200; run++) {
      const value = (random() - 0.3) * 10 ** (12 * random() - 6);
      const shift = Math.abs(unit[2] ?? 0);
      expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThanOrEqual(3 * ulp(Math.abs(value) + shift));
    }
  });
});

describe('the namespace of a kind', () => {
  type Constructor = (value: number) => number;
  /** Names that are not the symbol of the unit with `/` read as Per and brackets and spaces left out. */
  const symbols: Readonly<Record<string, string>> = {
    inch: 'in',
    minute: 'min',
    hour: 'h',
    kelvin: 'K',
    'temperatureDifference degF': 'deltaF',
    fraction: '1',
    percent: '%',
    micro: 'microstrain',
    MNPerM32: 'MN/m^(3/2)',
    PaRootM: 'Pa m^(1/2)',
    inchPerYear: 'in/year',
    inchLbfPerIn2: 'in lbf/in2',
    partsPerK: '1/K',
    percentPerK: '%/K',
    perMin: '1/min',
    perS: '1/s',
    perH: '1/h',
    perK: '1/K',
    perDegF: '1/degF',
    microPerK: '1e-6/K',
    microPerDegF: '1e-6/degF',
    perM: '1/m',
    perMm: '1/mm',
    perInch: '1/in',
    NmPerM: 'N m/m',
    kNmPerM: 'kN m/m',
    lbfInPerIn: 'lbf in/in',
  };
  const short: Readonly<Record<string, string>> = { gaugePressure: 'gauge', absolutePressure: 'absolute' };

  const camel = (words: string): string => words.replace(/ (\w)/gu, (_, letter: string) => letter.toUpperCase());
  const nameOf = (kind: Kind): string => short[camel(kind)] ?? camel(kind);
  const spaces = quantity as unknown as Readonly<Record<string, Readonly<Record<string, Constructor>>>>;
  const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
  const isReader = (name: string): boolean => /^in[A-Z]/u.test(name);
  const plain = (text: string): string => text.replaceAll(/[ ()]/gu, '').toLowerCase();

  const members = kinds.flatMap((kind) =>
    Object.entries(spaces[nameOf(kind)] ?? {}).map(([name, member]) => [nameOf(kind), name, kind, member] as const),
  );
  const constructors = members.filter(([, name]) => !isReader(name));

  it('is there for every kind, and no unit stands outside one', () => {
    const functions = Object.entries(quantity).filter(([, value]) => typeof value === 'function');
    expect(functions.map(([name]) => name).sort()).toEqual([
      'difference',
      'exactly',
      'exampleOf',
      'formatQuantity',
      'joinLines',
      'line',
      'preferredUnit',
      'readQuantity',
      'roundedDown',
      'roundedUp',
      'saidIn',
      'shift',
      'siSymbol',
      'toAbsolute',
      'toGauge',
      'torqued',
      'unitOf',
      'weighed',
      'writeQuantity',
      'written',
    ]);
    const objects = Object.keys(quantity).filter((name) => typeof spaces[name] === 'object' && name !== 'units');
    expect(objects.sort()).toEqual(kinds.map(nameOf).sort());
  });

  it.each(kinds)('of %s holds constructors and their readers, and nothing else', (kind) => {
    const names = Object.keys(spaces[nameOf(kind)] ?? {});
    const wanted = names.filter((name) => !isReader(name)).flatMap((name) => [name, `in${capital(name)}`]);
    expect([...names].sort()).toEqual(wanted.sort());
  });

  it.each(kinds)('of %s has a constructor for every unit of the table, where units of one size count once', (kind) => {
    const built = new Set(constructors.filter(([, , of]) => of === kind).map(([, , , build]) => build(12.34)));
    const missing = Object.entries(units[kind]).filter(([, unit]) => !built.has(toSi(12.34, unit)));
    expect(missing.map(([symbol]) => symbol)).toEqual([]);
  });

  it.each(constructors)('%s: %s agrees with the unit table', (space, name, kind, build) => {
    const symbol = symbols[`${space} ${name}`] ?? symbols[name] ?? name.replace('Per', '/');
    const candidates = everyUnit.filter(([of, written]) => of === kind && plain(written) === plain(symbol));
    const value = 12.34;
    const wanted = new Set(candidates.map(([, , unit]) => toSi(value, unit)));
    expect([...wanted], `${name} should stand for ${symbol}`).toEqual([build(value)]);
    const read = spaces[space]?.[`in${capital(name)}`];
    expect(Math.abs((read?.(build(value)) ?? Number.NaN) - value)).toBeLessThanOrEqual(1e-12);
  });
});
