import { describe, expect, it } from 'vitest';
import { length, temperature } from '../../src/quantity/index.js';
import { designRepair, laidInCase, type RepairCase } from '../../src/repair/index.js';
import { iso24817 } from '../../src/rules/index.js';
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

  it('resists by the rule set of its design', () => {
    // Any hole counts as one of 20 mm, in place of 15.
    const leastDiameter = { ...iso24817.hole.leastDiameter, value: length.mm(20) };
    const rules = { ...iso24817, hole: { ...iso24817.hole, leastDiameter } };
    const own = designRepair(leaking, { rules });
    if (own.verdict !== 'designed') throw new Error(own.verdict);
    expect(laidInCase(own, leaking).resistance).toEqual(own.laminate.resistance);
  });

  it('resists nothing that is known where it is too hot, and says so once', () => {
    const designTemperature = temperature.degC(200);
    const hot = laidInCase(design, { ...leaking, service: { ...leaking.service, designTemperature } });
    expect(hot).toEqual({
      pressure: leaking.service.designPressure,
      reasons: [expect.objectContaining({ found: expect.objectContaining({ value: designTemperature }) })],
    });
  });

  it('resists nothing that is known over a hole that no equation reaches, and says why', () => {
    const unknown = over(length.mm(100));
    expect(unknown).not.toHaveProperty('resistance');
    expect(unknown.reasons).toMatchObject([{ found: { kind: 'length', value: expect.any(Number) } }]);
    expect(unknown.reasons[0]?.found?.value).toBeGreaterThan(unknown.reasons[0]?.limit?.value ?? Number.NaN);
  });
});
