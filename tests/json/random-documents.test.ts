import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { type DecodedCase, decodeCase, encodeDesign, isCaseError, parseCase } from '../../src/json/index.js';
import { readQuantity, units } from '../../src/quantity/index.js';
import { designRepair, type RepairDesign } from '../../src/repair/index.js';
import { calculationSheet } from '../../src/report/index.js';
import { exampleDocument, exampleNames, exampleText } from './examples.js';

type Path = readonly (string | number)[];

/** Every place of a document, leaves and holders alike. */
function placesOf(value: unknown, path: Path = []): Path[] {
  const own = path.length === 0 ? [] : [path];
  if (typeof value !== 'object' || value === null) return own;
  const keys = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  return [...own, ...keys.flatMap((key) => placesOf((value as Record<string | number, unknown>)[key], [...path, key]))];
}

const places = new Map(exampleNames.map((name) => [name, placesOf(exampleDocument(name))]));

type Holder = Record<string | number, unknown>;

function holderOf(document: unknown, path: Path): Holder | undefined {
  let holder: unknown = document;
  for (const key of path.slice(0, -1)) {
    if (typeof holder !== 'object' || holder === null) return undefined;
    holder = (holder as Holder)[key];
  }
  return typeof holder === 'object' && holder !== null ? (holder as Holder) : undefined;
}

/** One change of a document: what becomes of the value at a place. */
type Change = (value: unknown, holder: Holder, key: string | number) => void;

const hostile: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, undefined, Number.NaN, Infinity, -Infinity, -0, 0, -1, 1e308, 5e-324, '', ' ', 'none'),
  fc.constantFrom<unknown>(
    'NaN mm',
    'Infinity bar',
    '1e999 mm',
    '-0 mm',
    '0 mm',
    '-5 mm',
    '8.18',
    '1/0 in',
    '1e-300 mm',
  ),
  fc.constantFrom<unknown>(
    '-274 degC',
    '1e300 MPa',
    '100 %',
    '1',
    '0',
    '__proto__',
    '8 furlong',
    '6 bara',
    '7 K',
    true,
  ),
  fc.constantFrom<unknown>([], {}, [[]], { form: 'tape' }, { row: 'API 5L B' }, { nps: '8', schedule: '40' }),
  fc.jsonValue({ maxDepth: 2 }),
  fc.string(),
  fc.double(),
);

const replaced: fc.Arbitrary<Change> = hostile.map((value) => (_, holder, key) => {
  holder[key] = value;
});

const taken: fc.Arbitrary<Change> = fc.constant((_, holder, key) => {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
});

const added: fc.Arbitrary<Change> = fc
  .tuple(fc.constantFrom('colour', 'wallThicknes', '__proto__', 'constructor', 'at', 'note'), hostile)
  .map(([name, value]) => (_, holder) => {
    Object.defineProperty(holder, name, { value, enumerable: true, configurable: true, writable: true });
  });

/** The same text with another size: what a slip of the decimal point or a strange pipe would bring. */
const scaled: fc.Arbitrary<Change> = fc
  .double({ min: -4, max: 4, noNaN: true })
  .map((power) => (value, holder, key) => {
    const factor = 10 ** power;
    if (typeof value === 'number') holder[key] = value * factor;
    const [, number, unit] = typeof value === 'string' ? (/^([\d.e-]+) ?(\D.*)?$/u.exec(value) ?? []) : [];
    if (number !== undefined) holder[key] = `${Number(number) * factor} ${unit ?? ''}`.trim();
  });

const otherUnit: fc.Arbitrary<Change> = fc.nat().map((pick) => (value, holder, key) => {
  if (typeof value !== 'string') return;
  const table = Object.entries(units).find(([kind]) => readQuantity(kind as keyof typeof units, value).ok)?.[1];
  const symbols = Object.keys(table ?? {});
  const number = /^[\d.e-]+/u.exec(value)?.[0];
  if (number !== undefined && symbols.length > 0) holder[key] = `${number} ${symbols[pick % symbols.length]}`;
});

