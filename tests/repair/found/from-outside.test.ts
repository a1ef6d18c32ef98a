import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** What presses on the pipe from outside, or pushes it along itself, at the limits of the steel. */

const UNHELD = /^Until the laminate has cured the thinned pipe bears \{0\} from outside/u;

const judged = (changes: Paths) => {
  const { reasons, warnings } = designOf(withPaths(quietLoss, changes));
  return {
    collapses: reasons.filter(({ text }) => text.includes('would collapse under the pressure from outside')),
    buckles: reasons.filter(({ text }) => text.includes('the free span would buckle')),
    unheld: warnings.flatMap(({ text, amounts = [] }) => (UNHELD.test(text) ? amounts.map(({ value }) => value) : [])),
  };
};
const pressed = (pascals: number, more: Paths = {}) => judged({ 'loads.externalPressure': `${pascals} Pa`, ...more });

describe('pressure from outside', () => {
  // 168.3 x 7.11 mm: by buckling and yield together, 2 E/(1 - 0.09) (t/D)^3 and 2 Sy t/D.
  const held = (t: number): number => {
    const [buckling, yielding] = [((2 * 207e9) / 0.91) * (t / 0.1683) ** 3, (2 * 241e6 * t) / 0.1683];
    return 1 / (1 / buckling + 1 / yielding);
  };

  it('is borne by the sound pipe up to its collapse itself', () => {
    const [collapse] = pressed(25e6).collapses;
    const limit = collapse?.limit?.value ?? Number.NaN;
    expect(limit / held(7.11e-3)).toBeCloseTo(1, 9);
    expect([pressed(limit).collapses.length, pressed(limit * (1 + 1e-9)).collapses.length]).toEqual([0, 1]);
  });

  it('is borne by the thinned pipe before the laminate has cured up to its collapse with a factor of 1.25', () => {
    const [bears = Number.NaN] = pressed(2e6).unheld;
    expect(bears / (held(2e-3) / 1.25)).toBeCloseTo(1, 9);
    expect([pressed(bears).unheld, pressed(bears * (1 + 1e-9)).unheld]).toEqual([[], [bears]]);
  });

  it('is borne by no thinned pipe where the reading error takes the wall', () => {
    const gone = { 'defect.remainingWall': '0.5 mm', 'defect.readingError': '0.5 mm' };
    expect(pressed(1e4, gone).unheld).toEqual([0]);
  });
});

describe('a push along a free span', () => {
  it('is borne up to a third of the force that buckles it, and not above', () => {
    const pushed = (newtons: number) =>
      judged({ 'loads.freeSpan': '6 m', 'loads.axialForce': `${-newtons} N` }).buckles;
    const [buckles] = pushed(1e6);
    const held = buckles?.limit?.value ?? Number.NaN;
    const inertia = (Math.PI / 64) * (0.1683 ** 4 - (0.1683 - 0.004) ** 4);
    expect(held / ((Math.PI ** 2 * 207e9 * inertia) / (3 * 6 ** 2))).toBeCloseTo(1, 9);
    expect([pushed(held).length, pushed(held * (1 + 1e-9)).length]).toEqual([0, 1]);
  });
});
