import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Source, sources } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { version } from '../../src/repair/version.js';
import { type CaseRecord, caseRecord } from '../case.js';
import type { Shows } from '../derivations/second-route.js';
import { filesIn } from '../in-process/files.js';
import { SEED } from '../oracles/random.js';
import { type CaseResult, type Verdict, verdicts } from '../runner/judge.js';
import { readCases } from '../runner/run.js';
import { anchor } from './blocks.js';
import { collect } from './collect.js';
import { cslSources } from './csl.js';
import { documentBlocks } from './document.js';
import { changes, factsBySection, factsOf } from './facts.js';
import { laminatePrints, NO_WORKED_EXAMPLE, oneLine } from './front-page.js';
import { html } from './html.js';
import { bibtex, citationField, identity } from './identity.js';
import { ancestorOf, isArithmeticOnly, linesOf } from './lines.js';
import { figures, markdown } from './markdown.js';
import { ownRoutes } from './own-routes.js';
import { programs } from './programs.js';
import { properties } from './properties.js';
import type { Report } from './shape.js';

/** The committed report says what a fresh run does, and says it in full. */

const committed = readFileSync(new URL('report.md', import.meta.url), 'utf8');
const fresh: Report = JSON.parse(JSON.stringify(collect()));
const freshText = markdown(fresh);

const major = Number(process.versions.node.split('.')[0]);
const onCitedNode = major === fresh.identity.nodeMajor;

describe('the committed report', () => {
  const [old, now] = [factsBySection(committed), factsBySection(freshText)];
  const sections = [...new Set([...old.keys(), ...now.keys()])].filter(
    (section) => section !== 'accuracy' && (old.get(section)?.size || now.get(section)?.size),
  );
  const isAccuracy = (change: string): boolean => /^\S+ accuracy(?: \(\d+\))?: /u.test(change);
  const changed = (section: string): string[] => changes(old.get(section) ?? new Map(), now.get(section) ?? new Map());

  it.each(sections)(
    'has the verdicts, counts and values of a fresh one under %s (else run npm run verify)',
    (section) => {
      expect(changed(section).filter((change) => !isAccuracy(change))).toEqual([]);
    },
  );

  it(`has the accuracy of a fresh one, on Node ${fresh.identity.nodeMajor} to the digit`, (context) => {
    if (!onCitedNode) context.skip(`this is Node ${major}: its engine may round otherwise, so errors are not compared`);
    expect([...changed('accuracy'), ...sections.flatMap(changed).filter(isAccuracy)]).toEqual([]);
  });

  it('names no commit and no machine, which a run anew would change', () => {
    expect(markdown({ ...fresh, volatile: { commit: 'x', changed: ['y'], node: 'z', v8: '', platform: '' } })).toBe(
      freshText,
    );
  });

  it('has no case that fails', () => {
    expect(fresh.exceptions.filter(({ verdict }) => verdict === 'fails')).toEqual([]);
    expect(fresh.summary.byVerdict.fails).toBe(0);
  });
});

describe('the first page', () => {
  const blocks = documentBlocks(fresh, 'built');
  const firstSection = blocks.findIndex((block) => block.sort === 'heading' && block.level === 2);
  const first = JSON.stringify(blocks.slice(0, firstSection));

  it('gives the result in one line and says what was not found', () => {
    expect(first).toContain(oneLine(fresh));
    expect(first).toContain(NO_WORKED_EXAMPLE);
  });

  it('says which formulas of the laminate meet print, and names the form that print shows unsafe with closed ends', () => {
    expect(first).toContain(JSON.stringify(laminatePrints(fresh)).slice(1, -1));
    const printed = (id: string): boolean =>
      fresh.formulas.some((each) => each.id === id && each.lines.some(({ sort }) => sort === 'print'));
    expect(printed('laminate/pressure-yielded-hoop')).toBe(true);
    expect(printed('laminate/thickness-sharing-biaxial')).toBe(true);
    expect(laminatePrints(fresh)).toContain('thickness-sharing-hoop');
    expect(laminatePrints({ formulas: [] })).toContain('0 of 0 formulas');
  });

  it('names every formula that a design calls and that has no value of another hand', () => {
    const bare = fresh.formulas.filter(
      ({ called, lines }) => called && lines.every(({ sort }) => sort === 'derivation'),
    );
    expect(bare.length).toBe(fresh.summary.byRoom.reduce((sum, { calledBare }) => sum + calledBare, 0));
    for (const { id } of bare) expect(first).toContain(`"${anchor(id)}"`);
  });

  it('says who made it, that nobody outside has reviewed it, and what is from memory', () => {
    for (const words of ['no outside body has reviewed it', 'are recalled', 'how to reproduce', 'how to cite'])
      expect(first).toContain(words);
  });

  it('counts each formula and each case once', () => {
    const { summary } = fresh;
    expect(summary.formulas).toBe(formulas.length);
    const { otherHand, ownRoute, neither } = summary.evidence;
    expect(otherHand + ownRoute + neither).toBe(formulas.length);
    expect(summary.byRoom.reduce((sum, row) => sum + row.formulas, 0)).toBe(formulas.length);
    expect(summary.byRoom.reduce((sum, row) => sum + row.otherHand, 0)).toBe(otherHand);
    expect(Object.values(summary.byVerdict).reduce((sum, count) => sum + count, 0)).toBe(summary.cases);
    expect(summary.byClass.reduce((sum, { cases }) => sum + cases, 0)).toBe(summary.cases);
  });
});

