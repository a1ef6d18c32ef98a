import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { calculationSheet, planHtml, planText } from '../../src/report/index.js';
import { exampleDocument } from '../json/examples.js';

/** Units of SI that a US reader must not meet after a number. */
const SI = /(?:^|[\s(])-?\d[\d.e-]* ?(?:mm2?|um|cm|m[23]?|degC|K|bar|k?Pa|[MG]Pa|kg|g|k?N|N m|k?J|MJ|m?L)(?![\w/])/gmu;

const design = designRepair(decodeCase(exampleDocument('cooling-water-leak.json')).case, { record: true });
const unwrapped = (text: string): string => text.replaceAll(/\s+/gu, ' ');

describe('the first example for a US reader', () => {
  const sheet = calculationSheet(design, { units: 'us' });
  const from = sheet.indexOf('\n== CALCULATION ');
  const to = sheet.indexOf('\n== SOURCES ');

  it('has no unit of SI on the plan, as text and as a page', () => {
    const plan = planWork(design);
    expect(unwrapped(planText(plan, { units: 'us' })).match(SI)).toBeNull();
    expect(planHtml(plan, { units: 'us' }).match(SI)).toBeNull();
    // The same plan in SI is full of them: the pattern finds what it looks for.
    expect(unwrapped(planText(plan, { units: 'si' })).match(SI)?.length).toBeGreaterThan(30);
  });

  it('has none on the sheet before and after the calculation, sources apart, which are titled as they were printed', () => {
    expect(from).toBeGreaterThan(0);
    expect(to).toBeGreaterThan(from);
    expect(unwrapped(sheet.slice(0, from)).match(SI)).toBeNull();
  });

  it('has in the calculation none but beside a US value, where an equation is worked in units that fit each other', () => {
    const paragraphs = sheet.slice(from, to).split(/\n\s*\n/u);
    for (const paragraph of paragraphs) {
      // A term that the equation needs in other units: `dp = 2.901 psi = 20 kPa`.
      const terms = paragraph.replaceAll(/^( +\S+ +=) (.+?) = \S+(?: \S+)?/gmu, '$1 $2');
      // Arithmetic between the equation and its result: only the last line of the chain is the answer.
      const lines = terms.split('\n');
      const first = lines.findIndex((line) => /^ +\S+ = /u.test(line) && !/^ +\S+ = -?\d/u.test(line));
      const last = lines.findLastIndex((line) => /^ +(?:\S+ )?= /u.test(line));
      const seen = first >= 0 && last > first ? [...lines.slice(0, first), ...lines.slice(last)].join('\n') : terms;
      expect.soft([seen, seen.match(SI)], paragraph).toEqual([seen, null]);
    }
  });
});
