import { describe, expect, it } from 'vitest';
import { asksFor, designOf, refusedFields, verdictOf } from './answers.js';
import { type CaseFile, leak, live, loss, type Paths, proposed, quietLoss, withPaths } from './cases.js';

/** Texts that safety hangs on: one that states nothing, or that says other than the field beside it, passes for nothing. */

const nothing = [
  ...[
    'none',
    'nil',
    'n/a',
    'N.A.',
    'TBD',
    'T B D',
    't.b.d.',
    'TBC',
    'to be confirmed',
    'to follow',
    'pending approval',
  ],
  ...['awaiting inspector', 'WP-17, pending approval', 'draft of WP-17', 'not tested', 'not yet written', 'unknown'],
  ...['nobody', 'we do not have one', "we don't have one", 'there is none', 'not needed', 'no layer', 'no such thing'],
  ...[
    '0',
    '00',
    'x',
    'X',
    'xxx',
    'a',
    '?',
    '-',
    '...',
    ' . ',
    'yes',
    'somebody',
    'see above',
    'ｎｏｎｅ',
    'n\u200Bone',
  ],
  ...['guess', 'guessed', 'a guess', 'assumed A', 'probably WP', 'to be checked', 'not marked', 'mystery', 'illegible'],
  // A whole word in letters that look like Latin ones.
  ...['ТВС', 'х', 'ΝΟΝΕ'],
];
/** A character that prints as nothing, inside a word. */
const isInvisible = (text: string): boolean => text.includes('\u200B');

const something = [
  'WP-17',
  'No. 17',
  'no 4711-b',
  '17',
  'Norsk prosedyre 4',
  'letter of the maker',
  'TÜV',
  'notch ply',
];

/** The words for nothing in other mouths, each alone. */
const alone = [
  ...['nobody', 'someone', 'undecided', 'unclear', 'unsure', 'open', 'absent', 'later', 'to do', 'done', 'available'],
  ...['as above', 'ditto', 'me', 'us', 'test', 'nein', 'nichts', 'niemand', 'unbekannt', 'offen', 'ja', 'rien'],
  ...['inconnu', 'ninguno', 'nada', 'nadie', 'nessuno', 'verbal', 'by mouth', 'n0ne', 'we', 'it', 'as usual'],
];

const carbon = withPaths(loss, { [proposed.fibre]: 'carbon' });
const tested = { environment: 'sour', test: { method: 'wet MPI', result: 'no crack found', date: '2026-05-04' } };
const sour = withPaths(loss, { [proposed.cracking]: tested });
const gas: Paths = { ...live('2 bar'), 'service.hazards': ['flammable'] };

/** Each text: a case that is designed with a word in it, where the word stands, and what the case comes to without. */
const texts: readonly (readonly [path: string, file: CaseFile, asks: string | undefined])[] = [
  ['line.writtenProcedure', withPaths(loss, gas), undefined],
  ['service.cracking.test.method', sour, 'service.cracking.test'],
  ['laminate.resists.statedBy', leak, 'laminate.resists'],
  ['seal.putty.resists.statedBy', leak, 'seal.putty.resists'],
  ['laminate.isolatingLayer', carbon, 'laminate.isolatingLayer'],
  ['service.contents', loss, 'service.contents'],
  [
    'pipe.material.name',
    withPaths(quietLoss, { 'pipe.material': { name: 'API 5L B', yieldStrength: '241 MPa' } }),
    'pipe.material.name',
  ],
  ['service.hazardsStatedBy', withPaths(quietLoss, { 'service.contents': 'stream 4' }), 'service.hazards'],
];

describe.each(texts)('%s', (path, file, asks) => {
  it.each(nothing)('counts "%s" as none', (text) => {
    const said = withPaths(file, { [path]: text });
    // What nobody can see in print is not read at all.
    if (isInvisible(text)) return expect(verdictOf(said)).toBe('refused');
    expect(asks === undefined ? verdictOf(said) : asksFor(said, asks)).toBe(
      asks === undefined ? 'not repairable' : true,
    );
  });

  it('is content with a text that names something', () => {
    for (const named of something) {
      // A procedure has a number besides.
      if (path === 'line.writtenProcedure' && !/\d/u.test(named)) continue;
      // A crack test names its method besides.
      const text = path.endsWith('.method') ? `${named}, MPI` : named;
      const said = withPaths(file, { [path]: text, 'service.hazardsStatedBy': 'process engineer' });
      expect([text, asks === undefined ? verdictOf(said) : asksFor(said, asks)]).toEqual([
        text,
        asks === undefined ? 'designed' : false,
      ]);
    }
  });

  it.each(['nоne', 'МPI wеt', 'glαss'])('refuses "%s", whose letters only look alike', (text) => {
    const said = withPaths(file, { [path]: text });
    expect(refusedFields(said)).toContain(path);
    expect(() => designOf(said)).toThrow('in the letters of one alphabet');
  });
});

