import { describe } from 'vitest';
import { type CaseFile, emptyLeak, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** The strength that is left in the pipe, today and at the end of the life. */

/** Sharing load, by a stated factor. */
const sharing: CaseFile = withPaths(quietLoss, {
  'repair.method': 'substrate sharing load',
  assessment: { designFactor: 0.72 },
  'service.designPressure': '30 bar',
});

/** Used up from inside within ten years. */
const usedUp: CaseFile = withPaths(quietLoss, {
  'defect.cause': 'internal corrosion',
  'defect.growth': { depth: '0.2 mm/year', length: '0 mm/year' },
  'defect.axialLength': '60 mm',
  'defect.circumferentialWidth': '50 mm',
  'repair.life': '4 year',
  'service.designPressure': '2 bar',
  'laminate.resists': { contents: 'process water', temperature: '70 degC', statedBy: 'table of the maker (invented)' },
});

describe('a loss that goes on', () => {
  show('from inside, at a rate that nobody stated', {
    from: withPaths(quietLoss, {
      'defect.cause': 'internal corrosion',
      'defect.growth': { depth: '0.01 mm/year', length: '0 mm/year' },
    }),
    with: { 'defect.growth': 'none' },
    verdict: 'needs input',
    asks: 'defect.growth',
  });
  show('through the wall, to a hole that an inspector expects', {
    from: usedUp,
    with: { 'repair.life': '10 year', 'defect.holeAtEndOfLife': '5 mm' },
    verdict: 'designed',
    says: /the hole is taken as the inspector expects it/,
  });
  show('through the wall, long and narrow', {
    from: usedUp,
    with: { 'repair.life': '10 year', 'defect.circumferentialWidth': '5 mm' },
    verdict: 'not covered',
    limit: 5,
  });
  show('of a hole whose size nobody stated', {
    from: emptyLeak,
    with: { 'defect.holeDiameter': undefined },
    verdict: 'needs input',
    asks: 'defect.holeDiameter',
  });
});

describe('the remaining strength', () => {
  show('that the thickness counts on, without a factor', {
    from: sharing,
    with: { assessment: undefined },
    verdict: 'needs input',
    asks: 'assessment.designFactor',
  });
  show('that nothing asks for, without a factor', {
    from: quietLoss,
    with: { assessment: undefined },
    verdict: 'designed',
    says: /gives neither the design factor/,
  });
  show('by a method that the case names and that does not reach', {
    from: withPaths(sharing, { 'repair.method': undefined, 'assessment.method': 'modified B31G' }),
    with: { 'defect.remainingWall': '1.3 mm' },
    verdict: 'not covered',
  });
  show('with a factor below the one taken unasked', {
    from: quietLoss,
    with: { assessment: { safetyFactor: 1.1 } },
    verdict: 'designed',
    says: /smaller than what would be taken unasked/,
  });
  show('with another flow stress', {
    from: quietLoss,
    with: { 'assessment.flowStress': 'SMYS + 69 MPa' },
    verdict: 'designed',
    says: /in place of 1\.1 SMYS/,
  });
  show('by a method that gives more than another', {
    from: quietLoss,
    with: { 'assessment.method': 'DNV-RP-F101' },
    verdict: 'designed',
    says: /because the case names it/,
  });
  const tooThick = { 'pipe.wallThickness': '30 mm', 'defect.remainingWall': '10 mm' };
  show('that no method reaches and nothing counts on', {
    from: quietLoss,
    with: tooThick,
    verdict: 'designed',
    says: /could not be computed/,
  });
  show('that no method reaches and the thickness counts on', {
    from: sharing,
    with: tooThick,
    verdict: 'not covered',
    says: /below D\/6/,
  });
  show('with a note of its method', {
    from: quietLoss,
    with: { 'assessment.method': 'DNV-RP-F101', 'defect.remainingWall': '1.35 mm' },
    verdict: 'designed',
    says: /Remaining strength by DNV/,
  });
  const flat = ['0 mm', '1 mm', '50 mm', '99 mm', '100 mm'];
  show('by the measured profile, though it be the lowest', {
    from: withPaths(quietLoss, {
      'defect.axialLength': '100 mm',
      'defect.profile': flat.map((position) => ({ position, depth: '5.11 mm' })),
    }),
    with: { 'assessment.method': 'API 579-1 Level 2' },
    verdict: 'designed',
    says: /because the case names it/,
  });
});
