import { describe, expect, it } from 'vitest';
import { parseRuleSet, writeRuleSet } from '../../src/json/index.js';
import { asmePcc2, iso24817 } from '../../src/rules/index.js';

describe('a rule set as JSON', () => {
  it.each([iso24817, asmePcc2])('comes back as it was: $id', (set) => {
    expect(parseRuleSet(writeRuleSet(set))).toEqual(set);
  });

  it('reads a number in the unit in which it is written', () => {
    const own = writeRuleSet(iso24817).replace('"0.015 m"', '"0.6 in"');
    expect(parseRuleSet(own).hole.leastDiameter.value).toBeCloseTo(0.01524, 12);
  });

  it('refuses a number without its unit, and one of another kind, in one answer', () => {
    const own = writeRuleSet(iso24817).replace('"0.015 m"', '15').replace('"0.025 m"', '"25 bar"');
    expect(() => parseRuleSet(own)).toThrow(/rules\.hole\.leastDiameter is 15; expected a length as text with a unit/);
    expect(() => parseRuleSet(own)).toThrow(/rules\.overlap\.leastAvailable/);
  });

  it('refuses a rule that is missing, by its path', () => {
    const { thinLaminateRatio: _, ...rest } = JSON.parse(writeRuleSet(iso24817));
    expect(() => parseRuleSet(JSON.stringify(rest))).toThrow(/thinLaminateRatio/);
  });
});
