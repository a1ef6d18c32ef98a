import { describe } from 'vitest';
import { type CaseFile, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** The wrap as it is laid, and the test of the finished repair. */

const small: CaseFile = withPaths(quietLoss, {
  'pipe.outsideDiameter': '60.3 mm',
  'pipe.wallThickness': '3.91 mm',
  'defect.remainingWall': '3 mm',
  'service.designPressure': '5 bar',
  'wrap.width': '60 mm',
});
const weak: CaseFile = withPaths(quietLoss, {
  'pipe.material.yieldStrength': '53 MPa',
  'pipe.material.allowableStress': undefined,
});

describe('the pressure test', () => {
  show('above the rating of a valve within its length', {
    from: withPaths(quietLoss, { 'acceptance.pressureTest.lowestRating': '44 bar' }),
    with: { 'acceptance.pressureTest.lowestRating': '43 bar' },
    verdict: 'not repairable',
    limit: 4.3e6,
  });
  show('above what the laminate resists on its day', {
    // As warm in service as on the day: nothing of the heat is left over for the test.
    from: withPaths(quietLoss, { 'service.designPressure': '45 bar' }),
    with: { 'service.designTemperature': '25 degC' },
    verdict: 'designed',
    says: /lies above what the laid laminate resists/,
    step: 'pressure-test',
  });
  show('at which the sound pipe yields', {
    from: weak,
    with: { 'pipe.material.yieldStrength': '50 MPa' },
    verdict: 'not repairable',
    says: /would make the sound pipe yield/,
  });
  show('with liquid in a line that is hung for gas', {
    from: quietLoss,
    with: { 'service.contents': 'compressed air', 'service.phase': 'gas' },
    verdict: 'designed',
    says: /Pipe, supports and hangers carry that weight/,
    step: 'pressure-test',
  });
  show('with gas where the contents are flammable', {
    from: withPaths(quietLoss, { 'acceptance.pressureTest.medium': 'gas' }),
    with: { 'service.contents': 'condensate', 'service.hazards': ['flammable'] },
    verdict: 'designed',
    says: /inert gas, never with air/,
    step: 'pressure-test',
  });
  show('with gas', {
    from: quietLoss,
    with: { 'acceptance.pressureTest.medium': 'gas' },
    verdict: 'designed',
    says: /far more energy than one with liquid/,
    step: 'pressure-test',
  });
  show('with more gas than the rule for the distance knows', {
    from: withPaths(quietLoss, { 'acceptance.pressureTest.medium': 'gas' }),
    with: { 'acceptance.pressureTest.length': '4 km' },
    verdict: 'designed',
    says: /more energy than the rule/,
    step: 'pressure-test',
  });
});

describe('the test liquid', () => {
  const fresh: CaseFile = withPaths(quietLoss, { 'acceptance.pressureTest.liquid': 'fresh water' });
  show('of another density than that of fresh water', {
    from: fresh,
    with: { 'acceptance.pressureTest.liquid': 'other' },
    verdict: 'designed',
    says: /not put down to cooling/,
    step: 'pressure-test',
  });
  show('that nobody named', {
    from: fresh,
    with: { 'acceptance.pressureTest.liquid': undefined },
    verdict: 'designed',
    says: /not put down to cooling/,
    step: 'pressure-test',
  });
});

describe('the wrap', () => {
  show('beginning close to the defect', {
    from: small,
    with: { 'wrap.width': '20 mm' },
    verdict: 'designed',
    says: /wrap begins less than/,
  });
  show('that gels before it lies', {
    from: withPaths(quietLoss, { resin: 'none' }),
    with: { 'crew.layingSpeed': '0.2 m/min' },
    verdict: 'designed',
    says: /takes longer to lay/,
    step: 'wrap',
  });
});
