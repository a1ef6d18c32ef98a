import { describe } from 'vitest';
import { emptyLeak, live, loss, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** People on a line that is under pressure, and the pipe beside them. */

/** 610 x 9.5 mm with a long loss, water: safe up to less than 20 bar, and 80 per cent of 25 are 20. */
const wide = withPaths(quietLoss, {
  'pipe.outsideDiameter': '610 mm',
  'pipe.wallThickness': '9.5 mm',
  'defect.axialLength': '400 mm',
  'defect.circumferentialWidth': '200 mm',
  'defect.remainingWall': '3 mm',
  'service.designPressure': '20 bar',
});
const lately = (date: string) => ({
  'service.designPressure': '25 bar',
  ...live('20 bar'),
  'assessment.method': 'original B31G',
  'service.recentPressure': { pressure: '25 bar', date },
});
/** 1.35 of 7.11 mm: too deep for the method of a code, and a leak by the end of the life. */
const nearlyThrough = withPaths(quietLoss, {
  ...live('1 bar'),
  'service.designPressure': '6 bar',
  'defect.remainingWall': '1.35 mm',
  'defect.growth': { depth: '0.1 mm/year', length: '0 mm/year' },
  'defect.holeAtEndOfLife': '10 mm',
  'laminate.resists': { contents: 'process water', temperature: '80 degC', statedBy: 'resistance table (invented)' },
});
const liveGas = withPaths(quietLoss, {
  'service.contents': 'compressed air',
  'service.phase': 'gas',
  ...live('10 bar'),
});

/** A stiff laminate, so that high pressures are designed. */
const stiff = (designPressure: string) =>
  withPaths(quietLoss, {
    'defect.remainingWall': '4 mm',
    'defect.axialLength': '50 mm',
    'service.designPressure': designPressure,
    'laminate.fibre': 'carbon',
    'laminate.isolatingLayer': 'one ply of glass',
    'laminate.hoopModulus': '200 GPa',
    'laminate.axialModulus': '120 GPa',
    'laminate.shearModulus': '20 GPa',
    'acceptance.pressureTest': 'none',
    crew: undefined,
  });

describe('a line under pressure', () => {
  show('whose wall preparation could take through', {
    from: withPaths(quietLoss, { ...live('10 bar'), 'defect.remainingWall': '3 mm' }),
    with: { 'defect.remainingWall': '2.9 mm' },
    verdict: 'designed',
    says: /wall under pressure is/,
    step: 'surface',
  });
  show('above what its thinned wall bears', {
    from: wide,
    with: live('20 bar'),
    verdict: 'not repairable',
    says: /may not be worked on at this pressure/,
  });
  show('of which no method tells what its wall bears', {
    from: nearlyThrough,
    with: { 'assessment.method': 'original B31G' },
    verdict: 'needs input',
    asks: 'line.state',
  });
  show('that carried its pressure too long ago', {
    from: withPaths(wide, lately('2026-04-20')),
    with: { 'service.recentPressure.date': '2020-04-20' },
    verdict: 'not repairable',
    says: /said to have carried lately does not count/,
  });
  show('that carried more than its design pressure', {
    from: withPaths(wide, { ...lately('2026-04-20'), 'line.pressure': '5 bar' }),
    with: { 'service.recentPressure.pressure': '26 bar' },
    verdict: 'needs input',
    asks: 'service.recentPressure',
  });
  show('that carried its pressure before a survey of no day', {
    from: withPaths(wide, lately('2026-04-20')),
    with: { date: undefined },
    verdict: 'not repairable',
    says: /said to have carried lately does not count/,
  });
  show('with gas in it, by no written procedure', {
    from: liveGas,
    with: { 'line.writtenProcedure': 'none' },
    verdict: 'not repairable',
    says: /no written procedure/,
  });
  show('with gas in it, by a procedure that nobody has written yet', {
    from: liveGas,
    with: { 'line.writtenProcedure': 'WP-17, in preparation' },
    verdict: 'not repairable',
    says: /state the number of one that is written/,
  });
  show('with a flammable liquid in it, by no written procedure', {
    from: loss,
    with: { 'line.writtenProcedure': 'none' },
    verdict: 'not repairable',
    says: /no written procedure/,
  });
});

describe('the pipe beside the defect', () => {
  show('would yield at the design pressure', {
    from: quietLoss,
    // No test, which would make it yield too.
    with: { 'service.designPressure': '210 bar', 'acceptance.pressureTest': 'none' },
    verdict: 'not repairable',
    limit: 241e6,
  });
  show('is above its allowable stress', {
    from: stiff('100 bar'),
    with: { 'service.designPressure': '140 bar' },
    verdict: 'designed',
    says: /above its allowable stress at the design pressure/,
    step: 'permit',
  });
  show('is above its allowable stress and is to share with the laminate', {
    from: withPaths(stiff('100 bar'), { 'repair.method': 'substrate sharing load' }),
    with: { 'service.designPressure': '140 bar' },
    verdict: 'not repairable',
    limit: 138e6,
    says: /counts on the pipe, and the pipe is above its allowable stress/,
  });
  show('is above its allowable stress by its loads and is to share with the laminate', {
    from: withPaths(stiff('40 bar'), { 'repair.method': 'substrate sharing load', 'loads.freeSpan': '2 m' }),
    with: { 'loads.axialForce': '-400 kN' },
    verdict: 'not repairable',
    says: /counts on the pipe, and the pipe is above its allowable stress/,
  });
  show('is above the factor of its code', {
    from: withPaths(stiff('142.5 bar'), { 'pipe.material.allowableStress': undefined }),
    with: { 'service.designPressure': '187.3 bar' },
    verdict: 'designed',
    says: /above the design stress of its code/,
  });
  show('would yield under a pull', {
    from: quietLoss,
    with: { 'loads.axialForce': '900 kN' },
    verdict: 'not repairable',
    says: /yield under the stated loads/,
  });
  show('would yield under bending', {
    from: quietLoss,
    with: { 'loads.bendingMoment': '40 kN m' },
    verdict: 'not repairable',
    says: /yield under the stated loads/,
  });
  show('would yield under torsion', {
    from: quietLoss,
    with: { 'loads.torsion': '45 kN m' },
    verdict: 'not repairable',
    says: /yield under the stated loads/,
  });
  show('is above what the pipeline code allows under a pull', {
    from: withPaths(stiff('40 bar'), { 'pipe.material.allowableStress': undefined }),
    with: { 'loads.axialForce': '600 kN' },
    verdict: 'designed',
    says: /than the \{0\} that the pipeline code allows/,
    step: 'permit',
  });
  show('is above its allowable stress under a push', {
    from: withPaths(stiff('40 bar'), { 'loads.freeSpan': '2 m' }),
    with: { 'loads.axialForce': '-400 kN' },
    verdict: 'designed',
    says: /by the stated loads with the design pressure/,
    step: 'permit',
  });
});

describe('a thinned pipe', () => {
  show('that would tear open if its whole length broke through', {
    from: emptyLeak,
    with: { 'defect.axialLength': '1500 mm' },
    verdict: 'designed',
    says: /tear open at the design pressure/,
    step: 'permit',
  });
  show('that gas under the wrap would press in', {
    from: wide,
    with: { 'service.phase': 'gas', 'service.contents': 'compressed air' },
    verdict: 'designed',
    says: /let the gas down slowly/i,
    step: 'return',
  });
});
