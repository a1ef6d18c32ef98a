import { describe } from 'vitest';
import { type CaseFile, emptyLeak, leak, quietLoss, withPaths, yieldedLoss } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** The laminate over loss and leak, and how it is wrapped. */

const sheet = { form: 'sheet', width: '500 mm', rollLength: '20 m' };
const overLeak: CaseFile = withPaths(emptyLeak, { wrap: sheet });
const warm = {
  hoopModulus: '22 GPa',
  axialModulus: '13 GPa',
  energyReleaseRate: '150 J/m2',
};

describe('a laminate over a leak', () => {
  show('of a bond that nobody tested', {
    from: emptyLeak,
    with: { 'laminate.energyReleaseRate': undefined },
    verdict: 'needs input',
    asks: 'laminate.energyReleaseRate',
  });
  show('of a shear modulus that nobody stated', {
    from: overLeak,
    with: { 'laminate.shearModulus': undefined },
    verdict: 'needs input',
    asks: 'laminate.shearModulus',
  });
  show('over a sheet of unknown size', {
    from: leak,
    with: { 'seal.sheet.across': undefined },
    verdict: 'needs input',
    asks: 'seal.sheet.across',
  });
  show('over a collar that nobody spoke of', {
    from: leak,
    with: { 'seal.collar': undefined },
    verdict: 'needs input',
    asks: 'seal.collar',
  });
  show('over bands that may stay or go', {
    from: leak,
    with: { 'seal.bands': undefined },
    verdict: 'needs input',
    asks: 'seal.bands',
  });
  show('under more pressure than any thickness holds', {
    from: emptyLeak,
    with: { 'repair.class': 3, 'service.designPressure': '90 bar' },
    verdict: 'not repairable',
    says: /no thickness of this laminate/,
  });
  show('over a hole that is too large for its formula', {
    from: emptyLeak,
    with: {
      'defect.holeDiameter': '74 mm',
      'pipe.size.schedule': '10',
      'defect.remainingWall': '1.5 mm',
      'service.designPressure': '1 bar',
    },
    verdict: 'not covered',
    says: /too large for the formula of a round hole/,
  });
  show('over a hole wider than three thicknesses', {
    from: withPaths(emptyLeak, { 'laminate.qualifiedPlies': 8, 'service.designPressure': '1 bar' }),
    with: { 'defect.holeDiameter': '22 mm' },
    verdict: 'designed',
    says: /three laminate thicknesses wide/,
  });
  show('held by a bond that a seal makes tougher than steel', {
    from: withPaths(leak, {
      'laminate.energyReleaseRateOverSeal': { energyReleaseRate: '180 J/m2', footprint: '150 mm' },
    }),
    with: { 'laminate.energyReleaseRateOverSeal': { energyReleaseRate: '1800 J/m2', footprint: '150 mm' } },
    verdict: 'designed',
    says: /tougher than that to bare steel/,
  });
  show('by the less conservative leak factor', {
    from: withPaths(emptyLeak, { 'repair.class': 3 }),
    with: { 'repair.leakFactorByFormula': true },
    verdict: 'designed',
    says: /leak service factor is taken by formula/,
  });
  show('that nobody tested warm', {
    from: withPaths(emptyLeak, { 'laminate.atDesignTemperature': warm }),
    with: { 'laminate.atDesignTemperature': undefined },
    verdict: 'designed',
    says: /temperature factor of the leak resistance is not known/,
  });
  show('over filler, tested warm on steel only', {
    from: withPaths(emptyLeak, { 'laminate.atDesignTemperature': warm }),
    with: { 'filler.underWholeWrap': true, 'filler.qualifiedOverFiller': { energyReleaseRate: '100 J/m2' } },
    verdict: 'designed',
    says: /is that of the bond to steel/,
  });
});

