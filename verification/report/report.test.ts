import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sources } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { version } from '../../src/repair/version.js';
import { type CaseRecord, caseRecord } from '../case.js';
import { SEED } from '../oracles/random.js';
import { type CaseResult, type Verdict, verdicts } from '../runner/judge.js';
import { cslYear, readSources } from './bibliography.js';
import { collect } from './collect.js';
import { documentBlocks, NO_WORKED_EXAMPLE, oneLine } from './document.js';
import { html } from './html.js';
import { bibtex, citationField, identity } from './identity.js';
import { ancestorOf, linesOf } from './lines.js';
import { markdown } from './markdown.js';
import { properties } from './properties.js';
import type { Report } from './shape.js';

/** The committed report is what a fresh run says, and says it in full. */

const read = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');
const committed: Report = JSON.parse(read('report.json'));
const fresh: Report = JSON.parse(JSON.stringify(collect()));

const major = Number(process.versions.node.split('.')[0]);
const onCitedNode = major === committed.identity.nodeMajor;

describe('the committed report', () => {
  const parts = Object.keys(fresh).filter((part) => part !== 'volatile' && part !== 'accuracy') as (keyof Report)[];

  it.each(parts)('holds the %s of a fresh one (else run npm run verify)', (part) => {
    expect(committed[part]).toEqual(fresh[part]);
  });

  it('has no other parts', () => {
    expect(Object.keys(committed)).toEqual(Object.keys(fresh));
  });

  it(`holds the accuracy of a fresh one, on Node ${committed.identity.nodeMajor} to the digit`, (context) => {
    expect(committed.accuracy.map(({ id, draws }) => [id, draws])).toEqual(fresh.accuracy.map(({ id, draws }) => [id, draws]));
    if (!onCitedNode) context.skip(`this is Node ${major}: its engine may round otherwise, so errors are not compared`);
    expect(committed.accuracy).toEqual(fresh.accuracy);
  });

  it('is rendered from its data and from nothing else', () => {
    expect(read('report.md')).toBe(markdown(committed));
    expect(read('report.html')).toBe(html(committed));
  });

  it('has no case that fails', () => {
    expect(fresh.exceptions.filter(({ verdict }) => verdict === 'fails')).toEqual([]);
    expect(fresh.summary.byVerdict.fails).toBe(0);
  });
});

describe('the first page', () => {
  const blocks = documentBlocks(fresh);
  const firstSection = blocks.findIndex((block) => block.sort === 'heading' && block.level === 2);
  const first = JSON.stringify(blocks.slice(0, firstSection));

  it('gives the result in one line and says what was not found', () => {
    expect(first).toContain(oneLine(fresh));
    expect(first).toContain(NO_WORKED_EXAMPLE);
  });

  it('names every case that does not simply agree, and every tolerance with its reason', () => {
    for (const { id, because } of fresh.exceptions) {
      expect(first).toContain(JSON.stringify(id));
      expect(because, id).not.toBe('');
    }
    for (const { reason } of fresh.tolerances) expect(first).toContain(reason);
  });

  it('counts each formula and each case once', () => {
    const { summary } = fresh;
    expect(summary.formulas).toBe(formulas.length);
    expect(summary.byLines.reduce((sum, count) => sum + count, 0)).toBe(formulas.length);
    expect(Object.values(summary.byVerdict).reduce((sum, count) => sum + count, 0)).toBe(summary.cases);
    expect(summary.byClass.reduce((sum, { cases }) => sum + cases, 0)).toBe(summary.cases);
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

describe('sources.json', () => {
  const records = readSources();
  const programs = records.filter(({ id }) => id.startsWith('program-'));
  const reached = {
    published: 'seen in its own open text',
    secondary: 'seen in a secondary copy',
    recalled: 'recalled, not seen',
  };

  it('has the same keys as src/formula/sources.ts, besides the programs that are run', () => {
    const keys = records.filter((record) => !programs.includes(record)).map(({ id }) => id);
    expect(keys.toSorted()).toEqual(Object.keys(sources).toSorted());
    expect(programs.every(({ custom }) => custom.reached === 'run')).toBe(true);
  });

  it.each(records.filter((record) => !programs.includes(record)).map((record) => [record.id, record] as const))(
    'says of %s what the code says',
    (id, record) => {
      const source: { title: string; year: number; edition?: string; doi?: string; reached: keyof typeof reached } =
        sources[id as keyof typeof sources];
      expect(record.title).toBe(source.title);
      expect(cslYear(record)).toBe(source.year);
      expect(record.edition).toBe(source.edition);
      expect(record.DOI).toBe(source.doi);
      expect(record.custom.reached).toBe(reached[source.reached]);
      expect(record.author ?? record.editor).not.toEqual([]);
    },
  );
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
    expect(entry).toContain(`year    = {${citationField('date-released').slice(0, 4)}}`);
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
      const imports = [...readFileSync(new URL(name, folder), 'utf8').matchAll(/^import (?<what>[^;]*?) from '(?<from>[^']+)'/gmu)];
      for (const { groups } of imports) {
        const from = groups?.['from'] ?? '';
        const isType = groups?.['what']?.startsWith('type ') === true;
        expect(isType || from.startsWith('node:') || from.startsWith('./'), `${name} imports ${from}`).toBe(true);
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
    const commands = [...text.matchAll(/npm run (?<name>\w+)/gu)].map(({ groups }) => groups?.['name'] ?? '');
    expect(commands.length).toBeGreaterThan(2);
    for (const name of commands) expect(Object.keys(scripts)).toContain(name);
  });

  it('names every verdict', () => {
    for (const verdict of verdicts) expect(text).toContain(`| ${verdict} `);
  });
});
