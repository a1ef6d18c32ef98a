import { baseUnits, type Dimension, dimensions } from '../quantity/dimensions.js';
import { type Kind, siSymbol, unitOf, units } from '../quantity/index.js';

/**
 * One unit for each kind of a calculation, chosen so that the numbers can be multiplied as they stand: with N, mm and MPa
 * the arithmetic on paper gives the printed result and no factor of a thousand is hidden between two lines.
 */
export type CoherentUnits = Readonly<Partial<Record<Kind, string>>>;

type Base = Readonly<Required<Dimension>>;

const INCH = 0.0254;
/** Sizes of a base unit, each with the units that ask for it; one that names none is always tried. */
type Sizes = readonly (readonly [size: number, askedBy?: RegExp])[];
const LENGTHS: Sizes = [[0.001], [1], [0.01, /cm/u], [INCH, /\b(?:in|in2|in3)\b|[pkM]si/u], [12 * INCH, /ft/u]];
/** Tonne and kilogram: with millimetre or metre they make N and MPa, or N and Pa. The rest follows from the units wanted. */
const MASSES = [1000, 1];
const TIMES: Sizes = [[1], [60, /min/u], [3600, /\bh\b/u], [86400, /day/u], [31557600, /year/u]];
const TEMPERATURES = [1, 5 / 9];

function factor(dimension: Dimension, base: Base): number {
  let product = 1;
  for (const unit of baseUnits) {
    const power = dimension[unit];
    if (power !== undefined && base[unit] !== 1) product *= base[unit] ** power;
  }
  return product;
}

function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-12 * Math.abs(b);
}

function factorOf(kind: Kind, symbol: string): number | undefined {
  const unit = unitOf(kind, symbol);
  return unit === undefined || unit[2] !== undefined ? undefined : unit[0] / unit[1];
}

/** The unit of a kind that has this size: the wanted one if it has, else the first in the table. */
function unitOfSize(kind: Kind, size: number, wanted: string): string | undefined {
  const own = factorOf(kind, wanted);
  if (own !== undefined && same(own, size)) return wanted;
  for (const symbol in units[kind]) {
    const found = factorOf(kind, symbol);
    if (found !== undefined && same(found, size)) return symbol;
  }
  return undefined;
}

function asked(sizes: Sizes, written: string): number[] {
  return sizes.flatMap(([size, by]) => (by === undefined || by.test(written) ? [size] : []));
}

/** The sizes without those that were met before. */
function distinct(sizes: readonly number[]): number[] {
  return sizes.filter((size, index) => !sizes.slice(0, index).some((before) => same(before, size)));
}

/** Every base that could suit, the usual ones first. */
function* bases(wanted: ReadonlyMap<Kind, string>): Generator<Base> {
  const uses = (unit: keyof Dimension): boolean => [...wanted.keys()].some((kind) => dimensions[kind][unit]);
  const written = [...wanted.values()].join(' ');
  for (const s of uses('s') ? asked(TIMES, written) : [1]) {
    for (const m of uses('m') ? distinct([...asked(LENGTHS, written), ...lengthsFor(wanted)]) : [1]) {
      for (const K of uses('K') ? TEMPERATURES : [1]) {
        const rest = { m, s, K, mol: 1, A: 1 };
        for (const kg of uses('kg') ? distinct([...MASSES, ...massesFor(wanted, rest)]) : [1]) yield { kg, ...rest };
      }
    }
  }
}

/** Lengths behind the areas and volumes that are wanted: a litre is a cubic decimetre. */
function lengthsFor(wanted: ReadonlyMap<Kind, string>): number[] {
  return [...wanted].flatMap(([kind, symbol]) => {
    const size = factorOf(kind, symbol);
    const { m, ...others } = dimensions[kind];
    return size === undefined || m === undefined || Object.keys(others).length > 0 ? [] : [size ** (1 / m)];
  });
}

function massesFor(wanted: ReadonlyMap<Kind, string>, rest: Omit<Base, 'kg'>): number[] {
  return [...wanted].flatMap(([kind, symbol]) => {
    const size = factorOf(kind, symbol);
    const power = dimensions[kind].kg;
    if (size === undefined || power === undefined) return [];
    return [(size / factor(dimensions[kind], { kg: 1, ...rest })) ** (1 / power)];
  });
}

/** The gas constant is known by heart as 8.314 J/(mol K): everything else gives way to that. */
function weight(kind: Kind): number {
  return kind === 'molar heat capacity' ? 3 : 1;
}

/** The coherent SI units of some kinds. */
export function siUnits(kinds: Iterable<Kind>): CoherentUnits {
  return Object.fromEntries([...kinds].map((kind) => [kind, siSymbol(kind)]));
}

/** Sets by what was wanted: a sheet asks for the same ones over and over. */
const setsKnown = new Map<string, readonly CoherentUnits[]>();

/**
 * Sets of coherent units for the kinds of a calculation, the one that keeps most of the wanted units first, SI last.
 * Only units that the tables know are taken.
 */
export function coherentSets(wanted: ReadonlyMap<Kind, string>): readonly CoherentUnits[] {
  const key = JSON.stringify([...wanted]);
  const known = setsKnown.get(key);
  if (known !== undefined) return known;
  const sets = findSets(wanted);
  setsKnown.set(key, sets);
  return sets;
}

/** The set of one base, unless it has a kind that no unit of the tables fits. */
function setOf(wanted: ReadonlyMap<Kind, string>, base: Base): CoherentUnits | undefined {
  const set: Partial<Record<Kind, string>> = {};
  for (const [kind, symbol] of wanted) {
    const dimension = dimensions[kind];
    const plain = Object.keys(dimension).length === 0;
    const found = plain ? siSymbol(kind) : unitOfSize(kind, factor(dimension, base), symbol);
    if (found === undefined) return undefined;
    set[kind] = found;
  }
  return set;
}

function findSets(wanted: ReadonlyMap<Kind, string>): CoherentUnits[] {
  const found: { set: CoherentUnits; kept: number }[] = [];
  for (const base of bases(wanted)) {
    const set = setOf(wanted, base);
    if (set === undefined) continue;
    let kept = 0;
    for (const [kind, symbol] of wanted) if (set[kind] === symbol) kept += weight(kind);
    found.push({ set, kept });
  }
  // The sort is stable: among equals the usual base stays in front.
  found.sort((a, b) => b.kept - a.kept);
  return [...found.map(({ set }) => set), siUnits(wanted.keys())];
}
