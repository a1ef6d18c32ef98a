import { describe, expect, it } from 'vitest';
import { temperature } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { iso24817, type RuleSet } from '../../../src/rules/index.js';
import { partWall } from '../example-case.js';

/** The list of rules that a design stands on. */

const { minimum } = iso24817.overlap;
const rulesOf = (changes: Partial<RepairCase>, rules?: RuleSet) =>
  designRepair({ ...partWall, ...changes }, { rules }).rules;
const leastOverlap = (...asked: Parameters<typeof rulesOf>) =>
  rulesOf(...asked).find(({ name }) => name === 'least overlap');

describe('a rule that a design used', () => {
  it('is listed with its clause and its evidence, and with nothing that it has not', () => {
    const { clause, evidence } = minimum;
    expect(leastOverlap({})).toStrictEqual({ name: 'least overlap', clause, tag: evidence.tag });
  });

  it('is listed with another route that reproduces it', () => {
    const evidence = { tag: 'recalled', derived: 'count of the test' } as const;
    const rules = { ...iso24817, overlap: { ...iso24817.overlap, minimum: { ...minimum, evidence } } };
    expect(leastOverlap({}, rules)).toMatchObject({ derived: 'count of the test' });
  });

  it('is listed with how many of its numbers the case confirms', () => {
    const confirmed = [
      { path: 'overlap.minimum', value: minimum.value as number, by: 'A. Reader', edition: '2017' },
      { path: 'defaultStrains.continuous.3[2].hoop', value: 0.002, by: 'A. Reader', edition: '2017' },
    ];
    const used = rulesOf({ confirmed }).flatMap((each) =>
      each.confirmed === undefined ? [] : [[each.confirmed.values.map(({ path }) => path), each.confirmed.of]],
    );
    // Three rows of a life and three strains.
    expect(used).toContainEqual([['defaultStrains.continuous.3[2].hoop'], 12]);
    expect(used).toContainEqual([['overlap.minimum'], 1]);
    expect(used).toHaveLength(2);
  });

  it('is listed once, as it was first called', () => {
    const laminate = { ...partWall.laminate, wetGlassTransition: temperature.degC(100) };
    const margins = rulesOf({ laminate }).filter(
      ({ clause }) => clause === iso24817.temperatureMargin.glassTransition.notLeaking.clause,
    );
    expect(margins.map(({ name }) => name)).toEqual(['margin to the glass transition temperature']);
  });
});
