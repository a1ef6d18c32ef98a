import { describe, expect, test } from 'vitest';
import { type CaseError, type CaseIssue, decodeCase, isCaseError, parseCase } from '../../src/json/index.js';
import { exampleDocument, exampleNames, exampleText } from './examples.js';

/** What is wrong with the cooling-water case after a change. */
function issuesAfter(
  // biome-ignore lint/suspicious/noExplicitAny: a test may break the document in any way.
  change: (document: any) => void,
): readonly CaseIssue[] {
  const document = exampleDocument();
  change(document);
  return refusal(() => decodeCase(document)).issues;
}

function refusal(act: () => unknown): CaseError {
  try {
    act();
  } catch (error) {
    if (isCaseError(error)) return error;
    throw error;
  }
  throw new Error('the document was taken');
}

const GIVEN = { outsideDiameter: '219.1 mm', wallThickness: '8.18 mm' };
const BY_HAND = { name: 'API 5L B', yieldStrength: '245 MPa', tensileStrength: '415 MPa' };

describe('bad input is refused with one clear sentence that names the place and the value', () => {
  // biome-ignore lint/suspicious/noExplicitAny: see above.
  const cases: [what: string, change: (document: any) => void, path: string, value: string, says: RegExp][] = [
    ['a negative dimension', (d) => (d.defect.axialLength = '-60 mm'), 'defect.axialLength', '"-60 mm"', /above 0/],
    ['a zero dimension', (d) => (d.laminate.plyThickness = '0 mm'), 'laminate.plyThickness', '"0 mm"', /above 0/],
    [
      'a wall over half the diameter',
      (d) => (d.pipe = { ...GIVEN, wallThickness: '110 mm', material: BY_HAND }),
      'pipe.wallThickness',
      '"110 mm"',
      /below half the outside diameter, 109\.55 mm/,
    ],
    [
      'more wall left than the pipe ever had',
      (d) => (d.defect.remainingWall = '8.2 mm'),
      'defect.remainingWall',
      '"8.2 mm"',
      /at most the nominal wall, 8\.18 mm/,
    ],
    [
      'a defect deeper than the wall',
      (d) =>
        (d.defect.profile = [
          { position: '0 mm', depth: '1 mm' },
          { position: '60 mm', depth: '8.5 mm' },
        ]),
      'defect.profile[1].depth',
      '"8.5 mm"',
      /at most the wall, 8\.18 mm: a defect is not deeper than the wall/,
    ],
    [
      'more wall left than the deepest point of the profile leaves',
      (d) =>
        (d.defect.profile = [
          { position: '0 mm', depth: '0 mm' },
          { position: '60 mm', depth: '6 mm' },
        ]),
      'defect.remainingWall',
      '"3.1 mm"',
      /be 2\.18 mm, within 0\.1 mm/,
    ],
    [
      'less wall left than any point of the profile leaves',
      (d) =>
        (d.defect.profile = [
          { position: '0 mm', depth: '2 mm' },
          { position: '60 mm', depth: '4.97 mm' },
        ]),
      'defect.profile[1].depth',
      '"4.97 mm"',
      /be 5\.08 mm, within 0\.1 mm/,
    ],
    [
      'a profile that stops short of the end of the defect',
      (d) =>
        (d.defect.profile = [
          { position: '5 mm', depth: '5 mm' },
          { position: '64.8 mm', depth: '5.1 mm' },
        ]),
      'defect.profile[1].position',
      '"64.8 mm"',
      /lie 60 mm or more beyond the first point.*would count as sound/,
    ],
    [
      'a hole that does not fit into its defect',
      (d) => (d.defect.holeDiameter = '75.1 mm'),
      'defect.holeDiameter',
      '"75.1 mm"',
      /fit into the defect, which is 75 mm from corner to corner/,
    ],
    [
      'a hole to come that does not fit into its defect',
      (d) => (d.defect.holeAtEndOfLife = '3 in'),
      'defect.holeAtEndOfLife',
      '"3 in"',
      /fit into the defect, which is 2\.95275 in from corner to corner/,
    ],
    [
      'a hole that closes with time',
      (d) => (d.defect.holeAtEndOfLife = '3 mm'),
      'defect.holeAtEndOfLife',
      '"3 mm"',
      /at least the hole as it is now, 4 mm/,
    ],
    [
      'a cycle beyond the design pressure',
      (d) => (d.loads.cycles = { number: 10, lowestPressure: '0 bar', highestPressure: '90 psi' }),
      'loads.cycles.highestPressure',
      '"90 psi"',
      /at most the design pressure, 6 bar/,
    ],
    [
      'more pressure during the work than the line is designed for',
      (d) => (d.line.pressure = '0.61 MPa'),
      'line.pressure',
      '"0.61 MPa"',
      /at most the design pressure, 6 bar/,
    ],
    [
      'a lowest temperature above the design temperature',
      (d) => (d.service.lowestTemperature = '96 degF'),
      'service.lowestTemperature',
      '"96 degF"',
      /at most the design temperature, 35 degC/,
    ],
    [
      'a reading of the wall before the pipe was new',
      (d) => (d.defect.growth.depth.sincePrevious = '53 year'),
      'defect.growth.depth.sincePrevious',
      '"53 year"',
      /at most the time since the wall was that of the new pipe, 52 year/,
    ],
    [
      'a sheet that is all lap',
      (d) => (d.wrap = { form: 'sheet', width: '40 mm', rollLength: '20 m' }),
      'wrap.width',
      '"40 mm"',
      /at least twice the side lap of sheets, 50 mm/,
    ],
    [
      'a temperature below absolute zero',
      (d) => (d.service.designTemperature = '-274 degC'),
      'service.designTemperature',
      '"-274 degC"',
      /below absolute zero/,
    ],
    ['NaN as text', (d) => (d.site.airTemperature = 'NaN degC'), 'site.airTemperature', '"NaN degC"', /not a number/],
    ['NaN as a number', (d) => (d.wrap.width = Number.NaN), 'wrap.width', 'NaN', /text with a unit/],
    ['infinity as text', (d) => (d.repair.life = 'Infinity year'), 'repair.life', '"Infinity year"', /not a number/],
    ['a number beyond float64', (d) => (d.repair.life = '1e999 year'), 'repair.life', '"1e999 year"', /not a finite/],
    ['infinity as a number', (d) => (d.laminate.poissonRatio = Infinity), 'laminate.poissonRatio', 'Infinity', /plain/],
    ['a text without a unit', (d) => (d.service.designPressure = '6'), 'service.designPressure', '"6"', /has no unit/],
    ['a bare number', (d) => (d.service.designPressure = 6), 'service.designPressure', '6', /text with a unit/],
    ['an unknown unit', (d) => (d.wrap.rollLength = '10 elle'), 'wrap.rollLength', '"10 elle"', /"elle" is unknown/],
    [
      'a unit of another kind',
      (d) => (d.laminate.plyThickness = '0.8 GPa'),
      'laminate.plyThickness',
      '"0.8 GPa"',
      /GPa is a unit of stress, modulus, not of length/,
    ],
    [
      'an absolute pressure where a gauge reading belongs',
      (d) => (d.service.designPressure = '87 psia'),
      'service.designPressure',
      '"87 psia"',
      /psia is a unit of absolute pressure, not of gauge pressure/,
    ],
    ['an overlap of 1', (d) => (d.wrap.overlap = '100 %'), 'wrap.overlap', '"100 %"', /below 1/],
    ['an overlap above 1', (d) => (d.wrap.overlap = '1.2'), 'wrap.overlap', '"1.2"', /below 1/],
    ['an empty profile', (d) => (d.defect.profile = []), 'defect.profile', '[]', /at least 2 rows/],
    [
      'profile points out of order',
      (d) =>
        (d.defect.profile = [
          { position: '10 mm', depth: '1 mm' },
          { position: '5 mm', depth: '5.08 mm' },
        ]),
      'defect.profile[1].position',
      '"5 mm"',
      /beyond the point before it, 10 mm/,
    ],
    [
      'a word that is none of the choices',
      (d) => (d.fitting = 'elbow'),
      'fitting',
      '"elbow"',
      /an object with kind, or "none"/,
    ],
    ['a load that nobody wrote down', (d) => delete d.loads.bendingMoment, 'loads.bendingMoment', 'missing', /"none"/],
    ['a missing part', (d) => delete d.site, 'site', 'missing', /an object with pipeTemperature/],
    ['a class that does not exist', (d) => (d.repair.class = 4), 'repair.class', '4', /1, 2, 3/],
    ['half a ply', (d) => (d.laminate.qualifiedPlies = 1.5), 'laminate.qualifiedPlies', '1.5', /a whole number/],
    ['an empty title', (d) => (d.title = ' '), 'title', '" "', /not empty/],
    [
      'a hole in a defect that is none',
      (d) => (d.defect.kind = 'metal loss'),
      'defect.holeDiameter',
      '"4 mm"',
      /left out where the defect is "metal loss".*goes into defect\.holeAtEndOfLife/,
    ],
    [
      'a working time beyond the cure time',
      (d) => (d.laminate.cure.workingTime = '25 h'),
      'laminate.cure.workingTime',
      '"25 h"',
      /at most the cure time, 24 h/,
    ],
    [
      'a tested span upside down',
      (d) => (d.filler.cure.testedTo = '5 degC'),
      'filler.cure.testedTo',
      '"5 degC"',
      /at least the reference temperature, 23 degC/,
    ],
    [
      'a tensile strength below the yield strength',
      (d) => (d.pipe.material = { ...BY_HAND, tensileStrength: '200 MPa' }),
      'pipe.material.tensileStrength',
      '"200 MPa"',
      /at least the yield strength, 245 MPa/,
    ],
    [
      'a schedule that the size lacks',
      (d) => (d.pipe.size.schedule = '41'),
      'pipe.size.schedule',
      '41',
      /40 \(8\.18 mm\)/,
    ],
    ['a grade that is none', (d) => (d.pipe.material.grade = 'X51'), 'pipe.material.grade', 'X51', /X52 \(L360\)/],
    [
      'a temperature difference scale for a temperature',
      (d) => (d.site.airTemperature = '5 deltaF'),
      'site.airTemperature',
      '"5 deltaF"',
      /temperature difference, not of temperature/,
    ],
  ];

  test.each(cases)('%s', (_, change, path, value, says) => {
    const issues = issuesAfter(change);
    expect(issues.map((issue) => issue.path)).toEqual([path]);
    const message = issues[0]?.message ?? '';
    expect(message.startsWith(path)).toBe(true);
    expect(message).toContain(value);
    expect(message).toMatch(says);
    expect(message).not.toContain('\n');
  });

  test('a pipe with no diameter, with two, and a wall named twice', () => {
    const says = (change: Parameters<typeof issuesAfter>[0]) => issuesAfter(change).map((issue) => issue.message);
    expect(says((d) => delete d.pipe.size)).toEqual([expect.stringMatching(/^pipe does not say how wide/)]);
    expect(says((d) => (d.pipe.circumference = '688 mm'))).toEqual([
      expect.stringMatching(/^pipe gives circumference and size; expected one of/),
    ]);
    expect(says((d) => (d.pipe.wallThickness = '8 mm'))).toEqual([
      expect.stringMatching(/^pipe\.wallThickness is given beside pipe\.size/),
    ]);
  });

  test('every issue of a document is told at once, in the order of the schema', () => {
    const issues = issuesAfter((d) => {
      d.basis = 'ISO 24871';
      d.service.designPressure = 6;
      d.defect.growth.depth = '1 mm';
      d.laminate.cure.mechanism = 'uv';
      delete d.site.airTemperature;
    });
    expect(issues.map((issue) => issue.path)).toEqual([
      'basis',
      'service.designPressure',
      'defect.growth.depth',
      'laminate.cure.mechanism',
      'site.airTemperature',
    ]);
  });

  test('an unknown key is an error, and the key that was meant is named', () => {
    const [issue, ...others] = issuesAfter((d) => (d.laminate.plyThicknes = '0.8 mm'));
    expect(others).toEqual([]);
    expect(issue?.path).toBe('laminate.plyThicknes');
    expect(issue?.message).toBe(
      'laminate.plyThicknes ("0.8 mm") is not a field of laminate; did you mean "plyThickness"? It takes a length above 0 as text with a unit, for example "0.8 mm"',
    );
    expect(issuesAfter((d) => (d.laminate.colour = 'green'))[0]?.message).toMatch(/leave it out$/);
    const hostile = JSON.parse(exampleText('cooling-water-leak.json').replace('{', '{"__proto__": {"class": 1},'));
    expect(refusal(() => decodeCase(hostile)).issues[0]?.path).toBe('__proto__');
  });

  test('a word that is nearly right is answered with the right one', () => {
    expect(issuesAfter((d) => (d.basis = 'ISO24817'))[0]?.message).toMatch(/did you mean "ISO 24817"\?$/);
    expect(issuesAfter((d) => (d.defect.kind = 'trough-wall hole'))[0]?.message).toMatch(
      /did you mean "through-wall hole"\?$/,
    );
    expect(issuesAfter((d) => (d.wrap.form = 'tap'))[0]?.message).toMatch(/^wrap\.form is "tap".*"tape"\?$/);
  });

  test('an allowable stress is read only from a row that the case names, at a temperature that the row holds', () => {
    const row = (allowableStress: unknown) => (d: { pipe: { material: { allowableStress: unknown } } }) => {
      d.pipe.material.allowableStress = allowableStress;
    };
    expect(issuesAfter(row({ row: 'best steel' }))[0]?.path).toBe('pipe.material.allowableStress.row');
    expect(issuesAfter(row({ row: 'API 5L B' }))[0]?.message).toMatch(
      /^pipe\.material\.allowableStress\.at is "35 degC", the design temperature where it is left out/,
    );
    expect(issuesAfter(row({ row: 'API 5L B', at: '68 degF' }))[0]?.message).toMatch(
      /at is "68 degF"; it must be at least the design temperature, 35 degC/,
    );
    expect(issuesAfter(row('300 MPa'))[0]?.message).toMatch(/is "300 MPa"; it must be at most the yield strength/);
    const weak = issuesAfter((d) => {
      d.pipe.material = { name: 'weak steel', yieldStrength: '100 MPa' };
      row({ row: 'API 5L B', at: '40 degC' })(d);
    });
    expect(weak[0]?.path).toBe('pipe.material.allowableStress');
    expect(weak[0]?.message).toMatch(/which gives [\d.]+ MPa; it must be at most the yield strength, 100 MPa/);
  });

  test('text that is not JSON, and a key that stands twice, are refused with their place', () => {
    expect(refusal(() => parseCase('')).message).toMatch(/^the case is not a JSON document/);
    expect(refusal(() => parseCase('{\n"title": "x",}')).message).toMatch(/not a JSON document.*\bline 2\b/);
    expect(refusal(() => parseCase('[1, 2')).issues).toHaveLength(1);
    const twice = exampleText('cooling-water-leak.json').replace(
      '"designPressure": "6 bar",',
      '"designPressure": "6 bar",\n"designPressure": "60 bar",',
    );
    expect(refusal(() => parseCase(twice)).message).toMatch(/^"designPressure" stands twice in one object/);
    expect(refusal(() => parseCase('{"a": {"b": 1}, "c": {"b": 2}, "a": 3}')).issues.map(({ path }) => path)).toEqual([
      'a',
    ]);
  });

  test('whatever is not a case at all is refused in words', () => {
    for (const document of [null, undefined, 7, 'case', [], () => 1, Symbol('case'), new Date(), { title: 1n }]) {
      expect(refusal(() => decodeCase(document)).issues.length).toBeGreaterThan(0);
    }
    const circular: Record<string, unknown> = {};
    circular['title'] = circular;
    expect(refusal(() => decodeCase(circular)).message).toContain('cannot be written as JSON');
  });

  test('no error carries a word of the schema library', () => {
    const all = exampleNames.flatMap((name) => {
      const document = exampleDocument(name);
      for (const part of Object.keys(document)) document[part] = { wrong: 1 };
      return refusal(() => decodeCase(document)).issues.map((issue) => issue.message);
    });
    expect(all.length).toBeGreaterThan(30);
    for (const message of all) expect(message).not.toMatch(/invalid input|zod|received|discriminator|undefined/i);
  });
});

