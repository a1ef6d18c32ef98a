import { describe, expect, it } from 'vitest';
import { keysOf } from '../../../src/repair/case/place.js';

describe('the keys of a written place', () => {
  it('are names, and numbers for the rows of a list, which forms lay out by them', () => {
    expect(keysOf('defect.profile[3].depth')).toEqual(['defect', 'profile', 3, 'depth']);
    expect(keysOf('a.2')).toEqual(['a', '2']);
    expect(keysOf('')).toEqual([]);
  });
});
