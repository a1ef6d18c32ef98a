import { describe, expect, test } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { firstPage } from '../../src/report/index.js';
import { exampleDocument, exampleNames } from '../json/examples.js';

const files = {
  folder: 'build/a-long-name-of-a-folder-of-somebody/',
  names: ['sheet.html', 'sheet.md', 'sheet.txt', 'drawing.svg', 'plan.html', 'plan.txt', 'design.json'],
};

const designOf = (name: string) => designRepair(decodeCase(exampleDocument(name)).case);
const linesOf = (text: string): string[] => text.trimEnd().split('\n');

describe.each(exampleNames)('the first page of %s', (name) => {
  test.each(['si', 'us'] as const)('takes one screen, with every warning and every assumption, in %s', (units) => {
    const design = designOf(name);
    const page = firstPage(design, { units, files });
    const lines = linesOf(page);
    expect(lines.length).toBeLessThanOrEqual(58);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(100);
    const flat = page.replaceAll(/\s+/gu, ' ');
    expect(flat).toContain(`Verdict: ${design.verdict.toUpperCase()}`);
    expect(flat).not.toContain('more, in the whole sheet');
    for (const { text } of design.warnings) expect(flat).toContain(text.split('{')[0]?.trim());
    for (const { text } of design.reasons) expect(flat).toContain(text.split('{')[0]?.trim());
    for (const { field } of design.missing) expect(flat).toContain(`missing: ${field}`);
    for (const { amount } of design.assumed) expect(flat).toContain(amount.name);
    for (const file of files.names) expect(flat).toContain(file);
  });
});

describe('the first page', () => {
  test('counts the warnings that do not fit, and says where they stand', () => {
    const design = designOf('cooling-water-leak.json');
    const [warning] = design.warnings;
    if (warning === undefined) throw new Error('the example warns of something');
    const many = { ...design, warnings: Array.from({ length: 40 }, () => warning) };
    const lines = linesOf(firstPage(many, { files }));
    expect(lines.length).toBeLessThanOrEqual(58);
    const shown = lines.filter((line) => line.startsWith('- From the hour')).length;
    expect(lines).toContain(`- ${40 - shown} more, in the whole sheet (--full): read them before you build`);
    expect(lines).toContain('WARNINGS (40)');
  });

  test('draws the repair to scale along the pipe', () => {
    const lines = linesOf(firstPage(designOf('cooling-water-leak.json')));
    const laid = lines.find((line) => /^ +\.+-+=+-+\.+$/u.test(line)) ?? '';
    const count = (mark: string): number => laid.split(mark).length - 1;
    // 466.1 mm of tape, of which 313.6 mm are laminate and 265.6 mm are laminate of full thickness.
    const all = laid.trim().length;
    expect(Math.abs(count('=') / all - 265.6 / 466.1)).toBeLessThan(2 / all);
    expect(Math.abs((count('=') + count('-')) / all - 313.6 / 466.1)).toBeLessThan(2 / all);
    expect(lines.some((line) => line.includes('O hole'))).toBe(true);
    expect(lines.some((line) => /^_+O+_+$/u.test(line))).toBe(true);
  });
});
