import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contents, rooms } from '../../docs/contents.js';
import * as root from '../../src/index.js';
import { formulas } from '../../src/registry/index.js';

type Entry = Readonly<Record<string, unknown>>;

const entryOf = Object.fromEntries(
  await Promise.all(
    Object.keys(rooms).map(async (room) => [room, (await import(`../../src/${room}.ts`)) as Entry] as const),
  ),
);
const roomOf = (id: string): string => id.split('/')[0] ?? '';

describe('the entries of the package', () => {
  it.each([...contents()])('%s is what npm run contents would write', (file, text) => {
    const written = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
    if (written !== text) expect.fail(`${file} is out of step with the rooms: run npm run contents`);
  });

  it('of the rooms export the function of every formula under its own name', () => {
    const missing = formulas
      .filter(({ id, compute }) => entryOf[roomOf(id)]?.[compute.name] !== compute)
      .map(({ compute }) => compute.name);
    expect(missing, 'run npm run contents').toEqual([]);
  });

  it('export no declaration', () => {
    const declared = new Set<unknown>(formulas);
    const exported = [root as Entry, ...Object.values(entryOf)].flatMap((entry) => Object.entries(entry));
    expect(exported.length).toBeGreaterThan(300);
    expect(exported.filter(([, value]) => declared.has(value))).toEqual([]);
  });

  it('at the root hold no formula: each stands in its room', () => {
    const functions = new Set<unknown>(formulas.map(({ compute }) => compute));
    expect(Object.entries(root).filter(([, value]) => functions.has(value))).toEqual([]);
  });
});
