import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { verdicts } from '../runner/judge.js';
import { collect } from './collect.js';
import { cslSources } from './csl.js';
import { oneLine } from './front-page.js';
import { html } from './html.js';
import { figures, markdown } from './markdown.js';
import type { Report } from './shape.js';

/**
 * Writes report.md and its figures, which are kept in the repository, and into build/report/ the same as report.html, its data as report.json
 * and the sources as CSL-JSON; prints the counts; fails when a case fails.
 */

const built = new URL('../../build/report/', import.meta.url);
const drawn = new URL('figures/', import.meta.url);

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
  const { otherHand, ownRoute, arithmeticOnly, neither } = summary.evidence;
  const lines = [
    ['value of another hand', otherHand] as const,
    ['own second route only', ownRoute] as const,
    ['  of these arithmetic only', arithmeticOnly] as const,
    ['neither', neither] as const,
  ].map(([name, number]) => `  ${name.padEnd(width)}  ${String(number).padStart(4)}`);
  const shows = (['physics', 'mathematics', 'counting', 'arithmetic'] as const).map((kind) => {
    const number = report.formulas.filter(({ routes }) => routes.some((route) => route.shows === kind)).length;
    return `  ${kind.padEnd(width)}  ${String(number).padStart(4)}`;
  });
  return [
    `cases by verdict and class (${summary.cases} cases)`,
    ...rows,
    `formulas by what they stand on (${summary.formulas} formulas)`,
    ...lines,
    'formulas by what their second routes in code say that they show',
    ...shows,
  ].join('\n');
}

const text = `${JSON.stringify(collect(), undefined, 1)}\n`;
const report: Report = JSON.parse(text);
mkdirSync(built, { recursive: true });
writeFileSync(new URL('report.md', import.meta.url), markdown(report));
rmSync(drawn, { recursive: true, force: true });
mkdirSync(drawn);
for (const [name, svg] of figures(report)) writeFileSync(new URL(name, drawn), svg);
writeFileSync(new URL('report.html', built), html(report));
writeFileSync(new URL('report.json', built), text);
writeFileSync(new URL('sources.json', built), `${JSON.stringify(cslSources(), undefined, 1)}\n`);
console.log(oneLine(report));
console.log(counts(report));
for (const { id, formula, because } of report.exceptions.filter(({ verdict }) => verdict === 'fails'))
  console.error(`fails: ${id} (${formula}) ${because}`);
process.exitCode = report.summary.byVerdict.fails > 0 ? 1 : 0;
