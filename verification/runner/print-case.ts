import { caseInFull } from './one.js';
import { readCases } from './run.js';

/** `npm run case -- ID`: one case in full. */

const all = readCases().flatMap(({ file, records }) => records.map((record) => ({ file, record })));
const ids = process.argv.slice(2);
const found = all.filter(({ record }) => ids.includes(record.id));
const missing = ids.filter((id) => !found.some(({ record }) => record.id === id));
for (const { file, record } of found) console.log(caseInFull(record, file));
if (ids.length === 0) console.error('npm run case -- ID prints a case in full; the report lists the ids.');
for (const id of missing) {
  const near = all
    .map(({ record }) => record.id)
    .filter((each) => each.toLowerCase().startsWith(id.toLowerCase().slice(0, 4)));
  console.error(
    `There is no case ${id}${near.length === 0 ? '.' : `; those that begin alike: ${near.slice(0, 12).join(', ')}.`}`,
  );
}
process.exitCode = ids.length === 0 || missing.length > 0 ? 2 : 0;
