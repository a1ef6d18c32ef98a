import { fork } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import type { Fate } from './kill.js';

/**
 * Changes the job one place at a time and asks the tests: `npm run mutants`; `npm run mutants -- rooms` changes the formulas,
 * `npm run mutants -- job limits/` the files whose path holds that word.
 */

const [of = 'job', part = ''] = process.argv.slice(2);
const processes = availableParallelism();
const started = Date.now();
const shares = await Promise.all(
  Array.from(
    { length: processes },
    (_, first) =>
      new Promise<readonly Fate[]>((resolve, reject) => {
        const child = fork(new URL('share.ts', import.meta.url), [String(first), String(processes), of, part]);
        child.once('message', (fates) => resolve(fates as readonly Fate[]));
        child.once('error', reject);
        child.once('exit', (code) =>
          reject(new Error(`process ${first + 1} ended with ${code} and without its share`)),
        );
      }),
  ),
);
const fates = shares.flat();
const survivors = fates.filter(({ by }) => by === undefined);
const folder = new URL('../../build/mutants/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(
  new URL(`${of}.json`, folder),
  `${JSON.stringify(
    survivors.map(({ mutant, asked }) => ({ ...mutant, asked })),
    undefined,
    1,
  )}\n`,
);
const share = ((1 - survivors.length / fates.length) * 100).toFixed(1);
const minutes = ((Date.now() - started) / 60_000).toFixed(1);
console.log(`${fates.length} changes, ${survivors.length} survive: ${share} per cent noticed, in ${minutes} min`);