describe('the chapters', () => {
  const blocks = documentBlocks(fresh, 'built');
  const chapter = (id: string): string => {
    const start = blocks.findIndex((block) => block.sort === 'heading' && block.id === id);
    const end = blocks.findIndex((block, place) => place > start && block.sort === 'heading' && block.level === 2);
    return JSON.stringify(blocks.slice(start, end));
  };

  it('begin with the index, one line for each formula', () => {
    expect(blocks.find((block) => block.sort === 'heading' && block.level === 2)).toMatchObject({ id: 'index' });
    const table = blocks.find((block) => block.sort === 'table' && block.twofold === true);
    expect(table?.sort === 'table' && table.rows.length).toBe(formulas.length);
  });

  it('name every case that does not simply agree, and every tolerance with its reason', () => {
    const own = chapter('exceptions') + chapter('tolerances');
    for (const { id, because } of fresh.exceptions) {
      expect(own).toContain(JSON.stringify(id));
      expect(because, id).not.toBe('');
    }
    for (const { reason } of fresh.tolerances) expect(own).toContain(JSON.stringify(reason).slice(1, -1));
  });

  it('show of every case what goes in, with every text of its record', () => {
    const texts = (given: unknown): string[] =>
      typeof given === 'string' ? [given] : Object.values((given as object) ?? {}).flatMap(texts);
    const rows = new Map(fresh.formulas.flatMap(({ cases }) => cases.map((row) => [row.id, row] as const)));
    for (const { records } of readCases())
      for (const { id, inputs, vary } of records)
        for (const text of texts([inputs, vary ?? {}])) expect(rows.get(id)?.inputs, id).toContain(text);
  });

  it('have the figures that stand beside report.md', () => {
    const drawn = figures(fresh);
    const folder = new URL('figures/', import.meta.url);
    expect(readdirSync(folder).sort()).toEqual([...drawn.keys()].sort());
    for (const [name, svg] of drawn)
      if (name !== 'accuracy.svg' || onCitedNode)
        expect(readFileSync(new URL(name, folder), 'utf8') === svg, `${name}: run npm run verify`).toBe(true);
  });
});

