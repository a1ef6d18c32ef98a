import { fromSi, type Kind, type Quantity, toSi } from './quantity.js';
import { unitOf, units } from './units/index.js';

/** What became of a text that should hold a quantity: the quantity and how it was written, or what is wrong with it. */
export type QuantityReading<K extends Kind> =
  | {
      /** Whether it holds one. */
      readonly ok: true;
      /** In the coherent SI unit. */
      readonly quantity: Quantity<K>;
      /** The number as it was written. */
      readonly number: number;
      /** Symbol of the unit that was read. */
      readonly unit: string;
    }
  | {
      /** Whether it holds one. */
      readonly ok: false;
      /** What is wrong with the text, in a sentence with what would be right. */
      readonly problem: string;
    };

const NUMBER_THEN_UNIT =
  /^\s*(?<sign>[+-]?)(?:(?:(?<whole>\d+)(?:\s+|-))?(?<top>\d+)\/(?<bottom>\d+)|(?<decimal>(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?))\s*(?<unit>.*?)\s*$/iu;

/** Characters that a number with its unit takes at most: the pattern takes the square of its length in time. */
const LONGEST = 200;

/** Between number and unit they would pass as blanks, and as ends of a line in a sheet that shows what was typed. */
const HAS_LINE_END = /[\n\v\f\r\u0085\u2028\u2029]/u;

/** Spellings that people type, and the symbol that the unit tables use. */
const SPELLINGS: Readonly<Record<string, string>> = {
  '"': 'in',
  inch: 'in',
  inches: 'in',
  feet: 'ft',
  µm: 'um',
  μm: 'um',
  micron: 'um',
  '°C': 'degC',
  C: 'degC',
  '°F': 'degF',
  F: 'degF',
  '%': '%',
  percent: '%',
  minute: 'min',
  minutes: 'min',
  hour: 'h',
  hours: 'h',
  days: 'day',
  d: 'day',
  years: 'year',
  yr: 'year',
  y: 'year',
  'mm/y': 'mm/year',
  'mm/yr': 'mm/year',
  'mm/a': 'mm/year',
  mpy: 'mil/year',
  l: 'L',
  ml: 'mL',
  lbs: 'lb',
  'mm²': 'mm2',
  'm²': 'm2',
  'm³': 'm3',
  'kg/m³': 'kg/m3',
  'g/cm³': 'g/cm3',
  'g/m²': 'g/m2',
  'J/m²': 'J/m2',
  'N/mm²': 'N/mm2',
  Nm: 'N m',
  N·m: 'N m',
  // As a sheet prints them behind a number.
  '/K': '1/K',
  '/degC': '1/degC',
  '/degF': '1/degF',
  '/s': '1/s',
  '/min': '1/min',
  '/h': '1/h',
  '/m': '1/m',
  '/mm': '1/mm',
  '/in': '1/in',
};

/** Two units of each kind that an example may use. */
const EXAMPLES: Partial<Record<Kind, string>> = {
  length: '"8.18 mm" or "1/2 in"',
  time: '"20 min" or "10 year"',
  'gauge pressure': '"10 bar" or "150 psig"',
  'absolute pressure': '"1.013 bar" or "14.7 psia"',
  stress: '"241 MPa" or "35 ksi"',
  modulus: '"207 GPa" or "30 Msi"',
  temperature: '"30 degC" or "86 degF"',
  'temperature difference': '"3 K" or "5 deltaF"',
  ratio: '"0.5" or "50 %"',
  strain: '"0.25 %" or "2500 microstrain"',
  'corrosion rate': '"0.1 mm/year" or "4 mil/year"',
  angle: '"54.7 deg" or "0.955 rad"',
};

/**
 * An example of a text that would pass for a kind.
 *
 * @param kind of the quantity
 */
export function exampleOf(kind: Kind): string {
  return EXAMPLES[kind] ?? `"1 ${Object.keys(units[kind])[0]}"`;
}

/** Units without a prefix: whatever their letters are, small or capital, they mean one thing. M and m before another do not. */
const OF_ANY_CASE = /^(?:psi[ag]?|ksi|bar[ag]?|in|ft|lbs?|lbf)$/iu;

/** Every way in which a unit of a kind may be written, and whether small and capital letters are one there. */
export function spellingsOf(kind: Kind, symbol: string): { readonly text: string; readonly anyCase: boolean }[] {
  const spelt = Object.keys(SPELLINGS).filter((each) => SPELLINGS[each] === symbol && unitOf(kind, each) === undefined);
  return [symbol, ...spelt.filter((each) => each !== symbol)].map((text) => ({
    text,
    anyCase: OF_ANY_CASE.test(text),
  }));
}

function respelt(written: string): string {
  const spelt = OF_ANY_CASE.test(written) ? written.toLowerCase() : written;
  return Object.hasOwn(SPELLINGS, spelt) ? (SPELLINGS[spelt] ?? spelt) : spelt;
}

function numberOf(groups: Record<string, string | undefined>): number {
  const { sign, whole, top, bottom, decimal } = groups;
  const size = decimal === undefined ? Number(whole ?? 0) + Number(top) / Number(bottom) : Number(decimal);
  return sign === '-' ? -size : size;
}

function kindsWithUnit(symbol: string): Kind[] {
  return (Object.keys(units) as Kind[]).filter((kind) => unitOf(kind, symbol) !== undefined);
}

function wrongUnit(kind: Kind, text: string, symbol: string): string {
  const others = kindsWithUnit(symbol);
  const near = Object.keys(units[kind]).find((each) => each.toLowerCase() === symbol.toLowerCase());
  const why = symbol.startsWith(',')
    ? 'a comma divides no number here; write the decimals after a point, 6.5, and thousands without a mark'
    : others.length > 0
      ? `${symbol} is a unit of ${others.join(', ')}, not of ${kind}`
      : `the unit "${symbol}" is unknown${near === undefined ? '' : `; did you mean ${near}?`}`;
  return `${JSON.stringify(text)}: ${why}; a ${kind} is written in ${Object.keys(units[kind]).join(', ')}, for example ${exampleOf(kind)}`;
}

/**
 * Reads a number with its unit, such as `"8.18 mm"`, `"1/2 in"`, `"1 1/2 in"`, `"150 psig"` or `"30 degC"`.
 * A unit that serves several kinds (`psi`, `bar`) takes the kind that is asked for. Never throws.
 *
 * @param kind that is asked for
 * @param text number and unit, at most 200 characters
 */
export function readQuantity<K extends Kind>(kind: K, text: string): QuantityReading<K> {
  if (text.length > LONGEST) {
    const problem = `a text of ${text.length} characters is no number with a unit, which takes ${LONGEST} at most; a ${kind} looks like ${exampleOf(kind)}`;
    return { ok: false, problem };
  }
  const groups = HAS_LINE_END.test(text.trim()) ? undefined : NUMBER_THEN_UNIT.exec(text)?.groups;
  if (groups === undefined) {
    return {
      ok: false,
      problem: `${JSON.stringify(text)} is not a number with a unit; a ${kind} looks like ${exampleOf(kind)}`,
    };
  }
  const number = numberOf(groups);
  if (!Number.isFinite(number)) {
    return {
      ok: false,
      problem: `${JSON.stringify(text)} is not a finite number; a ${kind} looks like ${exampleOf(kind)}`,
    };
  }
  const written = groups['unit'] ?? '';
  const bare = unitOf(kind, '1') === undefined ? '' : '1';
  const symbol = written === '' ? bare : unitOf(kind, written) === undefined ? respelt(written) : written;
  if (symbol === '') {
    return { ok: false, problem: `${JSON.stringify(text)} has no unit; a ${kind} looks like ${exampleOf(kind)}` };
  }
  const unit = unitOf(kind, symbol);
  if (unit === undefined) return { ok: false, problem: wrongUnit(kind, text, symbol) };
  const quantity = toSi(number, unit);
  if (!Number.isFinite(quantity)) {
    return {
      ok: false,
      problem: `${JSON.stringify(text)} is too large to compute with; a ${kind} looks like ${exampleOf(kind)}`,
    };
  }
  if (kind === 'temperature' && quantity < 0) {
    return {
      ok: false,
      problem: `${JSON.stringify(text)} is below absolute zero (0 K, -273.15 degC, -459.67 degF); a ${kind} looks like ${exampleOf(kind)}`,
    };
  }
  return { ok: true, quantity: quantity as Quantity<K>, number, unit: symbol };
}

/**
 * Writes a quantity as the shortest text in `symbol` that reads back to the same float64, or in the SI unit when no text
 * in `symbol` does.
 *
 * @param kind of the quantity
 * @param quantity in SI
 * @param symbol of the unit
 * @throws RangeError when the kind has no such unit
 */
export function writeQuantity<K extends Kind>(kind: K, quantity: Quantity<K>, symbol: string): string {
  const unit = unitOf(kind, symbol);
  if (unit === undefined) throw new RangeError(`a ${kind} is not written in ${symbol}`);
  const value = fromSi(quantity, unit);
  for (let digits = 1; digits <= 17; digits++) {
    const number = Number(value.toPrecision(digits));
    if (toSi(number, unit) === quantity) return suffixed(number, symbol);
  }
  return suffixed(quantity, Object.keys(units[kind])[0] ?? '1');
}

function suffixed(number: number, symbol: string): string {
  return symbol === '1' ? String(number) : `${number} ${symbol}`;
}
