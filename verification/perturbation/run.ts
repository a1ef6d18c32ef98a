import { fork } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { allConstants } from './bundle.js';
import { type PerturbationList, type PerturbedConstant, type PerturbedResult, perturbationText } from './list.js';
import { CHANGE } from './perturber.js';
import type { Share } from './share.js';
import { summaryOf, summaryPath, summaryText } from './summary.js';

/**
 * Changes every numeric constant by one part in a thousand, and the result of every formula, and says what notices: only the
 * checks that reach it are run, over as many processes as there are cores. The check of the declared text against the code is
 * not run: that comes to the same as changing the text along with the code.
 */

/** `npm run perturb -- 4` runs in four processes; otherwise there is one for each core. */
const processes = Number(process.argv[2] ?? availableParallelism());

function shareOf(first: number): Promise<Share> {
  return new Promise((resolve, reject) => {
    const child = fork(new URL('share.ts', import.meta.url), [String(first), String(processes)]);
    child.once('message', resolve);
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`process ${first + 1} ended with ${code} and without its share`)));
  });
}

const started = Date.now();
const shares = await Promise.all(Array.from({ length: processes }, (_, first) => shareOf(first)));
const constants: PerturbedConstant[] = [];
const results: Record<string, PerturbedResult> = {};
for (const share of shares) for (const [place, found] of share.constants) constants[place] = found;
for (const [id, found] of shares.flatMap((share) => share.results).sort(([a], [b]) => (a < b ? -1 : 1)))
  results[id] = found;
const list: PerturbationList = { change: CHANGE, constants, results };

const folder = new URL('../../build/perturbation/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL('survivors.json', folder), `${JSON.stringify(list, undefined, 1)}\n`);
writeFileSync(new URL('survivors.md', folder), perturbationText(list));
writeFileSync(summaryPath, summaryText(summaryOf(list, allConstants())));
console.log(perturbationText(list).split('\n').slice(0, 17).join('\n'));
const minutes = ((Date.now() - started) / 60_000).toFixed(1);
console.log(
  `${constants.length} constants and ${Object.keys(results).length} results against ${shares[0]?.checks} checks in ${minutes} min by ${processes} processes; every one of them in build/perturbation/survivors.md`,
);
