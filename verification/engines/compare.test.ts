import { describe, expect, it } from 'vitest';
import { engineCalls } from './calls.js';
import { difference } from './compare.js';
import { readEnginesSummary } from './summary.js';

describe('the answers of two engines', () => {
  const calls = [
    { formula: 'pipe/one', input: {} },
    { formula: 'pipe/two', input: {} },
  ];

  it('differ in units in the last place, the largest of each formula', () => {
    const next = 1 + 2 ** -52;
    expect(difference(calls, [[1, 2], [3]], [[next, 2], [3]])).toEqual({
      numbers: 3,
      different: 1,
      otherwise: [],
      byFormula: { 'pipe/one': 1 },
    });
    expect(difference(calls, [[1], [8]], [[1], [8 + 2 ** -47]]).byFormula).toEqual({ 'pipe/two': 4 });
  });

  it('are otherwise where a word, a refusal or a length is not the same', () => {
    expect(difference(calls, [['no-solution'], [1]], [[1], [1, 2]]).otherwise).toEqual(['pipe/one', 'pipe/two']);
  });
});

describe('the committed run of all engines', () => {
  it('made the calls of today, and every engine gave the same words and refusals (else npm run engines)', () => {
    const summary = readEnginesSummary();
    expect(summary?.calls).toBe(engineCalls().length);
    expect(summary?.engines.length).toBe(3);
    for (const { engine, otherwise, numbers } of summary?.engines ?? []) {
      expect(otherwise, engine).toEqual([]);
      expect(numbers).toBeGreaterThan(1000);
    }
  });
});
