import { mkdirSync, writeFileSync } from 'node:fs';
import { summaryOf, wholeJobSummaryPath } from './summary.js';
import { survey } from './survey.js';

/**
 * `npm run whole-job` designs 3,000 drawn cases by both routes and writes its figures to summary.json; `npm run whole-job -- 20000`
 * draws others and writes nothing beside. What differs stands in build/whole-job.json.
 */
const whole = 3000;
const cases = Number(process.argv[2] ?? whole);
const found = survey(0, cases);
mkdirSync('build', { recursive: true });
writeFileSync('build/whole-job.json', `${JSON.stringify(found, null, 2)}\n`);
const text = `${JSON.stringify(summaryOf(0, found), null, 2)}\n`;
if (cases === whole) writeFileSync(wholeJobSummaryPath, text);
console.log(text);
console.log(`${found.different.length} leaves and ${found.otherVerdicts.length} verdicts differ`);
for (const each of [...found.different, ...found.otherVerdicts].slice(0, 40)) console.log(each);
process.exitCode = found.different.length + found.otherVerdicts.length === 0 ? 0 : 1;
