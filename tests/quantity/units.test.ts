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

describe('constructors and readers', () => {
  type Constructor = (value: number) => number;
  const spaces: Readonly<Record<string, Kind>> = {
    absolute: 'absolute pressure',
    gauge: 'gauge pressure',
    modulus: 'modulus',
    ratio: 'ratio',
    strain: 'strain',
    stress: 'stress',
  };
  /** Names that are not the symbol with `/` read as Per. */
  const symbols: Readonly<Record<string, string>> = {
    inch: 'in',
    minute: 'min',
    hour: 'h',
    kelvin: 'K',
    deltaK: 'K',
    fraction: '1',
    percent: '%',
    micro: 'microstrain',
    Nm: 'N m',
    Nmm: 'N mm',
    lbfFt: 'lbf ft',
    MNPerM32: 'MN/m^(3/2)',
    inchLbfPerIn2: 'in lbf/in2',
    JPerKgK: 'J/(kg K)',
    kJPerKgK: 'kJ/(kg K)',
    JPerMolK: 'J/(mol K)',
    WPerMK: 'W/(m K)',
    kgPerM2S: 'kg/(m2 S)',
    partsPerK: '1/K',
    molarJPerMol: 'J/mol',
    molarKJPerMol: 'kJ/mol',
    perMin: '1/min',
    perS: '1/s',
    perK: '1/K',
    perDegF: '1/degF',
  };
  const notConstructors = [
    'difference',
    'exactly',
    'exampleOf',
    'line',
    'readQuantity',
    'roundedDown',
    'roundedUp',
    'shift',
    'siSymbol',
    'toAbsolute',
    'toGauge',
    'unitOf',
    'units',
    'writeQuantity',
  ];

  const lowered = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9%^]/gu, '');
  const symbolOf = (name: string): string => symbols[name] ?? name.replace('Per', '/');

  const functionsOf = (space: object): Map<string, Constructor> =>
    new Map(Object.entries(space).filter((entry): entry is [string, Constructor] => typeof entry[1] === 'function'));

  /** A reader is called in + its constructor: inMm, inInch. `inch` itself is a constructor. */
  const readerName = (name: string): string => `in${name.charAt(0).toUpperCase()}${name.slice(1)}`;

  interface Pair {
    readonly name: string;
    readonly build: Constructor;
    readonly read: Constructor | undefined;
    readonly kind: Kind | undefined;
  }

  function pairsOf(space: object, kind?: Kind): Pair[] {
    const functions = functionsOf(space);
    const readers = new Set([...functions.keys()].map(readerName).filter((name) => functions.has(name)));
    const constructors = [...functions].filter(([name]) => !readers.has(name) && !notConstructors.includes(name));
    return constructors.map(([name, build]) => ({ name, build, read: functions.get(readerName(name)), kind }));
  }

  const cases = [
    ...pairsOf(quantity),
    ...Object.entries(spaces).flatMap(([space, kind]) =>
      pairsOf((quantity as unknown as Record<string, object>)[space] ?? {}, kind),
    ),
  ];

  it('are as many as there are units with a name', () => {
    expect(cases.length).toBeGreaterThan(100);
  });

  it.each(cases.map((one) => [one.kind ?? 'its kind', one.name, one] as const))(
    'of %s: %s agrees with the unit table',
    (_, name, { build, read, kind }) => {
      expect(read, `${name} has no reader ${readerName(name)}`).toBeDefined();
      const candidates = everyUnit.filter(
        ([of, symbol]) => (kind === undefined || of === kind) && lowered(symbol) === lowered(symbolOf(name)),
      );
      const value = 12.34;
      const wanted = new Set(candidates.map(([, , unit]) => toSi(value, unit)));
      expect([...wanted], `${name} should stand for ${symbolOf(name)}`).toContain(build(value));
      expect(Math.abs((read?.(build(value)) ?? Number.NaN) - value)).toBeLessThanOrEqual(1e-12);
    },
  );
});
