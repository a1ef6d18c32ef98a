import { describe, expect, it } from 'vitest';
import { interval } from '../../../src/doubt/index.js';
import { isCalculationError } from '../../../src/formula/index.js';
import { type CaseIssue, encodeCase, isCaseError, parseCase } from '../../../src/json/index.js';
import { length } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { caseOf, designOf } from '../../faults/answers.js';
import { type CaseFile, leak, loss, type Paths, slot, withPaths } from '../../faults/cases.js';
import { partWall } from '../example-case.js';

const sheet = { form: 'sheet', width: length.m(1), rollLength: length.m(20) };

/** What a door that refuses a case says of it: the field, what stands there, and what would pass. */

const refusalOf = (changes: Paths) => refusalIn(withPaths(partWall, changes));
const refusalIn = (held: unknown) => refusalBy(() => designRepair(held as RepairCase));

function refusalBy(act: () => unknown) {
  try {
    act();
  } catch (error) {
    if (isCalculationError(error)) return error;
  }
  throw new Error('the case was let in');
}

const issuesOf = (file: CaseFile): readonly CaseIssue[] => issuesIn(() => designOf(file));

function issuesIn(act: () => unknown): readonly CaseIssue[] {
  try {
    act();
  } catch (error) {
    if (isCaseError(error)) return error.issues;
  }
  return [];
}

describe('the typed door', () => {
  it.each<[string, unknown, unknown]>([
    ['service.designPressure', -1, -1],
    ['service.designPressure', '4 MPa', '"4 MPa"'],
    ['defect.kind', 5, 5],
    ['defect.kind', 'Crack', '"Crack"'],
    ['service.safetyCritical', null, null],
    ['pipe.material', [], 'a list'],
    ['title', true, true],
    ['title', 5, 5],
    ['title', '', '""'],
    ['laminate.cure', 5, 5],
    ['laminate.cure.mechanism', 'toString', '"toString"'],
    ['laminate.cure.mechanism', ['moisture'], 'a list'],
    ['laminate.cure.mechanism', undefined, 'missing'],
    ['laminate.poissonRatio', '0.3', '"0.3"'],
    ['defect.neighbours', [], 'a list'],
    ['defect.profile', [{ position: 0, depth: 0.001 }], 'a list'],
    ['crew.start', '24:00', '"24:00"'],
  ])('hands back what stands at %s, a number as a number: %j', (path, value, shown) => {
    expect(refusalOf({ [path]: value })).toMatchObject({ parameter: path, value: shown });
  });

  it('names a row of a list by its place', () => {
    const profile = [0, 0.06, 0.12].map((position) => ({ position, depth: position === 0.06 ? 'deep' : 0 }));
    expect(refusalOf({ 'defect.profile': profile })).toMatchObject({ parameter: 'defect.profile[1].depth' });
  });

  it('hands back the field of two that clash, with its value and its unit', () => {
    const { parameter, value, unit } = refusalOf({ 'defect.remainingWall': length.mm(9) });
    expect([parameter, value, unit]).toEqual(['defect.remainingWall', length.mm(9), 'm']);
    const opening = refusalOf({ 'defect.kind': 'through-wall hole', 'defect.holeDiameter': length.mm(150) });
    expect([opening.parameter, opening.value]).toEqual(['defect.holeDiameter', length.mm(150)]);
  });

  it.each<[unknown, unknown]>([
    ['a case', '"a case"'],
    [5, 5],
    [[partWall], 'a list'],
    [null, null],
    [undefined, 'missing'],
  ])('says of what is no case that it is none: %j', (held, shown) => {
    expect(refusalIn(held)).toMatchObject({ parameter: 'the case', value: shown });
  });

  it.each<[Paths, constraint: string | RegExp]>([
    [{ 'service.designPressure': '4 MPa' }, 'must be a gauge pressure above 0 in Pa'],
    [{ 'crew.crews': 1.5, 'crew.start': '07:30', 'crew.layingSpeed': 0.03 }, 'must be at least 1'],
    // The square root of 4 over 16.
    [
      { wrap: sheet, 'laminate.hoopModulus': 4e9, 'laminate.axialModulus': 16e9, 'laminate.poissonRatio': 0.6 },
      'must be below the square root of hoop modulus over axial modulus, 0.5, or the laminate would give energy when strained',
    ],
    [{ 'line.pressure': 1e5 }, 'must be left out: no such field is known there, which holds nothing more'],
    [{ 'loads.soil': { clover: 1 } }, 'must be a length above 0 in m'],
    [{ 'pipe.outsideDiameter': undefined }, 'must be given, or the circumference: one of the two, not both'],
    [{ 'pipe.circumference': length.m(1) }, 'must be given, or the circumference: one of the two, not both'],
    [{ title: 5 }, 'must be one line of text that is not empty'],
    [{ 'service.hazards': 5 }, 'must be a list of "flammable", '],
    [{ 'service.surge': 'much' }, 'must be "included", or a gauge pressure above 0 in Pa'],
    [{ 'defect.profile': [] }, 'must be a list of at least 2 rows, each an object with position, depth'],
    [
      { 'defect.neighbours': [] },
      'must be a list of at least one row, each an object with cause, gapAlong, gapRound, ',
    ],
    [{ 'service.designPressure': -1 }, /^must be above 0$/u],
    [{ 'site.relativeHumidity': 2 }, /^must be at least 0 and at most 1$/u],
    [{ 'resin.waste': 1 }, /^must be at least 0 and below 1$/u],
    [{ 'service.designTemperature': -1 }, /^must be above absolute zero$/u],
    [{ 'service.safetyCritical': 5 }, /^must be true or false$/u],
    [{ 'loads.axialForce': 'much' }, /^must be a force in N, or "none"$/u],
    [{ filler: 5 }, /^must be an object with name, .*, or "none"$/u],
    [{ confirmed: [{ path: 'x', value: '1', by: 'A. B.', edition: '2017' }] }, /^must be a plain number$/u],
    [
      { 'site.wind': 1 },
      'must be left out: no such field is known there, which holds pipeTemperature, airTemperature, relativeHumidity',
    ],
  ])('says what would pass: %j', (changes, constraint) => {
    expect(refusalOf(changes).constraint).toEqual(expect.stringMatching(constraint));
  });

  it('takes a field that is there and holds nothing for one that is not there', () => {
    expect(designRepair({ ...partWall, wind: undefined } as RepairCase)).toEqual(designRepair(partWall));
  });
});

