import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { withPaths } from '../../faults/cases.js';
import { partWall } from '../example-case.js';

describe('a text that names nothing', () => {
  const isAsked = (name: string): boolean =>
    designRepair(withPaths(partWall, { 'pipe.material.name': name })).missing.some(
      ({ field, why }) => field === 'pipe.material.name' && why.startsWith(`"${name}" names no material`),
    );

  it.each([
    'Nobody',
    'undecided',
    'see above',
    'kein',
    'aucune',
    'verbal',
    'Oral',
    'by mouth',
    'word of mouth',
    'notapplicable',
    'nottested',
    'illegible',
    'by phone',
    'waived',
    'a guess',
  ])('is asked about: %s', (name) => {
    expect(isAsked(name)).toBe(true);
  });

  it('is none where it names a steel', () => {
    expect(isAsked('carbon steel')).toBe(false);
  });
});
