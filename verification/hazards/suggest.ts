import { filesIn } from '../in-process/files.js';
import { allGuards, switchedTests } from './switched.js';

/** For each guard, the tests that go red without it: what a new row of the log is chosen from. `npm run hazards -- coverage` asks for the guards whose key holds that word. */

const [word = ''] = process.argv.slice(2);
const guards = allGuards();
const files = filesIn('tests', '.test.ts').filter((file) => /^tests\/(?:faults|repair|json)\//u.test(file));
const asked = await switchedTests(guards, files);
console.log(`${guards.length} guards, ${asked.length} tests`);
for (const [index, { key, file, line }] of guards.entries()) {
  if (!key.includes(word)) continue;
  const red = asked.filter((test) => test.reaches.has(index) && !test.holdsWithout(index));
  console.log(`\n${key}  (${file}:${line})`);
  if (red.length === 0) console.log('  NOTHING GOES RED');
  for (const test of red.slice(0, 6)) console.log(`  ${test.file} > ${test.name}`);
}
