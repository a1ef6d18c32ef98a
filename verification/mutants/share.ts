import { filesIn } from '../in-process/files.js';
import { instrument } from './instrument.js';
import { type Fate, Killer } from './kill.js';
import { killSuite, mutated } from './what.js';

/** One process of `npm run mutants`: every so manieth change, sent back as it goes. */

const [first = 0, step = 1, of = 'job', part = ''] = process.argv
  .slice(2)
  .map((each, index) => (index < 2 ? Number(each) : each)) as [number, number, 'job' | 'rooms', string];
const { texts, mutants } = await instrument(mutated(of, filesIn('src', '.ts')));
const killer = await Killer.over(
  killSuite(of, filesIn('tests', '.test.ts'), filesIn('verification', '.test.ts')),
  texts,
);
const own = mutants.filter(({ file }) => file.includes(part)).filter((_, place) => place % step === first);
const fates: Fate[] = [];
for (const [done, mutant] of own.entries()) {
  if (done % 100 === 0) console.error(`process ${first + 1}: ${done} of ${own.length} changes, ${killer.count} tests`);
  fates.push(killer.fateOf(mutant));
}
process.send?.(fates, () => process.disconnect());
