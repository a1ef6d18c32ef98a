import { writeFileSync } from 'node:fs';
import { verdicts } from '../runner/judge.js';
import { collect } from './collect.js';
import { oneLine } from './document.js';
import { html } from './html.js';
import { markdown } from './markdown.js';
import type { Report } from './shape.js';

/** Writes report.json, and report.md and report.html from it; prints the counts; fails when a case fails. */

const put = (name: string, text: string): void => writeFileSync(new URL(name, import.meta.url), text);

function counts(report: Report): string {
  const { summary } = report;
  const width = Math.max(...verdicts.map((verdict) => verdict.length));
  const rows = verdicts.map((verdict) => {
    const byClass = summary.byClass
      .filter((row) => row.byVerdict[verdict] > 0)
      .map((row) => `${row.byVerdict[verdict]} ${row.class}`);
    const classes = byClass.length === 0 ? '' : `  (${byClass.join(', ')})`;
    return `  ${verdict.padEnd(width)}  ${String(summary.byVerdict[verdict]).padStart(4)}${classes}`;
  });
  const lines = ['none', 'one', 'two', 'three or more'].map(
    (name, index) => `  ${name.padEnd(width)}  ${String(summary.byLines[index]).padStart(4)}`,
  );
  return [
    `cases by verdict and class (${summary.cases} cases)`,
    ...rows,
    `formulas by independent lines of evidence (${summary.formulas} formulas)`,
    ...lines,
  ].join('\n');
}

const collected = collect();
const text = `${JSON.stringify(collected, undefined, 1)}\n`;
const report: Report = JSON.parse(text);
put('report.json', text);
put('report.md', markdown(report));
put('report.html', html(report));
console.log(oneLine(report));
console.log(counts(report));
for (const { id, formula, because } of report.exceptions.filter(({ verdict }) => verdict === 'fails'))
  console.error(`fails: ${id} (${formula}) ${because}`);
process.exitCode = report.summary.byVerdict.fails > 0 ? 1 : 0;