describe('a case that is let in', () => {
  it('is held as it is, and nothing is added to it', () => {
    expect(designRepair(partWall).case).toStrictEqual(partWall);
  });

  it('has no number below nothing where it says minus zero', () => {
    const { case: held } = designRepair(withPaths(partWall, { 'defect.remainingWall': -0 }));
    expect(held.defect.remainingWall).toBe(0);
  });

  it.each([leak, loss])('is read again from what is written of it: %#', (file) => {
    const read = parseCase(JSON.stringify(file));
    expect(caseOf(encodeCase(read)).laminate).toEqual(read.case.laminate);
  });
});

describe('a number at the end of its usual span', () => {
  it.each<[string, least: number, most: number]>([
    ['laminate.lapShearStrength', 2e6, 40e6],
    ['site.surface.salts', 0, 1e-3],
  ])('is usual, and warned of beyond it: %s', (path, least, most) => {
    const told = (value: number): boolean =>
      designRepair(
        withPaths(partWall, { 'site.surface': { grade: 'Sa 2 1/2', profile: 7e-5 }, [path]: value }),
      ).warnings.some(({ field }) => field === path);
    expect([least, most].map(told)).toEqual([false, false]);
    expect(told(most * 1.001)).toBe(true);
    if (least > 0) expect(told(least * 0.999)).toBe(true);
  });
});

describe('a path that names no number', () => {
  it.each<[path: string, value: unknown]>([
    ['title', 'part-wall metal loss'],
    ['title.length', 'missing'],
    ['seal.putty.kitMass', 'missing'],
    ['defect.growth.depth', 'missing'],
    ['site.toString', 'missing'],
  ])('is told what stands there: %s', (path, value) => {
    expect(refusalBy(() => interval(partWall, { [path]: 0 }))).toMatchObject({ parameter: path, value });
  });
});

