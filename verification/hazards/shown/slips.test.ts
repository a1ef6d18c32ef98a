import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { caseOf, designOf, verdictOf } from '../../../tests/faults/answers.js';
import { loss, type Paths, withPaths } from '../../../tests/faults/cases.js';

/** Numbers that may be right and are more often a slip, and cases that come by no JSON door. */

const slips: readonly (readonly [what: string, field: string, changes: Paths, value: number])[] = [
  ['joule for kilojoule', 'laminate.cure.activationEnergy', { 'laminate.cure.activationEnergy': '55 J/mol' }, 55],
  [
    'a radius for a diameter',
    'pipe.outsideDiameter',
    { 'pipe.outsideDiameter': '84.1 mm', 'defect.circumferentialWidth': '40 mm' },
    0.0841,
  ],
  [
    'a diameter for a circumference',
    'pipe.circumference',
    {
      'pipe.outsideDiameter': undefined,
      'pipe.circumference': '168.3 mm',
      'defect.circumferentialWidth': '40 mm',
      'wrap.width': '50 mm',
    },
    0.1683,
  ],
  ['newton metre for kilonewton metre', 'loads.bendingMoment', { 'loads.bendingMoment': '18 N m' }, 18],
  ['newton for kilonewton', 'loads.axialForce', { 'loads.axialForce': '40 N' }, 40],
  ['hardener for base', 'resin.parts.hardener', { 'resin.parts': { base: 30, hardener: 100 } }, 100],
  [
    'ground water for cover',
    'loads.soil.waterAbove',
    {
      'loads.soil': { cover: '0.4 m', density: '2000 kg/m3', waterAbove: '1.4 m', traffic: 'none' },
      'pipe.cathodicProtection': 'none',
    },
    1.4,
  ],
  ['hardener for base of the filler', 'filler.parts.hardener', { 'filler.parts': { base: 25, hardener: 100 } }, 100],
];

/** The field that a case is refused for; nothing where it is let in. */
function refusedFor(repairCase: RepairCase, strict = false): string | undefined {
  try {
    designRepair(repairCase, { strict });
    return undefined;
  } catch (error) {
    if (!isCalculationError(error) || error.code !== 'invalid-input') throw error;
    return error.parameter;
  }
}

describe('a slip, warned of by its field and value', () => {
  for (const [what, field, changes, value] of slips) {
    it(what, () => {
      const warned = (paths: Paths) => designOf(withPaths(loss, paths)).warnings.filter((each) => each.field === field);
      expect(warned({})).toEqual([]);
      const [first] = warned(changes);
      expect(first?.amounts?.[0]?.value).toBeCloseTo(value, 9);
      expect(verdictOf(withPaths(loss, changes))).toBe('designed');
    });
  }
});

describe('a slip, refused where a case is held strictly', () => {
  for (const [what, field, changes] of slips) {
    it(what, () => {
      const slipped = caseOf(withPaths(loss, changes));
      expect([refusedFor(caseOf(loss), true), refusedFor(slipped), refusedFor(slipped, true)]).toEqual([
        undefined,
        undefined,
        field,
      ]);
    });
  }
});

const typed: readonly (readonly [what: string, field: string, value: unknown])[] = [
  ['a field that is missing', 'service.designPressure', undefined],
  ['a field that nobody knows', 'service.designPresure', 40e5],
  ['a number that is text', 'service.designPressure', '40'],
  ['a number that is none', 'defect.remainingWall', Number.NaN],
  ['a number that can never be right', 'laminate.plyThickness', -1],
  ['two fields that contradict each other', 'defect.remainingWall', 0.01],
];

describe('a case that a program makes', () => {
  for (const [what, field, value] of typed) {
    it(what, () => {
      const sound = caseOf(loss);
      expect([refusedFor(sound), refusedFor(withPaths(sound, { [field]: value }))]).toEqual([undefined, field]);
    });
  }
});