describe('the example in an error message', () => {
  /** Every place of a document that holds a text, a number or a flag. */
  function* places(value: unknown, path: (string | number)[] = []): Generator<(string | number)[]> {
    if (typeof value !== 'object' || value === null) yield path;
    else
      for (const [key, child] of Object.entries(value))
        yield* places(child, [...path, Array.isArray(value) ? Number(key) : key]);
  }

  function put(document: unknown, path: readonly (string | number)[], value: unknown): void {
    let holder = document as Record<string | number, unknown>;
    for (const key of path.slice(0, -1)) holder = holder[key] as Record<string | number, unknown>;
    holder[path.at(-1) ?? ''] = value;
  }

  test.each(exampleNames)('would pass at its place, for every field of %s', (name) => {
    let tried = 0;
    for (const path of places(exampleDocument(name))) {
      const document = exampleDocument(name);
      // A list is wrong as a whole where it is none, and by its rows where it is one.
      put(document, path, path.at(-1) === 'neighbours' ? { quite: 'wrong' } : [['quite wrong']]);
      const written = path.reduce<string>(
        (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? key : `${text}.${key}`),
        '',
      );
      const issue = refusal(() => decodeCase(document)).issues.find((each) => each.path === written);
      expect(issue, written).toBeDefined();
      expect(issue?.message.startsWith(written)).toBe(true);
      expect(issue?.example, written).toBeDefined();
      put(document, path, issue?.example);
      // A word that chooses the shape asks for the fields of that shape: they stand at their places too.
      const shape = written === 'line.state' ? issuesOf(document) : [];
      for (const { path: beside, message, example } of shape) {
        expect(message).toMatch(/^line\.\w+ is missing/);
        put(document, beside.split('.'), example);
      }
      const rest = issuesOf(document);
      // The value may clash with its neighbours, but it must be one that can stand at this place.
      for (const other of rest) expect(other.message, written).toMatch(/must be|it must|is given beside|has \d/);
      tried += 1;
    }
    expect(tried).toBeGreaterThan(50);
  });

  function issuesOf(document: unknown): readonly CaseIssue[] {
    try {
      decodeCase(document);
      return [];
    } catch (error) {
      if (isCaseError(error)) return error.issues;
      throw error;
    }
  }
});
