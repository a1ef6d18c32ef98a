import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ComparedOutcome, compareBases, outcomeOf } from '../../src/compare/index.js';
import { energyReleaseRate, gauge, length, strain, temperature, time } from '../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../src/repair/index.js';
import { comparisonSheet } from '../../src/report/index.js';
import { asmePcc2, differingGroups, iso24817, withGroups } from '../../src/rules/index.js';
import { leaking, partWall } from '../repair/example-case.js';

const rowOf = (repairCase: RepairCase, name: ComparedOutcome['name']): ComparedOutcome | undefined =>
  compareBases(repairCase).outcomes.find((each) => each.name === name);

/** So weak a bond that the leak governs, on a line that class 1 covers. */
const short: RepairCase = {
  ...leaking,
  service: { ...leaking.service, designPressure: gauge.MPa(0.6), designTemperature: temperature.degC(35) },
  laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(6) },
  repair: { ...leaking.repair, class: 1, life: time.year(2) },
};

describe('two rule sets side by side', () => {
  it('give the very designs of either basis', () => {
    const { designs } = compareBases(leaking);
    const alone = (['ISO 24817', 'ASME PCC-2'] as const).map((basis) => designRepair({ ...leaking, basis }));
    expect(designs.map(({ laminate, ruleSet }) => [laminate, ruleSet])).toEqual(
      alone.map(({ laminate, ruleSet }) => [laminate, ruleSet]),
    );
  });

  it('name the strains where nothing but the strain of a short life is another', () => {
    const repairCase: RepairCase = { ...partWall, repair: { ...partWall.repair, life: time.year(2) } };
    const row = rowOf(repairCase, 'thickness');
    expect(row?.madeBy).toEqual(['defaultStrains.continuous']);
    expect(row?.movedBy).toEqual([{ group: 'defaultStrains.continuous', to: row?.second }]);
    expect(Number(row?.second)).toBeGreaterThan(Number(row?.first));
  });

  it('name the leak factor where a leak of class 1 is sized', () => {
    expect(rowOf({ ...short, basis: 'ISO 24817' }, 'thickness')?.madeBy).toContain('leakFactor');
  });

  it('name what makes the whole difference: with all of it taken over nothing is left, without any one something is', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(partWall, leaking, short),
        fc.constantFrom<1 | 2 | 3>(1, 2, 3),
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom<'ISO 24817' | 'ASME PCC-2'>('ISO 24817', 'ASME PCC-2'),
        (base, repairClass, years, basis) => {
          const repairCase = { ...base, basis, repair: { ...base.repair, class: repairClass, life: time.year(years) } };
          const [first, second] = basis === 'ISO 24817' ? [iso24817, asmePcc2] : [asmePcc2, iso24817];
          for (const { name, first: one, second: other, madeBy } of compareBases(repairCase).outcomes) {
            expect(madeBy.length > 0, name).toBe(one !== other);
            if (name === 'verdict' || madeBy.length === 0) continue;
            const by = (groups: readonly string[]) => {
              const rules = withGroups(first, second, new Set(groups));
              return outcomeOf(designRepair(repairCase, { rules }), name).value;
            };
            expect(by(madeBy), name).toBe(other);
            for (const group of madeBy) expect(by(madeBy.filter((each) => each !== group)), name).not.toBe(other);
          }
        },
      ),
      { seed: 20261125, numRuns: 8 },
    );
  }, 60_000);

  it('see a group that the user has made another, and what it makes', () => {
    const confirmed = [{ path: 'overlap.minimum', value: length.mm(500), by: 'A. Reader', edition: '2017' }];
    const compared = compareBases({ ...partWall, confirmed });
    expect(compared.confirmedFor).toBe('ISO 24817');
    const overlap = compared.outcomes.find(({ name }) => name === 'overlap');
    expect(overlap?.first).toBe(length.mm(500));
    expect(overlap?.madeBy).toContain('overlap.minimum');
    expect(compared.designs[1].rules.every((rule) => rule.confirmed === undefined)).toBe(true);
  });

  it('take the verdict as one of the outcomes', () => {
    const hot: RepairCase = {
      ...partWall,
      service: { ...partWall.service, designPressure: gauge.MPa(2.5) },
      repair: { ...partWall.repair, class: 1 },
    };
    const row = rowOf(hot, 'verdict');
    expect([row?.first, row?.second]).toEqual(['not repairable', 'designed']);
    expect(row?.madeBy).toEqual(['classes']);
  });

  it('differ in groups that both have, and in none from themselves', () => {
    expect(differingGroups(iso24817, iso24817)).toEqual([]);
    expect(differingGroups(iso24817, asmePcc2)).toEqual(differingGroups(asmePcc2, iso24817));
    const own = { ...iso24817, leastFailureStrain: { ...iso24817.leastFailureStrain, value: strain.percent(2) } };
    expect(differingGroups(iso24817, own)).toEqual(['leastFailureStrain']);
  });

  it('stand on a sheet with both values, the rule and its clauses', () => {
    const text = comparisonSheet(compareBases({ ...short, basis: 'ISO 24817' }));
    expect(text).toContain('leak factor');
    expect(text).toContain('7.5.7, f_leak, class 1');
    expect(text).toMatch(/leakFactor\.1\.firstYear +0\.83 +0\.333/u);
    expect(text).not.toContain('leakFactor.2');
    expect(comparisonSheet(compareBases(partWall), { format: 'markdown', units: 'us' })).toContain('| thickness |');
  });
});
