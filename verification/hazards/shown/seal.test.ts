import { describe } from 'vitest';
import { type CaseFile, emptied, leak, live, type Paths, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** A live leak, and what is put on it. */

/** A seal that holds 20 bar on 7 mm of wall round the hole, with the procedure of the site; 5 bar in the line. */
const strong: CaseFile = withPaths(leak, {
  'service.designPressure': '10 bar',
  'repair.class': 3,
  'defect.axialLength': '80 mm',
  'defect.circumferentialWidth': '80 mm',
  'defect.remainingWall': '7 mm',
  'defect.growth': { depth: '0.01 mm/year', length: '0 mm/year' },
  'seal.siteLimit': '20 bar',
  'seal.fastener.threadDiameter': '24 mm',
  'seal.fastener.permittedTension': '200 kN',
  'seal.band.strength': '900 MPa',
  'seal.band.width': '100 mm',
  'seal.band.thickness': '3 mm',
  'seal.band.count': 4,
  'seal.band.holdingFactor': 1.2,
  'seal.sheet.thickness': '6 mm',
  'seal.pipeFactor': 1.2,
  ...live('5 bar'),
});
/** Materials made for hot steel: 60 degC is their reference. */
const hotCure = (material: string): Paths => ({
  [`${material}.cure.referenceTemperature`]: '60 degC',
  [`${material}.cure.testedTo`]: '70 degC',
});
const hot: CaseFile = withPaths(strong, {
  'site.pipeTemperature': '59 degC',
  'site.history': undefined,
  'site.forecast': undefined,
  'laminate.glassTransition': '130 degC',
  ...{ ...hotCure('laminate'), ...hotCure('filler'), ...hotCure('seal.putty') },
});

/** A 2 in pipe. */
const small: CaseFile = withPaths(leak, {
  'pipe.size': undefined,
  'pipe.outsideDiameter': '60.3 mm',
  'pipe.wallThickness': '3.68 mm',
  'defect.remainingWall': '3 mm',
  'defect.readingError': 'none',
  'defect.growth': { depth: '0.01 mm/year', length: '0.2 mm/year' },
  'wrap.width': '50 mm',
  'seal.pad.margin': '20 mm',
});

describe('a live leak', () => {
  show('whose pad lifts harder than hands hold it', {
    from: withPaths(leak, {
      'defect.remainingWall': '6 mm',
      'defect.growth.depth.previousWall': '6.2 mm',
      'seal.siteLimit': '7 bar',
      'seal.bands': 'left',
      'seal.band.thickness': '1.5 mm',
      'seal.fastener.permittedTension': '15 kN',
      'seal.sheet.thickness': '3 mm',
      'seal.pipeFactor': 1.25,
      ...live('0.5 bar'),
    }),
    with: live('5 bar'),
    verdict: 'designed',
    says: /lifts the pad/,
    step: 'seal',
  });
  show('of gas, sealed by hand', {
    from: strong,
    with: { 'service.phase': 'gas', 'service.contents': 'compressed air', 'seal.fluid': undefined },
    verdict: 'not covered',
    says: /the contents are gas/,
  });
  show('of a hazard, sealed by hand', {
    from: strong,
    with: { 'service.hazards': ['flammable'] },
    verdict: 'not covered',
    says: /the contents are a hazard/,
  });
  show('of hot water, sealed by hand', {
    from: hot,
    with: { 'site.pipeTemperature': '49 degC' },
    verdict: 'not covered',
    limit: 321.15,
  });
  show('under too much pressure for a hand', {
    from: strong,
    with: live('8 bar'),
    verdict: 'not covered',
    says: /pressure in the line is too high/,
  });
  show('whose jet pushes too hard for a hand', {
    from: strong,
    with: { 'defect.holeDiameter': '30 mm' },
    verdict: 'not covered',
    says: /the jet pushes too hard/,
  });
  show('that nothing holds', {
    from: leak,
    with: { seal: undefined },
    verdict: 'needs input',
    asks: 'seal',
  });
  show('under a pressure that its seal may not hold', {
    from: strong,
    with: { 'seal.siteLimit': '3 bar' },
    verdict: 'not repairable',
    limit: 3e5,
  });
  show('whose bands come off before the wrap', {
    from: withPaths(leak, { 'seal.bands': 'left' }),
    with: { 'seal.bands': 'removed before the wrap' },
    verdict: 'designed',
    says: /putty alone holds the leak/,
    step: 'putty',
  });
  show('whose bands come off under a pump', {
    from: leak,
    with: live('0.2 bar'),
    verdict: 'not repairable',
    limit: 150,
  });
  show('whose bands come off against more than two hands hold', {
    from: leak,
    with: { 'line.pressure': '0.8 bar' },
    verdict: 'not repairable',
    limit: 150,
  });
  show('under a sheet that does not cover its pad', {
    from: leak,
    with: { 'seal.sheet.across': '30 mm' },
    verdict: 'not repairable',
    limit: 0.054,
  });
});

describe('a seal', () => {
  show('that is left out on an empty line', {
    from: withPaths(leak, emptied),
    with: { seal: undefined },
    verdict: 'designed',
    says: /Nothing seals the leak/,
    step: 'permit',
  });
  show('that presses on no wall', {
    from: withPaths(leak, { ...emptied, 'defect.growth': { depth: '0.1 mm/year', length: '0.2 mm/year' } }),
    with: { 'defect.remainingWall': '0 mm' },
    verdict: 'needs input',
    asks: 'defect.remainingWall',
  });
  for (const [what, field] of [
    ['whose band may tear', 'seal.band.factor'],
    ['whose band may let go', 'seal.band.holdingFactor'],
    ['whose sheet may bend into the hole', 'seal.sheet.factor'],
    ['that may press the thinned pipe in', 'seal.pipeFactor'],
  ] as const)
    show(what, {
      from: leak,
      with: { [field]: 1.05 },
      verdict: 'designed',
      says: new RegExp(`${field} is .* less than a seal keeps`),
      step: 'seal',
    });
  show('with a sheet of no usual thickness', {
    from: leak,
    with: { 'seal.sheet.thickness': '0.5 mm' },
    verdict: 'designed',
    says: /backing sheet is thinner or thicker/,
    step: 'seal',
  });
  // 4 mm and 10 mm on each side.
  show('with a pad that lies on no steel', {
    from: leak,
    with: { 'seal.pad.margin': '9 mm', 'seal.pad.multiple': 1 },
    verdict: 'not repairable',
    limit: 0.024,
  });
  show('with a pad smaller than usual', {
    from: leak,
    with: { 'seal.pad.margin': '20 mm' },
    verdict: 'designed',
    says: /pad is smaller than the trade makes it/,
    step: 'seal',
  });
  show('on a pipe smaller than bands are used on', {
    from: small,
    with: { 'pipe.outsideDiameter': '48.3 mm' },
    verdict: 'designed',
    says: /smaller than banded seals are used on/,
    step: 'seal',
  });
  show('with bands that lie beside its pad', {
    from: leak,
    with: { 'seal.band.count': 4 },
    verdict: 'designed',
    says: /bands are wider than the pad/,
    step: 'seal',
  });
});
