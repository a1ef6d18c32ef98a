import { mkdirSync, writeFileSync } from 'node:fs';
import { verdicts } from '../runner/judge.js';
import { collect } from './collect.js';
import { cslSources } from './csl.js';
import { oneLine } from './document.js';
import { html } from './html.js';
import { markdown } from './markdown.js';
import type { Report } from './shape.js';

/**
 * Writes report.md, which is kept in the repository, and into build/report/ the same as report.html, its data as report.json
 * and the sources as CSL-JSON; prints the counts; fails when a case fails.
 */

const built = new URL('../../build/report/', import.meta.url);

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

const text = `${JSON.stringify(collect(), undefined, 1)}\n`;
const report: Report = JSON.parse(text);
mkdirSync(built, { recursive: true });
writeFileSync(new URL('report.md', import.meta.url), markdown(report));
writeFileSync(new URL('report.html', built), html(report));
writeFileSync(new URL('report.json', built), text);
writeFileSync(new URL('sources.json', built), `${JSON.stringify(cslSources(), undefined, 1)}\n`);
console.log(oneLine(report));
console.log(counts(report));
for (const { id, formula, because } of report.exceptions.filter(({ verdict }) => verdict === 'fails'))
  console.error(`fails: ${id} (${formula}) ${because}`);
process.exitCode = report.summary.byVerdict.fails > 0 ? 1 : 0;
