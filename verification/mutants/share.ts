import { filesIn } from '../in-process/files.js';
import { reasonOf } from './equivalent.js';
import { instrument } from './instrument.js';
import { type Fate, Killer } from './kill.js';
import { keepNoticed, keyOf, readBefore } from './summary.js';
import { asked, killSuite, mutated, type Of, REASONED } from './what.js';

/** One process of `npm run mutants`: every so manieth change, sent back as it goes. */

export interface Share {
  readonly fates: readonly Fate[];
  readonly tests: number;
  /** Changes there are, drawn or not. */
  readonly all: number;
}

const [first = 0, step = 1] = process.argv.slice(2, 4).map(Number);
const [of, word = '', among = ''] = process.argv.slice(4) as [Of, string?, string?];
const { texts, mutants } = await instrument(mutated(of, filesIn('src', '.ts')));
const suite = killSuite(of, filesIn('tests', '.test.ts'), filesIn('verification', '.test.ts'));
const killer = await Killer.over(
  suite.filter((file) => file.includes(among)),
  texts,
);
const own = asked(mutants, word).filter((_, place) => place % step === first);
const before = readBefore(of);
const fates: Fate[] = [];
for (const [done, mutant] of own.entries()) {
  if (done % 100 === 0) console.error(`process ${first + 1}: ${done} of ${own.length} changes, ${killer.count} tests`);
  // What has its reason is not asked, but in a run of its own, which holds the reasons to the tests.
  if (word !== REASONED && reasonOf(mutant) !== undefined) {
    fates.push({ mutant, by: undefined, asked: 0 });
    continue;
  }
  const fate = killer.fateOf(mutant, before[keyOf(mutant)]);
  fates.push(fate);
  if (fate.by === undefined && word !== REASONED) {
    const { file, line, original, replacement } = mutant;
    console.error(
      `survives ${fate.asked} tests: ${file}:${line} ${original} -> ${replacement}`.replaceAll(/\s+/gu, ' '),
    );
  }
  if (fate.by !== before[keyOf(mutant)]) keepNoticed(of, fate);
}
const share: Share = { fates, tests: killer.count, all: mutants.length };
process.send?.(share, () => process.disconnect());
