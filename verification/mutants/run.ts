import { fork } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { SEED } from '../oracles/random.js';
import { reasonOf } from './equivalent.js';
import type { Share } from './share.js';
import { countsByPart, type MutantsOf, mutantsSummaryPath, readMutantsSummary } from './summary.js';
import { type Of, REASONED } from './what.js';

/**
 * Changes the job one place at a time and asks the tests: `npm run mutants` all of it, `npm run mutants -- job 600` a seeded
 * sample, `npm run mutants -- rooms 1500` one of the formulas: their figures are kept. `npm run mutants -- job limits/` changes
 * the files whose path holds that word, and a second word asks only the tests whose path holds it. `npm run mutants -- job
 * reasons` changes what is said to be equal in effect: a test that notices proves the reason wrong. What nobody notices goes to
 * build/mutants.
 */

const [of = 'job', word = '', tests = ''] = process.argv.slice(2) as [Of?, string?, string?];
const processes = availableParallelism();
const started = Date.now();
const shares = await Promise.all(
  Array.from(
    { length: processes },
    (_, first) =>
      new Promise<Share>((resolve, reject) => {
        const child = fork(new URL('share.ts', import.meta.url), [String(first), String(processes), of, word, tests]);
        child.once('message', (share) => resolve(share as Share));
        child.once('error', reject);
        child.once('exit', (code) =>
          reject(new Error(`process ${first + 1} ended with ${code} and without its share`)),
        );
      }),
  ),
);
const fates = shares.flatMap((share) => share.fates);
const survivors = fates.filter(({ by }) => by === undefined);
const explained = survivors.filter(({ mutant }) => reasonOf(mutant) !== undefined);
const unnoticed = survivors
  .filter(({ mutant }) => reasonOf(mutant) === undefined)
  .map(({ mutant: { file, line, original, replacement }, asked }) => ({ file, line, original, replacement, asked }))
  .toSorted((a, b) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1));
const folder = new URL('../../build/mutants/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL(`${of}.json`, folder), `${JSON.stringify(unnoticed, undefined, 1)}\n`);
if (/^\d*$/u.test(word) && tests === '') {
  const found: MutantsOf = {
    tests: shares[0]?.tests ?? 0,
    seed: word === '' ? undefined : SEED,
    drawnFrom: shares[0]?.all ?? 0,
    byPart: countsByPart(fates, ({ mutant }) => reasonOf(mutant) !== undefined),
    unnoticed,
  };
  const summary = { ...readMutantsSummary(), [of]: found };
  writeFileSync(mutantsSummaryPath, `${JSON.stringify(summary, undefined, 2)}\n`);
}
if (word === REASONED) {
  const wrong = fates.filter(({ by }) => by !== undefined);
  for (const { mutant, by } of wrong)
    console.log(`noticed: ${mutant.file}:${mutant.line} ${mutant.replacement}, by ${by}`);
}
const share = ((1 - survivors.length / fates.length) * 100).toFixed(1);
const minutes = ((Date.now() - started) / 60_000).toFixed(1);
console.log(
  `${fates.length} changes, ${survivors.length} survive, ${explained.length} of them with a reason: ${share} per cent noticed, in ${minutes} min`,
);
