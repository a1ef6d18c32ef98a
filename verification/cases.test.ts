import { describe, expect, it } from 'vitest';
import { readCases, repeatedIds, resultText, runCases } from './runner/run.js';

/** Every printed value in verification/cases/ against what the library computes. */

const readings = readCases();
const results = runCases(readings);

describe('the case records', () => {
  it.each(readings.map((reading) => [reading.file, reading] as const))('in %s have their form', (_, { problem }) => {
    if (problem !== undefined) expect.fail(problem);
  });

  it('exist, and no id stands on two of them', () => {
    expect(results.length).toBeGreaterThan(0);
    expect(repeatedIds(readings)).toEqual([]);
  });
});

describe.each(readings.filter(({ records }) => records.length > 0).map(({ file }) => file))('%s', (file) => {
  const ofFile = results.filter((result) => result.file === file);
  it.each(ofFile.map((result) => [result.record.id, result.record.formula, result] as const))(
    '%s: %s',
    (_, __, result) => {
      if (result.verdict === 'fails') expect.fail(resultText(result));
      expect(result.faults).toEqual([]);
    },
  );
});
