import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { type CaseIssue, isCaseError } from '../../../src/json/index.js';
import { length } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { caseOf, designOf } from '../../faults/answers.js';
import { type CaseFile, leak, loss, type Paths, slot, withPaths } from '../../faults/cases.js';
import { partWall } from '../example-case.js';

/** What a door that refuses a case says of it: the field, what stands there, and what would pass. */

function refusalOf(changes: Paths) {
  try {
    designRepair(withPaths(partWall, changes));
  } catch (error) {
    if (isCalculationError(error)) return error;
  }
  throw new Error('the case was let in');
}

function issuesOf(file: CaseFile): readonly CaseIssue[] {
  try {
    designOf(file);
  } catch (error) {
    if (isCaseError(error)) return error.issues;
  }
  return [];
}

describe('the typed door', () => {
  it.each<[string, unknown, unknown]>([
    ['service.designPressure', -1, -1],
    ['service.designPressure', '4 MPa', '"4 MPa"'],
    ['defect.kind', 5, 5],
    ['defect.kind', 'Crack', '"Crack"'],
    ['service.safetyCritical', null, null],
    ['pipe.material', [], 'a list'],
  ])('hands back what stands at %s, a number as a number: %j', (path, value, shown) => {
    expect(refusalOf({ [path]: value })).toMatchObject({ parameter: path, value: shown });
  });

  it('hands back the field of two that clash, with its value and its unit', () => {
    const { parameter, value, unit } = refusalOf({ 'defect.remainingWall': length.mm(9) });
    expect([parameter, value, unit]).toEqual(['defect.remainingWall', length.mm(9), 'm']);
    const opening = refusalOf({ 'defect.kind': 'through-wall hole', 'defect.holeDiameter': length.mm(150) });
    expect([opening.parameter, opening.value]).toEqual(['defect.holeDiameter', length.mm(150)]);
  });
});

describe('a block that is none', () => {
  it.each(['laminate', 'defect', 'service', 'pipe', 'repair', 'loads', 'site'])(
    'is told what it must hold, and that alone: %s',
    (path) => {
      const missing = issuesOf(withPaths(loss, { [path]: {} })).map((issue) => issue.path.slice(path.length + 1));
      const [issue] = issuesOf(withPaths(loss, { [path]: 5 }));
      expect(missing.length).toBeGreaterThan(0);
      expect(issue?.expected.replace('an object with ', '').split(', ')).toEqual(missing);
    },
  );
});

describe('the diameter of a hole', () => {
  const across: Paths = { 'defect.holeDiameter': '5 mm' };
  const refused = (file: CaseFile) =>
    issuesOf(withPaths(file, across)).find(({ path }) => path === 'defect.holeDiameter')?.expected ?? '';

  it('is let in for a hole alone; of a slot and of a wall loss it goes elsewhere, where it is let in', () => {
    expect(caseOf(withPaths(leak, across)).defect.holeDiameter).toBe(0.005);
    expect(refused(slot)).toContain('goes into defect.slot');
    expect(refused(slot)).not.toContain('defect.holeAtEndOfLife');
    expect(refused(loss)).toContain('goes into defect.holeAtEndOfLife');
    expect(caseOf(withPaths(loss, { 'defect.holeAtEndOfLife': '5 mm' })).defect.holeAtEndOfLife).toBe(0.005);
    expect(issuesOf(withPaths(slot, { 'defect.holeAtEndOfLife': '5 mm' })).map(({ path }) => path)).toEqual([
      'defect.holeAtEndOfLife',
    ]);
  });
});
