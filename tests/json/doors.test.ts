import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { decodeCase, isCaseError, parseCase } from '../../src/json/index.js';
import { checkCase } from '../../src/repair/case/check-case.js';
import { designRepair } from '../../src/repair/index.js';
import { exampleNames, exampleText } from './examples.js';
import { asDocument, changed, fullCases, type Loose, type Path, placesIn } from './full-document.js';

/** What a door says of a case: nothing where it takes it, else its sentences. Whatever else it throws is thrown on. */
function typedDoor(repairCase: Loose): string {
  try {
    checkCase(repairCase);
    return '';
  } catch (error) {
    if (isCalculationError(error) && error.code === 'invalid-input') return error.message;
    throw error;
  }
}

function jsonDoor(document: Loose): string {
  try {
    decodeCase(document);
    return '';
  } catch (error) {
    if (isCaseError(error)) return error.message;
    throw error;
  }
}

/** Where the two doors disagree about a case, what each says; nothing where both take it or both refuse it. */
function disagreement(repairCase: Loose, what: string): string[] {
  const [typed, json] = [typedDoor(repairCase), jsonDoor(asDocument(repairCase))];
  return (typed === '') === (json === '') ? [] : [`${what}: typed "${typed}", json "${json}"`];
}

function withoutRows(name: string): Loose {
  const { lookedUp: _, ...repairCase } = parseCase(exampleText(name)).case;
  return repairCase;
}

const full: readonly (readonly [string, Loose])[] = fullCases();

const cases: readonly (readonly [string, Loose])[] = [
  ...full,
  ...exampleNames.map((name) => [name, withoutRows(name)] as const),
];

const PROBES: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  null,
  '',
  ' ',
  [],
  {},
  [[]],
  -1,
  0,
  0.5,
  true,
  'none',
  'a wrong word',
];

describe('the two doors', () => {
  it.each(cases)('take the case %s, and the same from text as from numbers', (_, repairCase) => {
    expect(typedDoor(repairCase)).toBe('');
    expect(decodeCase(asDocument(repairCase)).case).toEqual(checkCase(repairCase));
  });

  it.each(full)('agree on whatever stands in any place of %s', (_, repairCase) => {
    const places = placesIn(repairCase);
    expect(places.length).toBeGreaterThan(100);
    const disagreed = places.flatMap((path) =>
      PROBES.flatMap((probe) => disagreement(changed(repairCase, path, probe), `${path.join('.')} = ${String(probe)}`)),
    );
    expect(disagreed).toEqual([]);
  });

  it.each(cases)('agree on every field of %s that is missing', (_, repairCase) => {
    const disagreed = placesIn(repairCase).flatMap((path) => disagreement(changed(repairCase, path), path.join('.')));
    expect(disagreed).toEqual([]);
  });

  it('refuse a number that is none in every place that holds a number', () => {
    for (const [, repairCase] of cases) {
      const numbers = placesIn(repairCase).filter((path) => typeof valueIn(repairCase, path) === 'number');
      const taken = numbers.filter((path) =>
        [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY].some(
          (value) => typedDoor(changed(repairCase, path, value)) === '',
        ),
      );
      expect(taken).toEqual([]);
    }
  });

  it('refuse a field that nobody knows, wherever it stands', () => {
    for (const [, repairCase] of cases) {
      const holders = placesIn(repairCase).filter((path) => isRecord(valueIn(repairCase, path)));
      for (const path of [[], ...holders]) {
        for (const key of ['colour', 'constructor', '__proto__', 'toString']) {
          const strange = changed(repairCase, [...path, key], 1);
          expect(typedDoor(strange)).toContain(key);
          expect(jsonDoor(asStranger(strange, path, key))).toContain(key);
        }
      }
    }
  });

  it('agree on random slips, and what they take is designed without a number that is none', () => {
    let taken = 0;
    fc.assert(
      fc.property(slips, (repairCase) => {
        expect(disagreement(repairCase, 'slip')).toEqual([]);
        if (typedDoor(repairCase) !== '') return;
        taken += 1;
        expectFinite(answerTo(repairCase), 'design');
      }),
      { seed: 20261125, numRuns: 1500 },
    );
    expect(taken).toBeGreaterThan(300);
    expect(taken).toBeLessThan(1300);
  });
});

/** A design, or the refusal of a calculation in it. */
function answerTo(repairCase: Loose): unknown {
  try {
    return designRepair(repairCase);
  } catch (error) {
    if (isCalculationError(error)) return error.message;
    throw error;
  }
}

