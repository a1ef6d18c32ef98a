import { writeFileSync } from 'node:fs';
import { measureHandChecks } from './measure.js';
import { handCheckSummaryPath } from './summary.js';

/** `npm run hand-check`: how often the check of a hand calculation names the slip that was made, and one that was not. */

const counts = measureHandChecks(8);
writeFileSync(handCheckSummaryPath, `${JSON.stringify(counts, undefined, 2)}\n`);
console.table(counts);
