import { describe, expect, it } from 'vitest';
import { designRepair, type RepairCase, type ThicknessMethod } from '../../../src/repair/index.js';
import { wholeCase } from '../../../verification/laws/whole-case.js';
import { seeded } from '../../../verification/oracles/random.js';
import { laminateOf } from '../../faults/answers.js';
import { bend } from '../../faults/cases.js';

/** What stands beside the chosen method is what the other methods would have asked for. */

const METHODS: readonly ThicknessMethod[] = [
  'substrate ignored',
  'substrate sharing load',
  'substrate yielded',
  'long-term strength',
];
const ON_METAL: readonly ThicknessMethod[] = ['substrate sharing load', 'substrate yielded'];

/** These hold whatever the method. */
const OVER_A_LEAK: readonly string[] = ['leak through the hole', 'size of the hole'];

const by = (repairCase: RepairCase, method: ThicknessMethod): RepairCase => ({
  ...repairCase,
  repair: { ...repairCase.repair, method },
});

const drawn = () =>
  Array.from({ length: 24 }, (_, draw) => designRepair(wholeCase(seeded('alternatives', draw)))).flatMap(
    ({ laminate, found, case: repairCase }) =>
      laminate === undefined || found === undefined ? [] : [{ laminate, found, repairCase }],
  );

describe('the alternatives to a thickness', () => {
  it('are every other method with what a design by it asks for, and the two lines that would save plies', () => {
    let [same, leaks] = [0, 0];
    const made = drawn();
    for (const { laminate, found, repairCase } of made) {
      const others = METHODS.filter((method) => method !== laminate.method);
      const criteria = laminate.alternatives.map(({ criterion }) => criterion);
      expect(criteria.slice(0, others.length).toSorted()).toEqual(others.toSorted());
      expect(criteria.slice(others.length)).toEqual([
        expect.stringMatching(/with relief by the end load$/u),
        expect.stringMatching(/with credit for pressure during application$/u),
      ]);
      for (const method of others) {
        const alternative = laminate.alternatives.find(({ criterion }) => criterion === method);
        if (found.throughWall && ON_METAL.includes(method)) {
          expect(alternative).toMatchObject({ needs: { text: expect.stringContaining('goes through the wall') } });
          leaks += 1;
          continue;
        }
        const other = designRepair(by(repairCase, method)).laminate;
        if (other === undefined) continue;
        const asked = other.thickness.candidates.filter(({ criterion }) => !OVER_A_LEAK.includes(criterion));
        expect(alternative).toEqual({ criterion: method, value: Math.max(...asked.map(({ value }) => value)) });
        same += 1;
      }
    }
    expect(made.length).toBeGreaterThan(14);
    expect(same).toBeGreaterThan(20);
    expect(leaks).toBeGreaterThan(5);
  });

  it('are none on a fitting: they are thicknesses of straight pipe', () => {
    expect(laminateOf(bend).alternatives).toEqual([]);
  });

  it('say what they lack where the case does not give it', () => {
    const [first] = drawn().filter(
      ({ laminate, found }) => laminate.method === 'substrate ignored' && !found.throughWall,
    );
    if (first === undefined) throw new Error('no such design was drawn');
    const { longTermStrength: _, ...plain } = first.repairCase.laminate;
    const { laminate } = designRepair({ ...first.repairCase, laminate: plain });
    expect(laminate?.alternatives).toContainEqual({
      criterion: 'long-term strength',
      needs: { text: 'the long-term strength of the laminate' },
    });
  });
});
