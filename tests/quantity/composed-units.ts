/**
 * The factor of a unit to SI, composed from its written symbol and the definitions of the inch, the pound, the gallon and
 * the like, in exact fractions. Nothing here repeats a factor of the unit tables.
 */
export interface Fraction {
  readonly top: bigint;
  readonly bottom: bigint;
}

export const fraction = (top: bigint | number, bottom: bigint | number = 1): Fraction => ({
  top: BigInt(top),
  bottom: BigInt(bottom),
});

const times = (a: Fraction, b: Fraction): Fraction => ({ top: a.top * b.top, bottom: a.bottom * b.bottom });

const over = (a: Fraction, b: Fraction): Fraction => ({ top: a.top * b.bottom, bottom: a.bottom * b.top });

export const same = (a: Fraction, b: Fraction): boolean => a.top * b.bottom === b.top * a.bottom;

function power(base: Fraction, exponent: number): Fraction {
  let result = fraction(1);
  for (let step = 0; step < exponent; step++) result = times(result, base);
  return result;
}

const one = fraction(1);

/** What each unit is made of, by other units. */
const DEFINITIONS: Readonly<Record<string, () => Fraction>> = {
  // The yard is 0.9144 m and the pound 0.45359237 kg by the agreement of 1959; standard gravity is 9.80665 m/s2.
  yd: () => fraction(9144, 10_000),
  ft: () => over(composed('yd'), fraction(3)),
  in: () => over(composed('ft'), fraction(12)),
  mil: () => over(composed('in'), fraction(1000)),
  lb: () => fraction(45_359_237, 100_000_000),
  oz: () => over(composed('lb'), fraction(16)),
  lbf: () => times(composed('lb'), fraction(980_665, 100_000)),
  psi: () => over(composed('lbf'), times(composed('in'), composed('in'))),
  ksi: () => times(fraction(1000), composed('psi')),
  Msi: () => times(fraction(1_000_000), composed('psi')),
  psig: () => composed('psi'),
  psia: () => composed('psi'),
  gal: () => times(fraction(231), power(composed('in'), 3)),
  'fl oz': () => over(composed('gal'), fraction(128)),
  min: () => fraction(60),
  h: () => times(fraction(60), composed('min')),
  day: () => times(fraction(24), composed('h')),
  year: () => times(fraction(36525, 100), composed('day')),
  g: () => fraction(1, 1000),
  t: () => times(fraction(1000), composed('kg')),
  L: () => power(composed('dm'), 3),
  bar: () => times(fraction(100), composed('kPa')),
  barg: () => composed('bar'),
  bara: () => composed('bar'),
  atm: () => times(fraction(101_325), composed('Pa')),
  cal: () => times(fraction(4184, 1000), composed('J')),
  // A Fahrenheit degree is 5/9 K: 180 of them lie between 0 and 100 degC.
  degC: () => one,
  deltaC: () => one,
  degF: () => fraction(100, 180),
  deltaF: () => fraction(100, 180),
  '%': () => fraction(1, 100),
  microstrain: () => fraction(1, 1_000_000),
};

const COHERENT = new Set(['m', 's', 'K', 'mol', 'N', 'Pa', 'J', 'W', 'S', 'rad', '1']);

const PREFIXES: Readonly<Record<string, Fraction>> = {
  G: fraction(1_000_000_000),
  M: fraction(1_000_000),
  k: fraction(1000),
  h: fraction(100),
  d: fraction(1, 10),
  c: fraction(1, 100),
  m: fraction(1, 1000),
  u: fraction(1, 1_000_000),
};

/** One name, with or without a prefix, without an exponent. */
function named(name: string): Fraction {
  const definition = DEFINITIONS[name];
  if (definition !== undefined) return definition();
  if (COHERENT.has(name)) return one;
  const prefix = PREFIXES[name.charAt(0)];
  if (prefix === undefined || name.length === 1) throw new Error(`no definition of the unit ${name}`);
  return times(prefix, named(name.slice(1)));
}

function factor(text: string): Fraction {
  const scientific = /^1e(-?\d+)$/u.exec(text);
  if (scientific !== null) {
    const exponent = Number(scientific[1]);
    return exponent < 0 ? fraction(1, 10n ** BigInt(-exponent)) : fraction(10n ** BigInt(exponent));
  }
  const root = /^(?<name>[a-z]+)\^\((?<top>\d)\/2\)$/iu.exec(text)?.groups;
  if (root !== undefined) {
    const inside = named(root['name'] ?? '');
    if (!same(inside, one)) throw new Error(`${text} has no rational factor`);
    return one;
  }
  const parts = /^(?<name>.*?)(?<exponent>[23]?)$/u.exec(text)?.groups;
  return power(named(parts?.['name'] ?? text), Number(parts?.['exponent'] || 1));
}

/** The factor of a whole symbol: a product, or a quotient of products, the lower one in brackets when it has two factors. */
export function composed(symbol: string): Fraction {
  if (DEFINITIONS[symbol] !== undefined) return named(symbol);
  const slash = symbol.search(/\/(?!2\))/u);
  if (slash >= 0) {
    const below = symbol.slice(slash + 1).replace(/^\((.*)\)$/u, '$1');
    return over(composed(symbol.slice(0, slash)), composed(below));
  }
  return symbol.split(' ').map(factor).reduce(times);
}
