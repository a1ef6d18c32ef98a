import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as quantity from '../../src/quantity/index.js';

const page = readFileSync(new URL('../../docs/quantities.md', import.meta.url), 'utf8');
const rows = [...page.matchAll(/^\| `(\w+)` +\| `[\w/-]+` +\| (.*?) +\|$/gmu)];

describe('the list of kinds in docs/quantities.md', () => {
  it('names every namespace', () => {
    const { units: _, ...rest } = quantity;
    const spaces = Object.entries(rest).filter(([, value]) => typeof value === 'object');
    expect(rows.map(([, name]) => name)).toEqual(spaces.map(([name]) => name).sort());
  });

  it.each(rows.map(([, name = '', members = '']) => [name, members]))('says the units of %s', (name, members) => {
    const space = (quantity as unknown as Readonly<Record<string, object>>)[name] ?? {};
    const constructors = Object.keys(space).filter((member) => !/^in[A-Z]/u.test(member));
    expect(members.replaceAll('`', '').split(' ').sort()).toEqual(constructors.sort());
  });
});
