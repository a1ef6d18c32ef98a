import { describe, expect, it } from 'vitest';
import { length } from '../../src/quantity/index.js';
import { laidInCase, type RepairCase } from '../../src/repair/index.js';
import { designed } from './by-use.js';
import { leaking } from './example-case.js';

/** What the plies of a design resist where the case turns out otherwise. */

describe('a laid laminate', () => {
  const design = designed(leaking);
  const over = (holeDiameter: RepairCase['defect']['holeDiameter']) =>
    laidInCase(design, { ...leaking, defect: { ...leaking.defect, holeDiameter } });

  it('resists in its own case what the design says', () => {
    expect(over(leaking.defect.holeDiameter)).toEqual({
      pressure: leaking.service.designPressure,
      resistance: design.laminate.resistance,
      reasons: [],
    });
  });

  it('resists nothing that is known over a hole that no equation reaches, and says why', () => {
    const unknown = over(length.mm(100));
    expect(unknown).not.toHaveProperty('resistance');
    expect(unknown.reasons).toMatchObject([{ found: { kind: 'length', value: expect.any(Number) } }]);
    expect(unknown.reasons[0]?.found?.value).toBeGreaterThan(unknown.reasons[0]?.limit?.value ?? Number.NaN);
  });
});