describe('who states that there is no hazard', () => {
  it.each(alone)('is nobody: "%s"', (text) => {
    const said = withPaths(quietLoss, { 'service.contents': 'stream 4', 'service.hazardsStatedBy': text });
    expect(asksFor(said, 'service.hazards')).toBe(true);
  });
});

describe('a written procedure', () => {
  const by = (named: string) => verdictOf(withPaths(loss, { ...gas, 'line.writtenProcedure': named }));

  it.each([
    ...['will be written next week', 'see foreman', 'in preparation', 'coming', 'verbal, by phone', 'WP'],
    ...[
      'shift leader agreed',
      'letter of the maker',
      'WP-17, in preparation',
      'WP-17 will be written',
      'verbal, 5 May',
    ],
    ...[
      'see foreman 2',
      'OK 1',
      '1',
      'permit 5 not issued yet',
      'WP-9, withdrawn',
      'WP-9 expired 2019',
      '2 be written',
    ],
    ...['phone 4711', 'WP-17 expected on Friday', 'WP-17, later'],
  ])('is none where the case says "%s"', (named) => {
    expect(by(named)).toBe('not repairable');
  });

  it.each(['WP-17', 'see WP-17', 'WP-17, revision 3 or later', 'Live work, planned outages: 4.2', 'HC-٧'])(
    'is one where the case says "%s"',
    (named) => {
      expect(by(named)).toBe('designed');
    },
  );
});

describe('the crack test', () => {
  const found = (test: unknown) => withPaths(loss, { [proposed.cracking]: { environment: 'sour', test } });
  const test = tested.test;

  it('is a method, a day, and that it found no crack', () => {
    expect(verdictOf(found(test))).toBe('designed');
  });

  it('is of a day, up to that of the survey, whether one is stated or not', () => {
    const on = (date: string, survey: string | undefined) => withPaths(found({ ...test, date }), { date: survey });
    expect(verdictOf(on('2026-05-06', '2026-05-06'))).toBe('designed');
    expect(refusedFields(on('2026-05-07', '2026-05-06'))).toEqual(['service.cracking.test.date']);
    expect(refusedFields(on('lately', undefined))).toEqual(['service.cracking.test.date']);
  });

  it.each([
    ['MPI: three cracks found, 2026-05-04', 'service.cracking.test'],
    [{ ...test, result: 'cracks present' }, 'service.cracking.test.result'],
    [{ ...test, result: 'failed' }, 'service.cracking.test.result'],
    [{ ...test, result: undefined }, 'service.cracking.test.result'],
    [{ ...test, date: undefined }, 'service.cracking.test.date'],
    [{ ...test, date: 'last week' }, 'service.cracking.test.date'],
    [{ ...test, date: 'TBD' }, 'service.cracking.test.date'],
    [{ ...test, method: 'MPI: three cracks found' }, 'service.cracking.test.method'],
    [{ ...test, method: 'MPI, failed' }, 'service.cracking.test.method'],
  ])('refuses %j', (test, path) => {
    expect(refusedFields(found(test))).toEqual([path]);
  });
});