/** No number is NaN or an infinity, however deep it stands. */
function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${path} is ${value}`);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, member] of Object.entries(value)) expectFinite(member, `${path}.${key}`);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function valueIn(value: Loose, path: Path): unknown {
  return path.reduce((held, key) => held?.[key], value);
}

/** The document of a case with a strange key, which `Object.fromEntries` would take for the prototype. */
function asStranger(repairCase: Loose, path: Path, key: string): Loose {
  return changed(asDocument(changed(repairCase, [...path, key])), [...path, key], 1);
}

/** One to three places changed: another size, another word, nothing at all, or something strange. */
const slips: fc.Arbitrary<Loose> = fc
  .tuple(
    fc.constantFrom(...cases.map(([, repairCase]) => repairCase)),
    fc.array(fc.tuple(fc.nat(), fc.nat(), fc.double({ min: -3, max: 3, noNaN: true }), fc.nat(9)), {
      minLength: 1,
      maxLength: 3,
    }),
  )
  .map(([repairCase, edits]) => {
    const places = placesIn(repairCase);
    let slipped = repairCase;
    for (const [pick, word, power, sort] of edits) {
      const path = places[pick % places.length] ?? [];
      const held = valueIn(slipped, path);
      if (sort < 7 && typeof held === 'number')
        slipped = changed(slipped, path, held * 10 ** (power * (sort < 4 ? 0.1 : 1)));
      else if (sort < 8) slipped = changed(slipped, path, WORDS[word % WORDS.length]);
      else if (sort < 9) slipped = changed(slipped, path);
    }
    return slipped;
  });

const WORDS = [
  'none',
  'crack',
  'metal loss',
  'through-wall hole',
  'gas',
  'liquid',
  'sheet',
  'tape',
  'moisture',
  3,
  true,
];

describe('what the typed door lets in', () => {
  const [, given] = cases[0] as (typeof cases)[number];

  it('is a copy that later edits of the case do not change', () => {
    const before = structuredClone(given);
    const mine = structuredClone(given);
    const design = designRepair(mine);
    for (const path of placesIn(mine).reverse()) {
      const holder = valueIn(mine, path.slice(0, -1)) as Loose;
      holder[path.at(-1) ?? ''] = 1;
    }
    expect(design.case).toEqual(before);
  });

  it('shares no object with the case', () => {
    const mine = structuredClone(given);
    const copy = checkCase(mine);
    const shared = placesIn(mine).filter((path) => {
      const held = valueIn(mine, path);
      return typeof held === 'object' && held === valueIn(copy, path);
    });
    expect(shared).toEqual([]);
  });

  it('may be frozen all through, and may hold undefined where a field is optional', () => {
    const frozen = structuredClone(given);
    for (const path of placesIn(frozen).reverse()) Object.freeze(valueIn(frozen, path));
    expect(checkCase(Object.freeze(frozen))).toEqual(given);
    const { seal: _, ...without } = given;
    expect(checkCase({ ...without, seal: undefined, nothing: undefined } as Loose)).toEqual(without);
    expect(typedDoor({ ...given, site: undefined })).toMatch(
      /^site is missing; must be an object with pipeTemperature/,
    );
  });

  it.each<[string, Path, unknown, RegExp]>([
    [
      'a word that is none',
      ['defect', 'kind'],
      'Crack',
      /^defect\.kind is "Crack"; must be one of "metal loss", "through/,
    ],
    [
      'a hazard that is none',
      ['service', 'hazards'],
      ['flamable'],
      /^service\.hazards\[0\] is "flamable"; must be one of/,
    ],
    ['a form that is none', ['wrap', 'form'], 'cloth', /^wrap\.form is "cloth"; must be one of "tape", "sheet"/],
    ['a speed of nothing', ['crew', 'layingSpeed'], 0, /^crew\.layingSpeed is 0 m\/s; must be above 0/],
    [
      'text for a number',
      ['pipe', 'wallThickness'],
      '8.18 mm',
      /^pipe\.wallThickness is "8\.18 mm"; must be a length above 0 in m/,
    ],
    [
      'a list for a number',
      ['pipe', 'wallThickness'],
      [8],
      /^pipe\.wallThickness is a list; must be a length above 0 in m/,
    ],
    ['an object for a word', ['basis'], {}, /^basis is of type object; must be one of "ISO 24817", "ASME PCC-2"/],
    [
      'a list that is too short',
      ['defect', 'profile'],
      [],
      /^defect\.profile is a list; must be a list of at least 2 rows/,
    ],
    [
      'more wall than there was',
      ['defect', 'remainingWall'],
      0.009,
      /^defect\.remainingWall is 0\.009 m; must be at most the nominal wall, 0\.00818 m/,
    ],
    [
      'more pressure than the design has',
      ['line', 'pressure'],
      7e5,
      /^line\.pressure is 700000 Pa; must be at most the design pressure, 600000 Pa/,
    ],
  ])('is not %s, and the sentence says what would pass', (_, path, value, says) => {
    expect(typedDoor(changed(given, path, value))).toMatch(says);
  });

  it.each([null, undefined, 'a case', 3, [], () => 0])('is not %s', (value) => {
    expect(typedDoor(value)).toMatch(/^the case is .*; must be an object with title, basis, pipe/);
  });
});
