import { baseUnits, type Dimension, dimensions } from '../quantity/dimensions.js';
import { type Kind, siSymbol, unitOf, units } from '../quantity/index.js';

/**
 * One unit for each kind of a calculation, chosen so that the numbers can be multiplied as they stand: with N, mm and MPa
 * the arithmetic on paper gives the printed result and no factor of a thousand is hidden between two lines.
 */
export type CoherentUnits = Readonly<Partial<Record<Kind, string>>>;

type Base = Readonly<Required<Dimension>>;

const INCH = 0.0254;
const LENGTHS = [0.001, 1, 0.01, INCH, 12 * INCH];
/** Tonne and kilogram: with millimetre or metre they make N and MPa, or N and Pa. The rest follows from the units wanted. */
const MASSES = [1000, 1];
const TIMES = [1, 60, 3600, 86400, 31557600];
const TEMPERATURES = [1, 5 / 9];

function factor(dimension: Dimension, base: Base): number {
  return baseUnits.reduce((product, unit) => product * base[unit] ** (dimension[unit] ?? 0), 1);
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
  return [wanted, ...Object.keys(units[kind])].find((symbol) => {
    const found = factorOf(kind, symbol);
    return found !== undefined && same(found, size);
  });
}

/** Every base that could suit, the usual ones first. */
function* bases(wanted: ReadonlyMap<Kind, string>): Generator<Base> {
  const uses = (unit: keyof Dimension): boolean => [...wanted.keys()].some((kind) => dimensions[kind][unit]);
  for (const s of uses('s') ? TIMES : [1]) {
    for (const m of uses('m') ? [...LENGTHS, ...lengthsFor(wanted)] : [1]) {
      for (const K of uses('K') ? TEMPERATURES : [1]) {
        const rest = { m, s, K, mol: 1, A: 1 };
        for (const kg of uses('kg') ? [...MASSES, ...massesFor(wanted, rest)] : [1]) yield { kg, ...rest };
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

/**
 * Sets of coherent units for the kinds of a calculation, the one that keeps most of the wanted units first, SI last.
 * Only units that the tables know are taken.
 */
export function coherentSets(wanted: ReadonlyMap<Kind, string>): CoherentUnits[] {
  const found: { set: CoherentUnits; kept: number }[] = [];
  for (const base of bases(wanted)) {
    const entries = [...wanted].map(([kind, symbol]) => {
      const plain = Object.keys(dimensions[kind]).length === 0;
      return [kind, plain ? siSymbol(kind) : unitOfSize(kind, factor(dimensions[kind], base), symbol)] as const;
    });
    if (entries.some(([, symbol]) => symbol === undefined)) continue;
    found.push({
      set: Object.fromEntries(entries) as CoherentUnits,
      kept: entries.reduce((kept, [kind, symbol]) => kept + (symbol === wanted.get(kind) ? weight(kind) : 0), 0),
    });
  }
  // The sort is stable: among equals the usual base stays in front.
  found.sort((a, b) => b.kept - a.kept);
  return [...found.map(({ set }) => set), siUnits(wanted.keys())];
}
