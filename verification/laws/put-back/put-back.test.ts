import { describe, expect, it } from 'vitest';
import { faults } from './faults.js';
import { putBackMachine } from './machine.js';
import { readSeen } from './seen.js';

/** Each fault that the library once had turns its law red where it is put back: in the draw that `npm run laws:faults` found. */

const seen = readSeen();
const machine = await putBackMachine(faults);

describe('a fault that is put back', () => {
  it.each(faults.map((fault) => [fault.did, fault] as const))('turns a law red: %s', (did, fault) => {
    expect(machine.sees(fault, seen[did] ?? -1)).toBe(true);
  });

  it('is listed once, and its draw with it', () => {
    expect(Object.keys(seen).toSorted()).toEqual(faults.map(({ did }) => did).toSorted());
  });
});

describe('the library as it stands', () => {
  it('breaks none of these laws in the same draws', () => {
    for (const fault of faults) expect(machine.breaks(fault, seen[fault.did] ?? -1), fault.did).toBe(false);
  });
});
