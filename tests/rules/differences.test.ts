import { describe, expect, it } from 'vitest';
import {
  asmePcc2,
  coefficientsOf,
  confirmedRules,
  differencesFrom,
  iso24817,
  type RuleSet,
} from '../../src/rules/index.js';

const found = (set: RuleSet, other: RuleSet = iso24817) =>
  differencesFrom(other, set).map(({ path, value, instead, lessConservative }) => [
    path,
    value,
    instead,
    lessConservative,
  ]);

describe('what differs between two rule sets', () => {
  it('is nothing between a set and its copy, whatever they are called', () => {
    expect(found({ ...structuredClone(iso24817), id: 'ours', heading: 'ours' })).toEqual([]);
  });

  it('is every number that can be confirmed, judged as a confirmed one is', () => {
    const by = { by: 'A. Reader', edition: '2017' };
    for (const [path, { value }] of coefficientsOf(asmePcc2)) {
      if (path.endsWith('Plies') || value === 0) continue;
      const set = confirmedRules(asmePcc2, [{ path, value: value * 0.9999, ...by }]);
      const [said] = Object.values(coefficientsOf(set).get(path)?.rule.confirmed ?? []);
      expect(found(set, asmePcc2)).toEqual([[path, value * 0.9999, value, said?.lessConservative]]);
    }
  });

  it('is a limit that is left out, a rule that falls away, an option that appears and a class that covers more', () => {
    const { classes, overlap, leakFactorOption } = iso24817;
    const wide = { ...classes[1].value, highestPressure: null, gasOrHazard: true };
    expect(found({ ...iso24817, classes: { ...classes, 1: { ...classes[1], value: wide } } })).toEqual([
      ['classes.1.highestPressure', null, 1e6, true],
      ['classes.1.gasOrHazard', true, false, true],
    ]);
    expect(found({ ...iso24817, overlap: { ...overlap, hole: { ...overlap.hole, value: null } } })).toEqual([
      ['overlap.hole', null, true, true],
    ]);
    const option = { ...leakFactorOption[1], value: { firstYear: 0.9, decay: 0 } };
    expect(found({ ...iso24817, leakFactorOption: { ...leakFactorOption, 1: option } })).toEqual([
      ['leakFactorOption.1', true, null, true],
    ]);
  });

  it('is a smaller unit of temperature, and a table with other rows', () => {
    const factor = { ...iso24817.temperatureFactor, value: { ...iso24817.temperatureFactor.value, unit: 5 / 9 } };
    expect(found({ ...iso24817, temperatureFactor: factor } as RuleSet)).toEqual([
      ['temperatureFactor.unit', 5 / 9, 1, true],
    ]);
    const rule = iso24817.defaultStrains.continuous[3];
    const continuous = { ...iso24817.defaultStrains.continuous, 3: { ...rule, value: rule.value.slice(0, 2) } };
    const cut = { ...iso24817, defaultStrains: { ...iso24817.defaultStrains, continuous } };
    expect(found(cut)).toEqual([['defaultStrains.continuous.3', 2, 3, true]]);
  });
});
