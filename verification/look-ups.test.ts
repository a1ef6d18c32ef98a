import { expect, it } from 'vitest';
import { readLookUps } from './look-ups.js';
import { readCases } from './runner/run.js';

const lookUps = readLookUps();
const ids = new Set(readCases().flatMap(({ records }) => records.map(({ id }) => id)));

it('names only cases that exist', () => {
  const named = lookUps.flatMap(({ cases = [] }) => cases);
  expect(named.length).toBeGreaterThan(0);
  expect(named.filter((id) => !ids.has(id))).toEqual([]);
});

it('has no look-up twice', () => {
  const asked = lookUps.map(({ words, corpus }) => `${corpus}: ${words}`);
  expect(asked.filter((each, index) => asked.indexOf(each) !== index)).toEqual([]);
});