describe('the door of the documents', () => {
  it.each<[string, unknown, says: string | RegExp]>([
    ['service.designPressure', '6 furlong', /^service\.designPressure: (?!.*expected)/u],
    ['service.designPressure', 6, 'service.designPressure is 6; expected a gauge pressure above 0 as text with a unit'],
    ['laminate.poissonRatio', '0.3', 'laminate.poissonRatio is "0.3"; expected a plain number'],
    ['service.surge', [5], /^service\.surge is \[5\]; expected "included", or a gauge pressure/u],
    ['defect.growth.depth', 'fast', /^defect\.growth\.depth: (?!.*expected)/u],
    ['pipe.size.schedule', true, 'pipe.size.schedule is true; expected text or a number'],
    ['laminate.cure.mechanism', undefined, 'laminate.cure.mechanism is missing; expected one of'],
    ['laminate.cure.mechanism', 'heat', 'laminate.cure.mechanism is "heat"; expected one of'],
  ])('says what %s lacks: %j', (path, value, says) => {
    const issues = issuesOf(withPaths(leak, { [path]: value }));
    expect(issues).toMatchObject([{ path, message: expect.stringMatching(says) }]);
  });

  it.each<[string]>([['"a case"'], ['5'], ['[]'], ['null']])('says of %s that it is no case', (text) => {
    const [issue, ...more] = issuesIn(() => parseCase(text));
    expect([issue?.path, more]).toEqual(['', []]);
    expect(issue?.message).toMatch(/^the case is .*; expected an object with title, basis, pipe, /u);
  });
});

describe('fields that clash', () => {
  it.each<[string, CaseFile, Paths, paths: string[]]>([
    [
      'a wall above the nominal, whatever its profile says',
      loss,
      { 'defect.remainingWall': '0.5 in' },
      ['defect.remainingWall'],
    ],
    [
      'a profile whose last point lies before the others',
      loss,
      { 'defect.profile.14.position': '0 in' },
      ['defect.profile[14].position'],
    ],
    [
      'what protects under the wrap, in letters of two alphabets',
      loss,
      // The second letter is a Cyrillic one.
      { 'pipe.cathodicProtection': { underWrap: 'cоupons' } },
      ['pipe.cathodicProtection.underWrap'],
    ],
  ])('are told once: %s', (_, file, changes, paths) => {
    expect(issuesOf(withPaths(file, changes)).map(({ path }) => path)).toEqual(paths);
  });
});

describe('a block that is none', () => {
  it.each(['laminate', 'defect', 'service', 'pipe', 'repair', 'loads', 'site'])(
    'is told what it must hold, and that alone: %s',
    (path) => {
      const missing = issuesOf(withPaths(loss, { [path]: {} })).map((issue) => issue.path.slice(path.length + 1));
      const [issue] = issuesOf(withPaths(loss, { [path]: 5 }));
      expect(missing.length).toBeGreaterThan(0);
      expect(issue?.expected.replace('an object with ', '').split(', ')).toEqual(missing);
    },
  );
});

describe('the diameter of a hole', () => {
  const across: Paths = { 'defect.holeDiameter': '5 mm' };
  const refused = (file: CaseFile) =>
    issuesOf(withPaths(file, across)).find(({ path }) => path === 'defect.holeDiameter')?.expected ?? '';

  it('is let in for a hole alone; of a slot and of a wall loss it goes elsewhere, where it is let in', () => {
    expect(caseOf(withPaths(leak, across)).defect.holeDiameter).toBe(0.005);
    expect(refused(slot)).toContain('goes into defect.slot');
    expect(refused(slot)).not.toContain('defect.holeAtEndOfLife');
    expect(refused(loss)).toContain('goes into defect.holeAtEndOfLife');
    expect(caseOf(withPaths(loss, { 'defect.holeAtEndOfLife': '5 mm' })).defect.holeAtEndOfLife).toBe(0.005);
    expect(issuesOf(withPaths(slot, { 'defect.holeAtEndOfLife': '5 mm' })).map(({ path }) => path)).toEqual([
      'defect.holeAtEndOfLife',
    ]);
  });
});
