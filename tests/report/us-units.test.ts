import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { calculationSheet, planHtml, planText } from '../../src/report/index.js';
import { exampleDocument } from '../json/examples.js';

/**
 * Units of SI that a US reader must not meet after a number. Not among them: kJ/mol and mg/m2, which the US trade reads
 * from data sheets and salt meters as they are; API 5L is no five litres.
 */
const SI =
  /(?:^|(?<!API)[\s(])-?\d[\d.e-]* ?(?:mm2?|um|cm|m[23]?|degC|K|bar|k?Pa|[MG]Pa|kg|g|k?N|N m|k?J|MJ|m?L)(?![\w/])/gmu;

const design = designRepair(decodeCase(exampleDocument('cooling-water-leak.json')).case, { record: true });
const unwrapped = (text: string): string => text.replaceAll(/\s+/gu, ' ');

describe('the first example for a US reader', () => {
  const sheet = calculationSheet(design, { units: 'us' });
  const from = sheet.indexOf('\n== CALCULATION ');
  const to = sheet.indexOf('\n== SOURCES ');

  it('has no unit of SI on the plan, as text and as a page', () => {
    const plan = planWork(design);
    expect(unwrapped(planText(plan, { units: 'us' })).match(SI)).toBeNull();
    // The margins of its paper are the page's own.
    const page = planHtml(plan, { units: 'us' }).replace(/<style>.*?<\/style>/su, '');
    expect(page).not.toContain('<style>');
    expect(page.match(SI)).toBeNull();
    // The same plan in SI is full of them: the pattern finds what it looks for.
    expect(unwrapped(planText(plan, { units: 'si' })).match(SI)?.length).toBeGreaterThan(30);
  });

  it('has none on the sheet before the calculation, from the answer to the case; the sources below it are titled as printed', () => {
    expect(from).toBeGreaterThan(0);
    expect(to).toBeGreaterThan(from);
    expect(unwrapped(sheet.slice(0, from)).match(SI)).toBeNull();
  });

  it('has in the calculation none but where the equation itself or its source speaks', () => {
    const found = sheet
      .slice(from, to)
      .split(/\n\s*\n/u)
      .flatMap((paragraph) => withoutArithmetic(paragraph).match(SI) ?? []);
    expect(found).toEqual([]);
  });
});

describe('a long length', () => {
  const long = designRepair(decodeCase(exampleDocument('hydrocarbon-line-corrosion.json')).case, { record: true });
  const rowOf = (sheet: string, words: string) => sheet.split('\n').find((row) => row.endsWith(`  ${words}`)) ?? '';

  it('is in feet for a US reader, and as the equation needs it after that', () => {
    const sheet = calculationSheet(long, { units: 'us' });
    expect(rowOf(sheet, 'length of the test section')).toContain('= 150 ft = 1800 in');
    expect(rowOf(sheet, 'tape or sheet of the whole wrap')).toMatch(/= \d+\.\d ft/u);
    expect(rowOf(sheet, 'tape or sheet of the whole wrap')).not.toMatch(/\bin\b/u);
  });

  it('is in metres for the others, where a short one stays in millimetres', () => {
    const sheet = calculationSheet(long, { units: 'si' });
    expect(rowOf(sheet, 'length of the test section')).toMatch(/= 45\.72 m = 45720 mm/u);
    expect(rowOf(sheet, 'wall thickness')).toMatch(/ mm {2}/u);
  });
});

/**
 * What a US reader reads of a step, without the exceptions:
 *
 * - the evidence, the source and the method of a formula, which speak of its own constants and of how it was printed;
 * - a term that the equation needs in units that fit each other, after its US value: `dp = 2.901 psi = 20 kPa`;
 * - the arithmetic in such units, from the equation to the line before its result, and the condition of a branch.
 */
function withoutArithmetic(paragraph: string): string {
  if (/^ +(?:Evidence|Method:|Note) /u.test(paragraph)) return '';
  const lines = paragraph.split('\n').filter((line) => !/^ +- .* (?:holds|does not hold): /u.test(line));
  const result = lines.findLastIndex((line) => /^ +(?:\S+ )?= /u.test(line));
  const isChain = lines.some((line) => /^ += /u.test(line));
  const read = isChain ? lines.slice(result) : lines;
  return read.map((line) => line.replace(/^( +\S+ +=) (.+?) = \S+(?: \S+)?/u, '$1 $2')).join('\n');
}
