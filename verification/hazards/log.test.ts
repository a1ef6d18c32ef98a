import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { hazardLog } from './log.js';
import { hazardPage } from './page.js';
import { type Asked, allGuards, switchedTests } from './switched.js';

/** The hazard log is executed: each guard is switched off in turn, and a test that its row names goes red. */

const guards = allGuards();
const known = guards.map(({ key }) => key);
/** A row writes a key in full, or as much of its beginning as no other guard has. */
const keyOf = (written: string): string => {
  const found = known.includes(written) ? [written] : known.filter((key) => key.startsWith(written));
  const [only, another] = found;
  return only !== undefined && another === undefined ? only : `${written}: ${found.length} guards begin so`;
};
const rows = hazardLog
  .flatMap(({ hazards }) => hazards)
  .map((hazard) => ({ ...hazard, guards: hazard.guards.map(keyOf) }));
const named = new Set(rows.flatMap(({ tests }) => tests));
const nameOf = ({ file, name }: Pick<Asked, 'file' | 'name'>): string => `${file}: ${name}`;

let asked: readonly Asked[] = [];
beforeAll(async () => {
  const files = [...new Set([...named].map((test) => test.slice(0, test.indexOf(': '))))];
  asked = await switchedTests(guards, files, (file, name) => named.has(nameOf({ file, name })));
}, 60_000);

describe('the hazard log', () => {
  it('has each guard of the job in one row', () => {
    const logged = rows.flatMap((row) => row.guards);
    expect({
      without: known.filter((key) => !logged.includes(key)),
      unknown: logged.filter((key) => !known.includes(key)),
      twice: logged.filter((key, index) => logged.indexOf(key) !== index),
    }).toEqual({ without: [], unknown: [], twice: [] });
  });

  it('names tests that there are and that hold', () => {
    const held = new Set(asked.map(nameOf));
    expect([...named].filter((test) => !held.has(test))).toEqual([]);
  });

  it('goes red row by row when a guard is switched off', () => {
    const survivors = rows.flatMap((row) =>
      row.guards.filter((key) => {
        const guard = guards.findIndex((each) => each.key === key);
        return asked.filter((test) => row.tests.includes(nameOf(test))).every((test) => test.holdsWithout(guard));
      }),
    );
    expect(survivors).toEqual([]);
  });

  it('says of each hazard what it would do, and of each test which guard it shows', () => {
    for (const { could, would, guards: own, tests } of rows) {
      expect(
        [could.length, would.length, own.length, tests.length].every((length) => length > 0),
        could,
      ).toBe(true);
    }
  });

  it('is the page of the documentation: npm run hazards', () => {
    expect(readFileSync(new URL('../../docs/hazards.md', import.meta.url), 'utf8')).toBe(hazardPage());
  });
});
