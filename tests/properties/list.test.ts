import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import listed from '../../verification/properties.json' with { type: 'json' };
import { properties } from '../../verification/report/properties.js';

/** verification/properties.json says of what sort a property is; here it is held to the tests that it names. */

const root = new URL('../../', import.meta.url);
const inTests = new Map(properties().map((row) => [`${row.file}: ${row.sentence}`, row]));

/** A property over drawn inputs has the name of the formula in its seed, a property of fast-check a number. */
function problemOf({ file, sentence, runs, seed }: (typeof listed)[number]): string | undefined {
  if (typeof seed === 'number') {
    const found = inTests.get(`${file}: ${sentence}`);
    if (found === undefined) return `${file} has no property "${sentence}"`;
    const [says, has] = [`${runs} runs from seed ${seed}`, `${found.runs} runs from seed ${found.seed}`];
    return says === has ? undefined : `${file}, "${sentence}": the list says ${says}, the test ${has}`;
  }
  const text = readFileSync(new URL(file, root), 'utf8');
  const parts = [...sentence.split(': '), `wanted: ${runs},`, `seeded(\`${seed}\`)`];
  const missing = parts.filter((part) => !text.includes(part));
  return missing.length === 0 ? undefined : `${file} lacks ${missing.join(' and ')}`;
}

describe('the list of properties', () => {
  it('names tests that are there, with their runs and their seed', () => {
    expect(listed.map(problemOf).filter((problem) => problem !== undefined)).toEqual([]);
  });

  it('has each sort, and no property twice', () => {
    const sorts = ['homogeneity', 'round trip', 'limit', 'monotonicity', 'refusal'];
    expect([...new Set(listed.map(({ sort }) => sort))]).toEqual(sorts);
    const names = listed.map(({ file, sentence, runs }) => `${file}: ${sentence}, ${runs}`);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  it('names every property of this folder', () => {
    const here = [...inTests.values()].filter(({ file }) => file.startsWith('tests/properties/'));
    const names = listed.map(({ file, sentence }) => `${file}: ${sentence}`);
    expect(here.map(({ file, sentence }) => `${file}: ${sentence}`).filter((name) => !names.includes(name))).toEqual(
      [],
    );
  });
});
