import { writeFileSync } from 'node:fs';
import { formulas } from '../../src/registry/index.js';
import { allConstants } from './bundle.js';
import { changedSince, readSummary, summaryPath, summaryText } from './summary.js';

/**
 * `npm run perturb:since` writes into the summary whose constants have changed since the run that it is of, so that the report
 * names them. It stands in for `npm run perturb`, which takes an hour, and never for long.
 */
const summary = readSummary();
const since = changedSince(
  summary,
  allConstants(),
  formulas.map(({ id }) => id),
);
writeFileSync(summaryPath, summaryText({ ...summary, since }));
console.log(since.length === 0 ? 'nothing has changed since the run' : `changed since the run: ${since.join(', ')}`);
