import { describe, expect, test } from 'vitest';
import { compare } from './compare.js';
import { listed } from './listed.js';
import { byLibrary, byNote, type Readings } from './route/open-readings.js';
import { readWholeJobSummary, summaryOf } from './summary.js';
import { type Survey, survey } from './survey.js';

/** Cases of the suite; `npm run whole-job` draws more. */
const CASES = 800;
const EACH = 50;

const parts: Survey[] = [];
const part = (index: number): Survey => survey(index * EACH, EACH);

describe('a whole design computed again from the notes', () => {
  test.each(Array.from({ length: CASES / EACH }, (_, index) => index))(
    'has every number, every word and the verdict of the answer, or says why not: part %i',
    (index) => {
      const found = part(index);
      parts[index] = found;
      expect(found.different).toEqual([]);
      expect(found.refused).toEqual({});
      expect(found.otherVerdicts).toEqual([]);
      expect(found.askedFirst).toEqual([]);
    },
  );

  test('sees designs of both rule sets, both kinds, both forms and every method', () => {
    const all = Array.from({ length: CASES / EACH }, (_, index) => parts[index] ?? part(index));
    const sum = (of: (found: Survey) => number): number => all.reduce((total, found) => total + of(found), 0);
    expect(sum(({ compared }) => compared)).toBeGreaterThan(30_000);
    expect(sum(({ words }) => words)).toBeGreaterThan(10_000);
    const designed = (name: string): number => sum((found) => found.designed[name] ?? 0);
    for (const name of ['ISO 24817', 'ASME PCC-2', 'metal loss', 'through-wall hole', 'tape', 'sheet']) {
      expect(designed(name), name).toBeGreaterThan(5);
    }
    for (const name of ['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength']) {
      expect(designed(name), name).toBeGreaterThan(2);
    }
    for (const name of [
      'through-wall slot',
      'bend',
      'flange',
      'tests of holes',
      'confirmed numbers',
      'neighbouring losses',
      'held line',
    ]) {
      expect(designed(name), name).toBeGreaterThan(1);
    }
    for (const verdict of ['designed', 'needs input', 'not repairable', 'not covered']) {
      expect(
        sum(({ verdicts }) => verdicts[verdict] ?? 0),
        verdict,
      ).toBeGreaterThan(20);
    }
  });

  test('names a word and an answer of yes or no that are other ones', () => {
    const answer = { laminate: { footprint: { under: 'seal' } }, site: { isFrost: false } };
    expect(compare(answer, { laminate: { footprint: { under: 'seal' } }, site: { isFrost: false } }).words).toBe(2);
    expect(compare(answer, { laminate: { footprint: { under: 'hole' } }, site: { isFrost: true } }).different).toEqual([
      'laminate.footprint.under: seal, second route hole',
      'site.isFrost: false, second route true',
    ]);
  });

  test('names a number that is off by one part in a hundred thousand, and one that is not there', () => {
    const answer = { verdict: 'designed', extent: { taper: { value: 0.02, unit: 'm', kind: 'length' }, plies: 5 } };
    expect(compare(answer, { extent: { taper: 0.02 * (1 + 1e-7), plies: 5 } }).different).toEqual([]);
    expect(compare(answer, { extent: { taper: 0.02 * (1 + 1e-5), plies: 5 } }).different).toHaveLength(1);
    expect(compare(answer, { extent: { taper: 0.02 } }).different).toEqual(['extent.plies: 5, second route undefined']);
  });

  test('names a number and a word that the library gives no longer', () => {
    const second = { extent: { taper: 0.02 }, wrap: { form: 'tape' } };
    expect(compare({}, second).different).toEqual([
      'extent.taper: undefined, second route 0.02',
      'wrap.form: undefined, second route tape',
    ]);
    expect(compare({}, second).compared + compare({}, second).words).toBe(2);
  });
});

describe('the summary of the long run', () => {
  const summary = readWholeJobSummary();

  test('has no difference, and readings and reasons of today', () => {
    expect(summary?.cases).toBeGreaterThanOrEqual(1500);
    expect(summary?.different).toBe(0);
    expect(summary?.otherVerdicts).toBe(0);
    expect(summary?.openReadings).toBe(Object.keys(byNote).join(', '));
    expect(summary?.because).toEqual([...new Set(listed.map(({ because }) => because))]);
  });

  test('counts what a survey found', () => {
    const found = survey(7, 1);
    const of = summaryOf(7, found);
    expect([of.numbersCompared, of.wordsCompared, of.cases]).toEqual([found.compared, found.words, 1]);
    expect(found.words).toBeGreaterThan(20);
    expect(of.largestRelativeDifference).toBeLessThan(1e-6);
  });
});

describe('a reading on which note and library disagree', () => {
  // A mend of the library, or of the note, turns its row red: then the reading goes.
  const seeds: Readonly<Record<keyof Readings, number>> = {
    biaxialAtWork: 67,
    shearAtJoints: 1508,
    insideCauses: 64,
  };

  test.each(Object.keys(byNote) as (keyof Readings)[])('%s changes a number of a drawn design', (reading) => {
    const seed = seeds[reading];
    expect(survey(seed, 1, { ...byLibrary, [reading]: 'note' }).different.length).toBeGreaterThan(0);
    expect(survey(seed, 1).different).toEqual([]);
  });
});
