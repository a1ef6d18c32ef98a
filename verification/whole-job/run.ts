import { mkdirSync, writeFileSync } from 'node:fs';
import { survey } from './survey.js';

/** Draws more cases than the suite: `npm run whole-job -- 20000`. Its figures go to build/whole-job.json. */
const cases = Number(process.argv[2] ?? 5000);
const found = survey(0, cases);
mkdirSync('build', { recursive: true });
writeFileSync('build/whole-job.json', `${JSON.stringify(found, null, 2)}\n`);
const { different, otherVerdicts, ...figures } = found;
console.log(JSON.stringify(figures, null, 2));
console.log(`${different.length} numbers and ${otherVerdicts.length} verdicts differ`);
for (const each of [...different, ...otherVerdicts].slice(0, 40)) console.log(each);
process.exitCode = different.length + otherVerdicts.length === 0 ? 0 : 1;
