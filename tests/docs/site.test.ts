import { readdirSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { exampleOf } from '../../docs/site/formula-example.js';
import { formulaPlace } from '../../docs/site/formulas.js';
import { deadLinks } from '../../docs/site/links.js';
import { search } from '../../docs/site/search/rank.js';
import { site } from '../../docs/site/site.js';
import { formulas } from '../../src/registry/index.js';
import { runCases } from '../../verification/runner/run.js';
import { run } from '../cli/run.js';

const { files, folders } = site({ problems: [], placeOf: () => undefined, entries: [] });

/** Every file of the site but the pages of typedoc, which `npm run docs` checks. */
const all = new Map<string, string | undefined>([
  ...files,
  ['api/index.html', undefined],
  ...[...folders].flatMap(([source, place]) =>
    readdirSync(source).map((file): [string, undefined] => [`${place}/${file}`, undefined]),
  ),
]);

describe('the site of the documentation', () => {
  it('has no link that leads nowhere and loads nothing from the network', () => {
    expect(files.size).toBeGreaterThan(400);
    expect(deadLinks(all)).toEqual([]);
  });

  it('knows a dead link, a missing anchor and a foreign script when it sees one', () => {
    const page =
      '<a href="b.html">b</a><a href="#there">t</a><p id="here"><script src="https://x.example/a.js"></script>';
    expect(deadLinks(new Map([['a.html', page]]))).toEqual([
      'a.html: b.html is not there',
      'a.html: #there has no such anchor',
      'a.html: loads https://x.example/a.js from another host',
    ]);
  });

  it('has a page for every formula, with its equation, its symbols and its evidence', () => {
    for (const { id, title, inputs } of formulas) {
      const page = files.get(formulaPlace(id)) ?? '';
      expect(page, id).toContain(title);
      for (const field of Object.keys(inputs)) expect(page, id).toContain(`<code>${field}</code>`);
      expect(page, id).toContain('<h2 id="equation">');
      expect(page, id).toContain('<h2 id="evidence">');
    }
  });

  it('leads from every page past the list of pages to its text, in landmarks with names', () => {
    for (const [place, page] of files) {
      if (!place.endsWith('.html')) continue;
      expect(page, place).toMatch(/<body>\n<a class="skip" href="#content">/u);
      for (const landmark of ['<header>', '<nav aria-label=', '<main id="content"', '<footer>', 'role="search"'])
        expect(page.split(landmark).length, `${place}: ${landmark}`).toBe(2);
      expect(page.match(/<h1[ >]/gu), place).toHaveLength(1);
    }
  });

  it('says on every page who answers for a design', () => {
    for (const [place, page] of files)
      if (place.endsWith('.html')) expect(page, place).toContain('competent person under the local code');
  });
});

describe('the examples of the formulas', () => {
  const results = runCases();
  const examples = formulas.flatMap((formula) => {
    const records = results.flatMap(({ record }) => (record.formula === formula.id ? [record] : []));
    return exampleOf(formula, records) ?? [];
  });

  it('are there for more than half of the formulas, and each is a command that runs', async () => {
    expect(examples.length).toBeGreaterThan(240);
    for (const { words, command } of examples) expect((await run(words)).code, command).toBe(0);
  });
});

describe('the search of the site', () => {
  const script = files.get('search-index.js') ?? '';
  const entries = JSON.parse(script.slice(script.indexOf('['), script.lastIndexOf(']') + 1));
  const first = (words: string, most = 10) =>
    search(entries, words)
      .slice(0, most)
      .map(({ place }) => place);

  test.each([
    ['barlow', 'pipe/hoop-stress'],
    ['dew point', 'site/dew-point'],
    ['pot life', 'cure/pot-life'],
    ['leak clamp', 'seal/leak-force'],
    ['maop', 'pipe/safe-pressure'],
    ['wall loss', 'pipe/wall-loss-rate'],
    ['hydrotest', 'acceptance/test-pressure'],
    ['bolt torque', 'seal/fastener-torque'],
    ['how many rolls', 'wrap/rolls'],
    ['wet bulb', 'site/vapour-pressure-from-wet-bulb'],
    ['volkersen', 'laminate/lap-shear-peak'],
    ['glass transition', 'cure/di-benedetto'],
    ['bresle', 'site/soluble-salts'],
    ['mix ratio', 'resin/batch-split'],
  ])('answers "%s"', (words, id) => {
    expect(first(words)).toContain(formulaPlace(id));
  });

  it('knows most formulas by words that their titles do not hold', () => {
    expect(formulas.filter(({ search: terms = [] }) => terms.length > 0).length).toBeGreaterThan(formulas.length * 0.7);
  });

  it('finds nothing for what is not there', () => {
    expect(first('zzyzx')).toEqual([]);
  });
});