describe('a thickness', () => {
  show('by metal that is not there', {
    from: emptyLeak,
    with: { 'repair.method': 'substrate yielded' },
    verdict: 'not repairable',
    says: /counts on metal that is not there/,
  });
  show('by a method of the laminate alone, at a leak', {
    from: emptyLeak,
    with: { 'repair.method': 'substrate ignored' },
    verdict: 'designed',
  });
  show('that counts on the pipe', {
    from: withPaths(quietLoss, { assessment: { designFactor: 0.72 } }),
    with: { 'repair.method': 'substrate sharing load' },
    verdict: 'designed',
    says: /counts on the load that the thinned pipe carries/,
  });
  show('that counts on a pipe that yields', {
    from: withPaths(yieldedLoss, { 'repair.method': undefined }),
    with: { 'repair.method': 'substrate yielded' },
    verdict: 'designed',
    says: /yielded form counts on the thinned pipe/,
  });
  show('by a strength that nobody tested', {
    from: quietLoss,
    with: { 'repair.method': 'long-term strength' },
    verdict: 'needs input',
    asks: 'laminate.longTermStrength',
  });
  show('beyond that of a thin laminate', {
    from: quietLoss,
    with: {
      'service.designPressure': '130 bar',
      'pipe.wallThickness': '15 mm',
      'pipe.material.allowableStress': '160 MPa',
    },
    verdict: 'not repairable',
    says: /too thick for the equations of a thin one/,
  });
  show('beyond that of a thin laminate by what the passes lay besides', {
    // A twelfth of the diameter is 5.03 mm: 6 plies of 0.8 mm are asked for, and each pass lays four.
    from: withPaths(quietLoss, { 'pipe.outsideDiameter': '60.3 mm', 'service.designPressure': '68 bar' }),
    with: { 'wrap.overlap': '75 %' },
    verdict: 'not repairable',
    says: /the wrap lies thicker than the criteria ask for/,
  });
});

describe('a tape', () => {
  show('whose stiffness off the hoop direction nobody can tell', {
    from: quietLoss,
    with: { 'laminate.shearModulus': undefined },
    verdict: 'needs input',
    asks: 'laminate.shearModulus',
  });
  show('that runs too steeply', {
    from: quietLoss,
    with: { 'wrap.width': '320 mm' },
    verdict: 'not covered',
    limit: (15 * Math.PI) / 180,
  });
  show('that runs steeply', {
    from: withPaths(quietLoss, { 'wrap.width': '50 mm' }),
    with: { 'wrap.width': '220 mm' },
    verdict: 'designed',
    says: /runs steeply/,
  });
  show('whose overlap is just enough', {
    from: withPaths(quietLoss, { 'wrap.overlap': '55 %' }),
    with: { 'wrap.overlap': '50 %' },
    verdict: 'designed',
    says: /is exactly what/,
  });
  show('whose turns hardly lap', {
    from: withPaths(quietLoss, { 'wrap.width': '100 mm', 'wrap.overlap': '25 %' }),
    with: { 'wrap.overlap': '24 %' },
    verdict: 'not repairable',
    limit: 0.025,
    says: /hardly lap/,
  });
  show('that a little more overlap would save a pass of', {
    from: withPaths(quietLoss, { 'wrap.overlap': '55 %' }),
    with: { 'wrap.overlap': '65 %' },
    verdict: 'designed',
    says: /save at least one pass/,
  });
  show('of sheet in more bands than a plan lists', {
    from: withPaths(quietLoss, { wrap: { form: 'sheet', width: '500 mm', rollLength: '50 m' } }),
    with: { 'defect.axialLength': '20 m', 'wrap.width': '300 mm' },
    verdict: 'not covered',
    says: /too narrow for this length/,
  });
  show('that finds no room beside the defect', {
    from: withPaths(quietLoss, { 'repair.availableOverlap': '2 m' }),
    with: { 'repair.availableOverlap': '100 mm' },
    verdict: 'not repairable',
    says: /not enough sound pipe/,
  });
});
