import { mkdirSync, writeFileSync } from 'node:fs';
import { byHandRows } from './by-hand.js';
import { coldStartRows } from './cold-starts.js';
import { designRows } from './designs.js';
import { longRows } from './long-inputs.js';
import { peerRows } from './peers.js';
import { held, type Row, table } from './row.js';
import { sizeRows } from './sizes.js';
import { surveyFileRows } from './survey-file.js';
import { surveyRows } from './surveys.js';

/**
 * Speed and size against their budgets. Times are ratios: what is compared runs in turn, in one process or in processes
 * started in turn, so that the machine's speed drops out: `npm run bench` all of it, `npm run bench -- cold starts` one part.
 */
const parts: Readonly<Record<string, (say: (what: string) => void) => Row[] | Promise<Row[]>>> = {
  surveys: surveyRows,
  'formulas by hand': byHandRows,
  'long inputs': longRows,
  'a survey as a file': surveyFileRows,
  peers: peerRows,
  designs: designRows,
  'cold starts': coldStartRows,
  sizes: sizeRows,
};

const asked = process.argv.slice(2).join(' ');
if (asked !== '' && parts[asked] === undefined)
  throw new Error(`no part is called "${asked}"; the parts are ${Object.keys(parts).join(', ')}`);
const rows: Row[] = [];
for (const [part, measure] of Object.entries(parts)) {
  if (asked !== '' && part !== asked) continue;
  process.stderr.write(`${part}\n`);
  rows.push(...(await measure((what) => process.stderr.write(`  ${what}\n`))));
}

const missed = rows.filter((row) => held(row) === false).length;
process.stdout.write(`\n${table(rows)}\n${missed === 0 ? 'Every budget is held.' : `${missed} budgets are missed.`}\n`);
if (asked === '') {
  mkdirSync('build', { recursive: true });
  const written = { node: process.version, rows: rows.map((row) => ({ ...row, held: held(row) })) };
  writeFileSync('build/bench.json', `${JSON.stringify(written, null, 2)}\n`);
}
if (missed > 0) process.exitCode = 1;
