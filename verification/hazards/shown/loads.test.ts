import { describe, expect, it } from 'vitest';
import { compareAsBuilt } from '../../../src/repair/index.js';
import { madeOf } from '../../../tests/faults/answers.js';
import { quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { goodRecord } from '../../../tests/faults/records.js';
import { show } from './judged.js';

/** What acts on the pipe beside the pressure inside it. */

describe('a pipe that is pushed along itself', () => {
  const held = withPaths(quietLoss, { 'loads.axialForce': '-20 kN', 'loads.freeSpan': '6 m' });
  show('whose free span nobody stated', {
    from: held,
    with: { 'loads.freeSpan': undefined },
    verdict: 'needs input',
    asks: 'loads.freeSpan',
  });
  show('over a span that buckles', {
    from: held,
    with: { 'loads.freeSpan': '50 m' },
    verdict: 'not repairable',
    says: /the free span would buckle/,
  });
  show('over a span whose wall is used up', {
    from: withPaths(quietLoss, { 'loads.freeSpan': '6 m', 'defect.remainingWall': '0 mm' }),
    with: { 'loads.axialForce': '-20 kN' },
    verdict: 'not repairable',
    says: /wall is used up at the end of life/,
  });
});

describe('a pipe under pressure from outside', () => {
  show('collapses beside the defect', {
    from: quietLoss,
    with: { 'loads.externalPressure': '250 bar' },
    verdict: 'not repairable',
    says: /would collapse under the pressure from outside/,
  });
  show('is not held before the laminate has cured', {
    from: withPaths(quietLoss, { 'loads.externalPressure': '1 bar' }),
    with: { 'loads.externalPressure': '60 bar' },
    verdict: 'designed',
    says: /Until the laminate has cured/,
    step: 'permit',
  });

  const soil = { cover: '1 m', density: '2000 kg/m3', waterAbove: 'none', traffic: 'none' };
  show('of soil that lies there for years', {
    from: quietLoss,
    with: { 'loads.soil': soil, 'pipe.cathodicProtection': 'none' },
    verdict: 'designed',
    says: /The soil presses for years/,
  });
  show('of soil that comes back before the laminate is hard', {
    from: quietLoss,
    with: { 'loads.soil': soil, 'pipe.cathodicProtection': 'none' },
    verdict: 'designed',
    says: /Bury the line only after/,
    step: 'return',
  });

  show('of soil that holds a line along itself', {
    from: quietLoss,
    with: { 'loads.soil': soil, 'pipe.cathodicProtection': 'none' },
    verdict: 'designed',
    says: /free to move along itself, and it lies in soil/,
  });

  it('and a laminate that was laid too thin for it', () => {
    const design = madeOf(
      withPaths(quietLoss, { 'loads.externalPressure': '60 bar', 'service.designPressure': '10 bar' }),
    );
    expect(design.laminate.thickness.governing).toBe('ring buckling under pressure from outside');
    const good = goodRecord(design);
    expect(compareAsBuilt(design, good).verdict).toBe('meets');
    const { plies, thickness } = design.laminate;
    const thin = compareAsBuilt(design, { ...good, layers: plies - 1, thickness: (thickness.value * 0.9) as never });
    expect(thin.goodFor?.pressure).toBeUndefined();
    expect(thin.goodFor?.because.text).toMatch(/does not keep the pipe round/);
  });
});