describe('contents', () => {
  const called = (contents: string, changes: Paths = {}) =>
    withPaths(quietLoss, { 'service.contents': contents, ...changes });
  const stated = { 'service.hazardsStatedBy': 'process engineer, data sheet of 2026' };

  it.each([
    ...[
      'hydrazine',
      'R717',
      'R-717',
      'sodium cyanide solution',
      'isocyanate',
      'ammonium hydroxide',
      'nitric 60 %',
      'MTBE',
    ],
    ...[
      'BTX',
      'petroleum',
      'biogas',
      'formaldehyde',
      'molten sulphur',
      'water at 85 degC',
      'water, 61 °C',
      'water 180 F',
    ],
    ...['raw sewage', 'digester sludge', 'waste water', 'untreated wastewater', 'Klärschlamm', 'landfill leachate'],
    ...['oleum', 'SO3', 'fluorine', 'phenol', 'chromic solution', 'pickling bath', 'black liquor', 'green liquor'],
    ...['butadiene', 'DME', 'isobutane', 'ether', 'carbon disulphide', 'acrylonitrile', 'epichlorohydrin', 'silane'],
    ...['pygas', 'light ends', 'IPA', 'MEK', 'heptane', 'white spirit', 'paint thinner', 'benzol', 'ethyl acetate'],
    ...['MDI', 'TDI', 'chloroform', 'mercury', 'SWS feed', 'nitrous oxide', 'bitumen'],
    ...['lean amine', 'MDEA', 'flare header', 'boiler blowdown', 'blow-down'],
    ...['oily water', 'Ammoniak', 'Wasserstoff', 'gasolina', 'Säure', 'ácido', 'NH₃'],
  ])('called "%s" ask for the list of hazards, whoever looked', (contents) => {
    expect(asksFor(called(contents, stated), 'service.hazards')).toBe(true);
  });

  it.each(['water at 60 degC', 'water, 35 °C', 'water 140 F', 'cooling water 2026 C-ring'])(
    'called "%s" are not hot',
    (contents) => {
      expect(asksFor(called(contents, stated), 'service.hazards')).toBe(false);
    },
  );

  it.each([
    ['steam under vacuum', true],
    ['sub-atmospheric vapour', true],
    ['water, suction side', true],
    ['barometric leg', true],
    ['water, negative pressure', true],
    ['siphon of river water', true],
    ['evacuated line', true],
    ['vacuum gas oil', false],
  ])('called "%s" ask for what presses from outside where nothing is stated: %s', (contents, asks) => {
    const listed = { 'service.phase': 'gas', 'service.hazards': ['hot', 'asphyxiant', 'flammable'] };
    expect(asksFor(called(contents, listed), 'loads.externalPressure')).toBe(asks);
    const nought = { ...listed, 'loads.externalPressure': '0 bar' };
    expect(asksFor(called(contents, nought), 'loads.externalPressure')).toBe(asks);
    const stated = { ...listed, 'loads.externalPressure': '1.013 bar' };
    expect(asksFor(called(contents, stated), 'loads.externalPressure')).toBe(false);
  });

  it.each(['butadiene', 'DME', 'light ends'])('called "%s" ask how cold they boil', (contents) => {
    const listed = { 'service.hazards': ['flammable'], 'service.lowestTemperature': undefined };
    expect(asksFor(called(contents, listed), 'service.lowestTemperature')).toBe(true);
  });

  it.each(['oxygen', 'LOX', 'O2', 'hydrogen peroxide'])(
    'called "%s" feed fire, for which the list has no word: somebody has to have looked',
    (contents) => {
      const listed = { 'service.phase': 'gas', 'service.hazards': ['corrosive'] };
      expect(asksFor(called(contents, listed), 'service.hazardsStatedBy')).toBe(true);
      expect(asksFor(called(contents, { ...listed, ...stated }), 'service.hazardsStatedBy')).toBe(false);
    },
  );

  it.each([
    'water',
    'Raw water',
    'treated cooling water',
    'potable water',
    'process water',
    'fire water',
    'seawater',
    ' cooling water ',
  ])('called "%s" are harmless without a word', (contents) => {
    expect(verdictOf(called(contents, { 'service.safetyCritical': true }))).toBe('designed');
  });

  it.each([
    'produced water',
    'treated waste water',
    'cooling water with biocide',
    'stream 4',
    'glycol',
    'water and inhibitor',
  ])('called "%s" ask who found no hazard', (contents) => {
    expect(asksFor(called(contents), 'service.hazards')).toBe(true);
    expect(asksFor(called(contents, { 'service.hazardsStatedBy': 'TBD' }), 'service.hazards')).toBe(true);
    expect(verdictOf(called(contents, stated))).toBe('designed');
    expect(asksFor(called(contents, { 'service.hazards': ['toxic'] }), 'service.hazards')).toBe(false);
  });

  it.each([
    ...['compressed air', 'instrument air', 'Air', 'hydrocarbon vapour', 'biogas', 'oxygen', 'natural gas', 'nitrogen'],
    ...['multiphase well fluid', 'two-phase liquid flow'],
  ])('called "%s" ask for the phase where it is stated to be liquid', (contents) => {
    const listed = { 'service.hazards': ['flammable', 'toxic', 'corrosive', 'asphyxiant', 'hot'] };
    expect(asksFor(called(contents, listed), 'service.phase')).toBe(true);
    expect(asksFor(called(contents, { ...listed, 'service.phase': 'two-phase' }), 'service.phase')).toBe(false);
  });

  it.each([
    'gas oil',
    'liquid nitrogen',
    'liquefied natural gas',
    'deoxygenated water',
    'gas condensate',
    'steam condensate',
  ])('called "%s" are liquid', (contents) => {
    expect(asksFor(called(contents), 'service.phase')).toBe(false);
  });

  it.each([
    ...['firewater', 'fire water', 'Fire-water ring', 'deluge water', 'sprinkler water', 'wet riser', 'safety shower'],
    ...['Löschwasser', 'flare header', 'eau incendie'],
  ])('called "%s" are safety-critical, or called something else', (contents) => {
    expect(asksFor(called(contents, stated), 'service.safetyCritical')).toBe(true);
    expect(asksFor(called(contents, { ...stated, 'service.safetyCritical': true }), 'service.safetyCritical')).toBe(
      false,
    );
  });
});