describe('the HTML form', () => {
  const text = html(fresh);

  it('needs no script, no other file and no network', () => {
    expect(text).not.toMatch(/<script|<link|<img|<iframe|@import|url\(/u);
    expect(text).not.toMatch(/(?:src|href)="(?!#)/u);
  });

  it('has a target for every link', () => {
    const ids = new Set([...text.matchAll(/ id="(?<id>[^"]+)"/gu)].map(({ groups }) => groups?.['id']));
    const missing = [...text.matchAll(/href="#(?<id>[^"]+)"/gu)].filter(({ groups }) => !ids.has(groups?.['id']));
    expect(missing.map(([link]) => link)).toEqual([]);
  });

  it('sets every equation, and shows every formula and every case', () => {
    expect(text).not.toContain('temml-error');
    const plain = text.replaceAll('<wbr>', '');
    for (const { id, cases } of fresh.formulas) {
      expect(plain.includes(`id="f-${id.replace('/', '-')}"`), id).toBe(true);
      for (const row of cases) expect(plain.includes(`<code>${row.id}</code>`), row.id).toBe(true);
    }
  });
});

describe('the facts of the report', () => {
  const facts = factsOf(freshText);
  const one = (from: string, to: string): string[] => {
    expect(freshText).toContain(from);
    return changes(facts, factsOf(freshText.replace(from, to)));
  };

  it('do not change with its words', () => {
    expect(
      one('A second source with the same ancestor counts once', 'Two sources with one ancestor count once'),
    ).toEqual([]);
    expect(one('| internal pressure |', '| pressure inside |')).toEqual([]);
    expect(one('explained difference**: Another model', 'explained difference**: A different model')).toEqual([]);
    expect(one(', as recalled', ', from memory')).toEqual([]);
  });

  it('change with a verdict, a count, a value, a tag, an equation and a case that is gone', () => {
    expect(one('| 38400 psi | 38400 psi |', '| 38400 psi | 38401 psi |')).toEqual([
      'f-pipe-hoop-stress `WE-01` handbook, computed: 38400 psi -> 38401 psi',
    ]);
    expect(one('| 5 of 5 | agrees |', '| 5 of 5 | fails |')).toHaveLength(1);
    expect(one(`**${fresh.summary.cases} cases`, `**${fresh.summary.cases + 1} cases`)).toHaveLength(1);
    expect(one('**Evidence:** form published', '**Evidence:** form recalled')).toHaveLength(1);
    expect(one('\\frac{P \\, D}{2 \\, t}', '\\frac{P \\, D}{t}')).toHaveLength(1);
    expect(one('`WE-01` handbook |', '|').length).toBeGreaterThan(5);
  });
});

describe('the sources as CSL-JSON', () => {
  const records = cslSources();

  it('are those of src/formula/sources.ts and the programs that are run', () => {
    const keys = [...Object.keys(sources), ...Object.keys(programs)];
    expect(records.map(({ id }) => id)).toEqual(keys);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it.each(Object.keys(sources).map((key) => [key, records.find(({ id }) => id === key)] as const))(
    'name whose %s is, what it is and when it was issued',
    (key, record) => {
      const source: Source = sources[key as keyof typeof sources];
      const names = record?.author ?? record?.editor ?? [];
      expect(names.length).toBeGreaterThan(0);
      const words = names.flatMap((name) => Object.values<string>(name));
      // Every letter of the author is in a name, and nothing else is.
      const letters = (text: string): string => text.replaceAll(/[^\p{L}]/gu, '');
      expect(letters(words.join(''))).toBe(letters(source.author.replace(' (ed.)', '')));
      expect(record).toMatchObject({ title: source.title, issued: { 'date-parts': [[source.year]] } });
      expect(record?.DOI).toBe(source.doi);
    },
  );

  it('tell persons from bodies, and an editor from an author', () => {
    const named = (id: string) => records.find((record) => record.id === id);
    expect(named('kiefner-vieth-1989')?.author).toEqual([
      { family: 'Kiefner', given: 'J. F.' },
      { family: 'Vieth', given: 'P. H.' },
    ]);
    expect(named('asme-b31g')?.author).toEqual([{ literal: 'ASME' }]);
    expect(named('rules-of-thumb')?.editor).toEqual([{ family: 'McAllister', given: 'E. W.' }]);
    expect(named('cai-2022')?.author).toEqual([{ family: 'Cai', given: 'J.' }, { literal: 'et al.' }]);
  });
});

describe('identity and citation', () => {
  it('agree between CITATION.cff, package.json and the library', () => {
    const about = identity();
    expect(citationField('version')).toBe(about.version);
    expect(citationField('license')).toBe(about.licence);
    expect(version).toBe(about.version);
    expect(about.title).toContain(about.name);
    expect(about.lockHash).toMatch(/^[0-9a-f]{64}$/u);
    expect(about.authors.length).toBeGreaterThan(0);
  });

  it('give a BibTeX entry of this version', () => {
    const entry = bibtex(identity());
    expect(entry).toContain(`version = {${version}}`);
    expect(entry.match(/\{/gu)?.length).toBe(entry.match(/\}/gu)?.length);
  });
});

describe('lines of evidence', () => {
  const [formula] = formulas;
  if (formula === undefined) throw new Error('there are no formulas');
  const result = (change: Partial<CaseRecord>, verdict: Verdict = 'agrees', expected = '1 MPa'): CaseResult => ({
    file: 'x.json',
    record: {
      id: 'T-1',
      formula: formula.id,
      class: 'handbook',
      source: { key: 'rules-of-thumb', locator: 'p. 1' },
      inputs: {},
      expect: { result: { value: expected } },
      ...change,
    },
    verdict,
    outcomes: [{ output: 'result', expected, computed: expected, verdict }],
    faults: [],
  });
  const count = (...results: readonly CaseResult[]): number => linesOf(formula, results, [], () => []).length;

  it('count a printed value once for each hand', () => {
    expect(count(result({}))).toBe(1);
    expect(count(result({}), result({ id: 'T-2' }))).toBe(1);
    expect(count(result({}), result({ source: { key: 'hearn', locator: 'p. 1' } }))).toBe(2);
    expect(count(result({}, 'agrees within the rounding of its inputs'))).toBe(1);
  });

  it('do not count refusals, bounds, errata, reasons, practice or memory', () => {
    expect(count(result({ expect: { refused: 'invalid-input' } }))).toBe(0);
    expect(count(result({}, 'agrees', 'at least 1 MPa'))).toBe(0);
    expect(count(result({ erratum: { printed: '2 MPa', explanation: 'a slip' } }))).toBe(0);
    for (const verdict of ['within stated tolerance', 'explained difference', 'fails'] as const)
      expect(count(result({}, verdict))).toBe(0);
    expect(count(result({ class: 'practice', source: null }), result({ class: 'recalled' }))).toBe(0);
  });

  it('count all derivations of a formula once', () => {
    const derivation = result({ class: 'derivation', source: null, route: 'by hand' });
    expect(count(derivation, { ...derivation, record: { ...derivation.record, id: 'T-2' } })).toBe(1);
    expect(linesOf(formula, [derivation], [], () => ['a.test.ts', 'b.test.ts'])).toHaveLength(1);
  });

  it('say that they show the arithmetic only where every route does', () => {
    const file = 'a.test.ts';
    const of = (...shown: readonly Shows[]): boolean =>
      isArithmeticOnly(
        linesOf(
          formula,
          [],
          [],
          () => [file],
          shown.map((shows) => ({ file, formula: formula.id, shows, how: 'hand' })),
        ),
      );
    expect([of('arithmetic'), of('arithmetic', 'physics'), of('mathematics'), of()]).toEqual([
      true,
      false,
      false,
      false,
    ]);
    const word = result({ class: 'derivation', source: null, route: 'a table. Shows the logic only' });
    expect(isArithmeticOnly(linesOf(formula, [word], [], () => []))).toBe(true);
    expect(isArithmeticOnly(linesOf(formula, [word, result({})], [], () => []))).toBe(false);
    expect(isArithmeticOnly([])).toBe(false);
  });

  it('are read from every call of a second route', () => {
    const calls = filesIn('verification/derivations', '.test.ts').map(
      (name) => readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8').split('secondRoute(').length - 1,
    );
    expect(ownRoutes()).toHaveLength(calls.reduce((sum, each) => sum + each, 0));
    expect(ownRoutes().filter(({ formula: id }) => !formulas.some((each) => each.id === id))).toEqual([]);
  });

  it('count sources of one ancestor once', () => {
    expect(ancestorOf('corrosion-analysis-tests', 'pipe/dnv-part-a')).toBe(
      ancestorOf('corrosion-package-tests', 'pipe/dnv-part-a'),
    );
    expect(ancestorOf('corrosion-package-tests', 'pipe/b31g-original')).toBe('corrosion-package-tests');
    for (const { sources: keys } of fresh.ancestors)
      for (const key of keys) expect(key === 'burst tests' || Object.hasOwn(sources, key), key).toBe(true);
  });

  it('come from derivations that import nothing under test', () => {
    const folder = new URL('../derivations/', import.meta.url);
    const modules = readdirSync(folder).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));
    expect(modules.length).toBeGreaterThan(5);
    for (const name of modules) {
      const imports = [
        ...readFileSync(new URL(name, folder), 'utf8').matchAll(/^import (?<what>[^;]*?) from '(?<from>[^']+)'/gmu),
      ];
      for (const { groups } of imports) {
        const from = groups?.['from'] ?? '';
        const isType = groups?.['what']?.startsWith('type ') === true;
        const isOther = from.startsWith('node:') || from === 'vitest' || from.startsWith('./');
        expect(isType || isOther, `${name} imports ${from}`).toBe(true);
      }
    }
  });
});

describe('the properties', () => {
  it('are all there, each once', () => {
    const names = fresh.properties.map(({ file, sentence, runs }) => `${file} ${sentence} ${runs}`);
    expect(new Set(names).size).toBe(names.length);
    for (const { file, sentence } of properties())
      expect(fresh.properties.some((row) => row.file === file && row.sentence === sentence)).toBe(true);
  });

  it('all have the seed of the report', () => {
    expect(fresh.properties.length).toBeGreaterThan(100);
    const numbered = fresh.properties.filter(({ seed }) => typeof seed === 'number');
    expect(numbered.filter(({ seed }) => seed !== SEED)).toEqual([]);
    expect(fresh.properties.filter(({ runs }) => runs < 1)).toEqual([]);
  });
});

describe('docs/verification.md', () => {
  const text = readFileSync(new URL('../../docs/verification.md', import.meta.url), 'utf8');

  it('shows a case that has the form of a record, and commands that exist', () => {
    const [, record = ''] = /```json\n(?<record>[\s\S]*?)```/u.exec(text) ?? [];
    expect(caseRecord.safeParse(JSON.parse(record)).error).toBeUndefined();
    const { scripts } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    const commands = [...text.matchAll(/npm run (?<name>[\w-]+)/gu)].map(({ groups }) => groups?.['name'] ?? '');
    expect(commands.length).toBeGreaterThan(2);
    for (const name of commands) expect(Object.keys(scripts)).toContain(name);
  });

  it('names every verdict', () => {
    for (const verdict of verdicts) expect(text).toContain(`| ${verdict} `);
  });
});
