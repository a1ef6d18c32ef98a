import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contents } from '../../docs/contents.js';
import * as root from '../../src/index.js';
import { formulas } from '../../src/registry/index.js';

const written = readFileSync(new URL('../../src/index.ts', import.meta.url), 'utf8');

describe('src/index.ts', () => {
  it('is what npm run contents would write', () => {
    if (written !== contents())
      expect.fail('src/index.ts is not the table of contents of the rooms: run npm run contents');
  });

  it('exports the function of every formula under its own name', () => {
    const exported = root as Readonly<Record<string, unknown>>;
    const missing = formulas
      .filter(({ compute }) => exported[compute.name] !== compute)
      .map(({ compute }) => compute.name);
    expect(missing, 'run npm run contents').toEqual([]);
  });

  it('exports no declaration', () => {
    const declared = new Set<unknown>(formulas);
    expect(Object.entries(root).filter(([, value]) => declared.has(value))).toEqual([]);
  });
});