const CHOICES: Readonly<Record<string, readonly unknown[]>> = {
  basis: ['ISO 24817', 'ASME PCC-2'],
  class: [1, 2, 3],
  kind: ['metal loss', 'through-wall hole', 'through-wall slot', 'crack', 'dent', 'gouge'],
  cause: ['internal corrosion', 'external corrosion', 'internal erosion', 'mechanical damage', 'unknown'],
  phase: ['liquid', 'gas', 'two-phase'],
  soil: ['present', 'none'],
  surge: ['included', '5 bar', '45 bar', '300 bar'],
  cracking: [
    'none',
    { environment: 'sour' },
    { environment: 'stress corrosion', test: { method: 'dye', result: 'no crack found', date: '2026-03-12' } },
  ],
  fibre: ['glass', 'carbon'],
  growth: ['none', { depth: '0.3 mm/year', length: '1 mm/year' }],
  cycles: ['none', { number: 5e6, lowestPressure: '1 bar', highestPressure: '6 bar' }],
  filler: ['none'],
  resin: ['none'],
  wrap: [{ form: 'sheet', width: '300 mm', rollLength: '20 m', finalLap: '50 mm' }],
};

const chosen: fc.Arbitrary<Change> = fc.nat().map((pick) => (_, holder, key) => {
  const choices = CHOICES[key];
  if (choices !== undefined) holder[key] = structuredClone(choices[pick % choices.length]);
});

const METHODS = ['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength'];
const STRENGTHS = [
  'original B31G',
  'modified B31G',
  'effective area',
  'DNV-RP-F101',
  'API 579-1 Level 1',
  'API 579-1 Level 2',
];

/** Fields that the examples leave out. */
const demanded: fc.Arbitrary<(document: Holder) => void> = fc
  .record({
    method: fc.option(fc.constantFrom(...METHODS)),
    strength: fc.option(fc.constantFrom(...STRENGTHS)),
    flowStress: fc.option(fc.constantFrom('SMYS + 69 MPa', '1.1 SMYS', '(SMYS + SMTS) / 2')),
    longTerm: fc.option(fc.constantFrom('1000 h survival', 'design life regression')),
    overlap: fc.option(fc.constantFrom('20 mm', '40 mm', '200 mm')),
    hot: fc.boolean(),
  })
  .map((wish) => (document) => {
    const repair = document['repair'] as Holder | undefined;
    const laminate = document['laminate'] as Holder | undefined;
    if (typeof repair !== 'object' || typeof laminate !== 'object') return;
    if (wish.method !== null) repair['method'] = wish.method;
    if (wish.overlap !== null) repair['availableOverlap'] = wish.overlap;
    if (wish.longTerm !== null) laminate['longTermStrength'] = { strength: '90 MPa', test: wish.longTerm };
    if (wish.hot) {
      laminate['atDesignTemperature'] = {
        energyReleaseRate: '120 J/m2',
        hoopModulus: '21 GPa',
        axialModulus: '10 GPa',
      };
    }
    if (wish.strength !== null || wish.flowStress !== null) {
      const flow = wish.flowStress === null ? {} : { flowStress: wish.flowStress };
      document['assessment'] = { ...(wish.strength === null ? {} : { method: wish.strength }), ...flow };
    }
  });

function documents(changes: fc.Arbitrary<Change>, most: number): fc.Arbitrary<unknown> {
  return fc
    .tuple(
      fc.constantFrom(...exampleNames),
      demanded,
      fc.boolean(),
      fc.array(fc.tuple(fc.nat(), changes), { minLength: 1, maxLength: most }),
    )
    .map(([name, demand, asks, edits]) => {
      const document = exampleDocument(name);
      if (asks) demand(document);
      const all = places.get(name) ?? [];
      for (const [pick, change] of edits) {
        const path = all[pick % all.length];
        const key = path?.at(-1);
        const holder = path && holderOf(document, path);
        if (holder !== undefined && key !== undefined) change(holder[key], holder, key);
      }
      return document;
    });
}

/** The first number that is NaN or an infinity, however deep it stands, with its path, which is made up only on the way back. */
function notFinite(value: unknown): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : ` is ${value}`;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const key of Object.keys(value)) {
    const found = notFinite((value as Holder)[key]);
    if (found !== undefined) return `.${key}${found}`;
  }
  return undefined;
}

/** No number of a design is NaN or an infinity. */
function expectFinite(value: unknown, path: string): void {
  const found = notFinite(value);
  if (found !== undefined) throw new Error(`${path}${found}`);
}

