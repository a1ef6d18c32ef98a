import { describe, expect, it } from 'vitest';
import { designRepair } from '../../../src/repair/index.js';
import { caseOf, millimetresAsked } from '../../faults/answers.js';
import { evenLoss, type Paths, withPaths } from '../../faults/cases.js';

/** A thickness by the long-term strength: two series of tests, and what static tests say of cycles. */

const by = (changes: Paths) =>
  withPaths(evenLoss, {
    'repair.method': 'long-term strength',
    'service.designTemperature': '45 degC',
    'laminate.longTermStrength': {
      strength: '60 MPa',
      test: '1000 h survival',
      testTemperature: '25 degC',
      second: { testTemperature: '65 degC', strength: '40 MPa' },
    },
    'service.designPressure': '30 bar',
    ...changes,
  });

describe('two series of long-term tests', () => {
  it('say the same in either order', () => {
    const reversed = {
      'laminate.longTermStrength': {
        strength: '40 MPa',
        test: '1000 h survival',
        testTemperature: '65 degC',
        second: { testTemperature: '25 degC', strength: '60 MPa' },
      },
    };
    // 50 MPa half-way: t = (P D/2)/(f s), f = 0.5, 30 bar on 168.3 mm.
    for (const changes of [{}, reversed]) expect(millimetresAsked(by(changes))).toBeCloseTo((1.5 * 168.3) / 25, 2);
  });
});

describe('a long-term strength by static tests', () => {
  it.each([
    ['none', false],
    [{ number: 100_000, lowestPressure: '5 bar', highestPressure: '30 bar' }, true],
  ])('is said to be lowered for cycles where there are any: %j', (cycles, lowers) => {
    const { record = [] } = designRepair(caseOf(by({ 'loads.cycles': cycles })), { record: true });
    const said = record.some((entry) => entry.sort === 'decision' && entry.what.text.includes('by the cyclic factor'));
    expect(said).toBe(lowers);
  });
});
