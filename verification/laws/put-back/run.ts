import { writeFileSync } from 'node:fs';
import { faults } from './faults.js';
import { putBackMachine } from './machine.js';
import { readSeen, seenPath } from './seen.js';
import { unseen } from './unseen.js';

/**
 * `npm run laws:faults` puts each fault back alone, draws cases until its law goes red, and writes in which draw that was;
 * `npm run laws:faults -- WORD` only those whose words hold that one.
 */
const DRAWS = 6000;
const [word] = process.argv.slice(2);

const machine = await putBackMachine(faults);
const before = readSeen();
const seen: Record<string, number> = {};
let missed = 0;
for (const fault of faults) {
  if (word !== undefined && !fault.did.includes(word)) continue;
  const draw = machine.firstSeen(fault, DRAWS);
  if (draw === undefined) missed += 1;
  else seen[fault.did] = draw;
  console.log(`${draw === undefined ? 'UNSEEN' : `draw ${draw}`}\t${fault.law}\t${fault.did}`);
}
for (const { did, because } of unseen) console.log(`no law\t\t${did}: ${because}`);
// What was not asked now stays as it was found before.
for (const { did } of faults) {
  const known = before[did];
  if (word !== undefined && seen[did] === undefined && known !== undefined) seen[did] = known;
}
writeFileSync(seenPath, `${JSON.stringify(seen, undefined, 2)}\n`);
if (missed > 0) process.exitCode = 1;