function expectWhole(design: RepairDesign): void {
  expectFinite(design, 'design');
  switch (design.verdict) {
    case 'designed':
      expect(design.reasons).toEqual([]);
      expect(design.missing).toEqual([]);
      expect(design.laminate?.plies).toBeGreaterThanOrEqual(1);
      expect(design.laminate?.laidThickness).toBeGreaterThanOrEqual(design.laminate?.thickness.value ?? Infinity);
      expect(design.extent?.totalLength).toBeGreaterThan(0);
      expect(design.wrap?.rolls).toBeGreaterThanOrEqual(1);
      break;
    case 'needs input':
      expect(design.missing.length).toBeGreaterThan(0);
      break;
    default:
      expect(['not repairable', 'not covered']).toContain(design.verdict);
      expect(design.reasons.length).toBeGreaterThan(0);
  }
}

type Outcome = RepairDesign['verdict'] | 'CaseError' | 'CalculationError';

/** What becomes of a document. Any other end than these is thrown on and fails the test. */
function outcomeOf(read: () => DecodedCase, encode = true): Outcome {
  try {
    const decoded = read();
    const design = designRepair(decoded.case, { record: true });
    expectWhole(design);
    if (encode) expectFinite(encodeDesign(design, decoded), 'json');
    return design.verdict;
  } catch (error) {
    if (isCaseError(error)) {
      for (const { message } of error.issues) expect(message).toMatch(/\S.*; |: |\)/u);
      return 'CaseError';
    }
    if (isCalculationError(error)) {
      expect(error.message).not.toMatch(/undefined|\[object/u);
      return 'CalculationError';
    }
    throw error;
  }
}

function tally(arbitrary: fc.Arbitrary<unknown>, numRuns: number): ReadonlyMap<Outcome, number> {
  const counts = new Map<Outcome, number>();
  let runs = 0;
  fc.assert(
    fc.property(arbitrary, (document) => {
      // Writing a design as JSON takes longer than making it, so only every fourth is written.
      const outcome = outcomeOf(() => decodeCase(document), runs++ % 4 === 0);
      counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
    }),
    { seed: 20261125, numRuns },
  );
  return counts;
}

describe('a random document ends in a valid design, a verdict, or a sentence', () => {
  test('where it is broken in any way', () => {
    const counts = tally(documents(fc.oneof(replaced, taken, added, scaled, otherUnit, chosen), 4), 3000);
    expect(counts.get('CaseError')).toBeGreaterThan(1000);
    expect(counts.get('designed')).toBeGreaterThan(100);
  });

  test('where every field still reads, but sizes and choices are any', () => {
    const counts = tally(documents(fc.oneof(scaled, chosen, chosen), 6), 2500);
    expect(counts.get('designed')).toBeGreaterThan(200);
    expect(counts.get('not repairable')).toBeGreaterThan(50);
    expect(counts.get('not covered')).toBeGreaterThan(400);
    expect(counts.get('needs input')).toBeGreaterThan(20);
  });

  test('where it is no case at all', () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true }), (anything) => {
        expect(outcomeOf(() => decodeCase(anything))).toBe('CaseError');
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  test('where its text was cut or overwritten anywhere', () => {
    const cut = fc.tuple(fc.constantFrom(...exampleNames), fc.nat(), fc.nat({ max: 30 }), fc.string({ maxLength: 5 }));
    fc.assert(
      fc.property(cut, ([name, at, length, filling]) => {
        const text = exampleText(name);
        const from = at % text.length;
        outcomeOf(() => parseCase(text.slice(0, from) + filling + text.slice(from + length)));
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  test('and what is designed can be printed', () => {
    const nonsense = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object/u;
    fc.assert(
      fc.property(documents(fc.oneof(scaled, chosen), 3), (document) => {
        try {
          const { case: repairCase, typed } = decodeCase(document);
          const sheet = calculationSheet(designRepair(repairCase, { record: true }), { typed });
          // The texts of the user stand on the sheet as they are, even one that reads NaN.
          fc.pre(!nonsense.test(JSON.stringify(document)));
          expect(sheet).not.toMatch(nonsense);
        } catch (error) {
          if (!isCaseError(error) && !isCalculationError(error)) throw error;
        }
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });
});
