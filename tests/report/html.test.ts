import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { answerInShort } from '../../src/report/answer-in-short.js';
import { stepNumber } from '../../src/report/front.js';
import { calculationSheet } from '../../src/report/index.js';
import { numberedSteps } from '../../src/report/numbered-steps.js';
import { chosen } from '../../src/report/options.js';
import { exampleDocument, exampleNames } from '../json/examples.js';

const sheetOf = (name: string, format: 'html' | 'text' = 'html'): string =>
  calculationSheet(designRepair(decodeCase(exampleDocument(name)).case, { record: true }), { format });

const unescaped = (html: string): string =>
  html.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

describe.each(exampleNames)('the sheet of %s as a page', (name) => {
  const html = sheetOf(name);

  it('needs no network and no script', () => {
    expect(html).toMatch(/^<!doctype html>/);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(
      /<script|<link|<img|src=|@import|url\((?!#)/u,
    );
  });

  it('has every step of the text, by its number and its formula', () => {
    const text = sheetOf(name, 'text');
    const numbers = [...text.matchAll(/^(\d+\.\d+) {2}/gmu)].map(([, number]) => number);
    const shown = [...html.matchAll(/<h4>(\d+\.\d+) /gu)].map(([, number]) => number);
    expect(shown).toEqual(numbers);
    for (const [, id = ''] of text.matchAll(/^ {4}Formula +(\S+)$/gmu)) expect(html).toContain(id);
  });

  it('sets each equation as mathematics: none is left as the text of a machine', () => {
    const equations = [...html.matchAll(/<div class="equation">(.*?)<\/div><\/div>/gsu)].map(([whole]) => whole);
    for (const equation of equations) expect(equation).toContain('<math');
    const plain = [...html.matchAll(/<mtext>([^<]*)<\/mtext>/gu)].map(([, words = '']) => unescaped(words));
    // What is no equation is a word or a number with its unit, and holds no operator between symbols.
    for (const words of plain) expect(words).not.toMatch(/[a-z_] [*+] [a-z(]/u);
  });
});

describe('a sheet for a page of somebody else', () => {
  it('is the article of the whole page, without its head', () => {
    const { case: repairCase } = decodeCase(exampleDocument('cooling-water-leak.json'));
    const article = calculationSheet(designRepair(repairCase, { record: true }), { format: 'html-fragment' });
    expect(article).toMatch(/^<article class="hoopwright-sheet">.*<\/article>$/su);
    expect(sheetOf('cooling-water-leak.json')).toContain(article);
  });
});

describe('page one of the sheet', () => {
  const html = sheetOf('cooling-water-leak.json');
  const front = html.slice(0, html.indexOf('<section class="answer">'));

  it('has verdict, drawings, warnings, what is recalled and who signs', () => {
    expect(front).toContain('Verdict: designed');
    expect(front.split('<figure>').length - 1).toBe(4);
    expect(front).toContain('An overlap of 50.00 % is exactly what 2 layers need');
    expect(front).toMatch(/\d+ of \d+ rule values are written down from memory/);
    for (const word of ['Prepared', 'Checked', 'Approved']) expect(front).toContain(`>${word}</th>`);
  });

  it.each(exampleNames.filter((name) => name !== 'sour-gas-crack.json'))(
    'gives every line of the answer of %s the number of its step or part, and that step its value',
    (name) => {
      const { case: repairCase } = decodeCase(exampleDocument(name));
      const design = designRepair(repairCase, { record: true });
      const record = design.record ?? [];
      const steps = new Map(numberedSteps(record).map(({ number, step }) => [number, step]));
      const rows = answerInShort(design, chosen({}));
      expect(rows.length).toBeGreaterThan(9);
      for (const [label, , , by] of rows) {
        const numbers = by === undefined ? [] : stepNumber(record, by).split(', ');
        expect(numbers.join(', '), label).toMatch(/^\d/u);
        for (const number of numbers.filter((each) => each.includes('.'))) expect(steps.has(number), label).toBe(true);
      }
      const resists = rows.find(([label]) => label === 'It resists')?.[3];
      const result = steps.get(resists === undefined ? '' : stepNumber(record, resists))?.result;
      expect(JSON.stringify(result)).toContain(String(design.laminate?.resistance.value));
    },
  );

  it('gives lines of the answer with the number of the step that holds them', () => {
    const steps = [...front.matchAll(/<td class="number">(\d+\.\d+)<\/td>/gu)].map(([, number]) => number);
    const cells = [...front.matchAll(/<td>(\d+\.\d+)<\/td>/gu)].map(([, number]) => number);
    const numbers = [...steps, ...cells];
    expect(numbers.length).toBeGreaterThan(5);
    const text = sheetOf('cooling-water-leak.json', 'text');
    const titles = numbers.map(
      (number) => new RegExp(`^${number?.replace('.', '\\.')} {2}(.*?) \\.`, 'mu').exec(text)?.[1],
    );
    expect(titles).toContain('Number of plies');
    expect(titles).toContain('Length of the laminate');
    expect(titles).toContain('Pressure of the system test');
  });
});
