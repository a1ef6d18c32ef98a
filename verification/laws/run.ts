import { fork } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { lawsSummaryPath, Tally } from './summary.js';

/**
 * `npm run laws` draws 100,000 whole cases, each with two worsenings in turn, and writes what it found; `npm run laws -- 5000`
 * draws fewer and writes nothing. It ends badly where a law is broken and nothing says that it is known.
 */
const whole = 100_000;
const cases = Number(process.argv[2] ?? whole);
const processes = availableParallelism();

function share(first: number): Promise<Tally> {
  return new Promise((resolve, reject) => {
    const child = fork(new URL('share.ts', import.meta.url), [String(first), String(processes), String(cases)]);
    child.once('message', resolve);
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`process ${first + 1} ended with ${code} and without its share`)));
  });
}

const tally = new Tally();
for (const found of await Promise.all(Array.from({ length: processes }, (_, first) => share(first)))) tally.take(found);
const summary = tally.summary();
const text = `${JSON.stringify(summary, undefined, 2)}\n`;
if (cases === whole) writeFileSync(lawsSummaryPath, text);
console.log(text);
for (const { draw, law, what, open } of tally.violations.slice(0, 2000))
  if (open === undefined) console.error(`broken: draw ${draw}, ${law}: ${what}`);
if (summary.violations > 0) process.exitCode = 1;
