import { describe, expect, it } from 'vitest';
import { asksFor, designOf, newWarnings, verdictOf } from './answers.js';
import { leak, live, loss, type Paths, proposed, quietLoss, withPaths } from './cases.js';

/** Issue 9, items 15 and 16: what nobody was asked, and what was less conservative in silence. */

describe('what the contents reach', () => {
  it.each([
    ['the resin', proposed.resinResists],
    ['the putty', proposed.puttyResists],
  ])('asks at a leak what it stands: %s', (_, field) => {
    expect(asksFor(withPaths(leak, { [field]: undefined }), field)).toBe(true);
  });

  it('is never designed for sulphuric acid of 98 % on the word for cooling water', () => {
    const acid = { 'service.contents': '98 % sulphuric acid', 'service.hazards': ['corrosive'], 'repair.class': 3 };
    expect(verdictOf(withPaths(leak, acid))).not.toBe('designed');
  });
});

describe('steel at -150 degC', () => {
  // Laminate and pipe expand alike, so that no mismatch speaks.
  const cold = withPaths(quietLoss, {
    'service.lowestTemperature': '-150 degC',
    'laminate.hoopExpansion': '12e-6 1/K',
    'laminate.axialExpansion': '12e-6 1/K',
  });

  it('is never designed for without a qualification down to there', () => {
    expect(verdictOf(cold)).not.toBe('designed');
  });

  it('asks for the lowest temperature of the qualification', () => {
    expect(asksFor(withPaths(cold, { [proposed.lowestQualified]: undefined }), proposed.lowestQualified)).toBe(true);
  });
});

describe('the stress of the sound pipe', () => {
  /** 168.3 x 7.11 mm of 241 MPa at F = 0.72; a stiff laminate, so that high pressures are designed. No pressure test, no crew: neither warns. */
  const at = (designPressure: string) =>
    withPaths(quietLoss, {
      'pipe.material.allowableStress': undefined,
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
  // 0.92 and 0.70 of SMYS: P = share x 241 x 2 x 7.11/168.3
  const [above, below] = [at('187.3 bar'), at('142.5 bar')];

  it('is designed for on both sides of the design stress of its code', () => {
    expect([above, below].map(verdictOf)).toEqual(['designed', 'designed']);
    const stresses = [above, below].map((file) => (designOf(file).found?.hoopStressSound ?? Number.NaN) / 241e6);
    expect(stresses.map((share) => share.toFixed(2))).toEqual(['0.92', '0.70']);
  });

  it('is warned of above the design stress of its code', () => {
    expect(newWarnings(above, below).filter((text) => /stress/u.test(text))).not.toEqual([]);
  });
});

describe('a live leak that is sealed by hand', () => {
  /** A seal that holds 20 bar, 7 mm of wall round the hole, with the procedure of the site. */
  const strong = withPaths(leak, {
    'service.designPressure': '10 bar',
    'defect.axialLength': '80 mm',
    'defect.circumferentialWidth': '80 mm',
    'defect.remainingWall': '7 mm',
    'defect.growth': { depth: '0.01 mm/year', length: '0 mm/year' },
    'seal.siteLimit': '20 bar',
    'seal.fastener.threadDiameter': '24 mm',
    'seal.fastener.permittedTension': '200 kN',
    'seal.band.strength': '900 MPa',
    'seal.band.width': '54 mm',
    'seal.band.thickness': '6 mm',
    'seal.band.count': 1,
    'seal.band.holdingFactor': 1.2,
    'seal.sheet.thickness': '6 mm',
    'seal.pipeFactor': 1.2,
    'seal.bands': 'left',
  });
  const sealed = (pressure: string, hole: string, changes: Paths = {}) =>
    withPaths(strong, {
      'defect.holeDiameter': hole,
      ...live(pressure),
      ...changes,
    });
  /** Materials made for hot steel: 60 degC is their reference. */
  const hotCure = (material: string) => ({
    [`${material}.cure.referenceTemperature`]: '60 degC',
    [`${material}.cure.testedTo`]: '70 degC',
  });
  const hot = {
    'site.pipeTemperature': '62 degC',
    'site.history': undefined,
    'site.forecast': undefined,
    'laminate.glassTransition': '130 degC',
    ...{ ...hotCure('laminate'), ...hotCure('filler'), ...hotCure('seal.putty') },
  };

  it('is designed for 5 bar of water at a 4 mm hole', () => {
    expect(verdictOf(sealed('5 bar', '4 mm'))).toBe('designed');
  });

  it.each<[string, ReturnType<typeof sealed>]>([
    ['4.6 kN of push, 10 bar on 76.5 mm', sealed('10 bar', '76.5 mm')],
    ['8 bar', sealed('8 bar', '4 mm')],
    ['a jet of 0.7 kN, 5 bar through 30 mm', sealed('5 bar', '30 mm')],
    ['gas', sealed('5 bar', '4 mm', { 'service.phase': 'gas', 'seal.fluid': undefined, 'repair.class': 3 })],
    ['flammable contents', sealed('5 bar', '4 mm', { 'service.hazards': ['flammable'], 'repair.class': 3 })],
    ['steel of 62 degC', sealed('5 bar', '4 mm', { ...hot, 'repair.class': 2 })],
  ])('is not covered: %s', (_, file) => {
    expect(verdictOf(file)).toBe('not covered');
  });
});

describe('a less conservative option', () => {
  const longTerm = { strength: '110 MPa', test: '1000 h survival' };

  it.each<[string, Paths]>([
    ['load shared with the pipe', { 'repair.method': 'substrate sharing load' }],
    ['a safety factor of 1', { assessment: { safetyFactor: 1 } }],
    ['the effective area', { 'assessment.method': 'effective area' }],
    ['the flow stress of SMYS + 69 MPa', { 'assessment.flowStress': 'SMYS + 69 MPa' }],
    ['the flow stress of (SMYS + SMTS) / 2', { 'assessment.flowStress': '(SMYS + SMTS) / 2' }],
    ['the long-term strength', { 'repair.method': 'long-term strength', 'laminate.longTermStrength': longTerm }],
  ])('says that it is: %s', (_, change) => {
    const said = newWarnings(withPaths(loss, change), loss);
    expect(said.filter((text) => /less conservative/iu.test(text))).not.toEqual([]);
  });
});

describe('filler over a loss', () => {
  const hollow = (cause: string, filler: unknown = 'none') => {
    const growth = { depth: '0 mm/year', length: '0 mm/year' };
    const design = designOf(withPaths(quietLoss, { 'defect.cause': cause, 'defect.growth': growth, filler }));
    return { verdict: design.verdict, asked: design.missing.map(({ field }) => field), design };
  };
  /** 7.11 mm of wall, 2 mm of it left. */
  const over = (thickness: string) => withPaths(loss['filler'] as object, { thicknessOverDefect: thickness });

  it('is asked for where the loss may be a hollow on the outside, and not where it lies inside', () => {
    for (const cause of ['external corrosion', 'mechanical damage', 'unknown'])
      expect(hollow(cause), cause).toMatchObject({ verdict: 'needs input', asked: ['filler'] });
    expect(hollow('internal erosion')).toMatchObject({ verdict: 'designed', asked: [] });
  });

  it('is asked to be as thick as the loss is deep', () => {
    expect(hollow('external corrosion', over('5.1 mm'))).toMatchObject({ asked: ['filler.thicknessOverDefect'] });
    expect(hollow('external corrosion', over('5.12 mm'))).toMatchObject({ verdict: 'designed', asked: [] });
    const { case: sound } = hollow('external corrosion').design;
    const depth = sound.pipe.wallThickness - sound.defect.remainingWall;
    expect(hollow('external corrosion', over(`${depth} m`))).toMatchObject({ verdict: 'designed', asked: [] });
  });

  it('is not asked for where nothing is lost', () => {
    const whole = { 'defect.cause': 'external corrosion', 'defect.remainingWall': '7.11 mm' };
    expect(
      designOf(withPaths(quietLoss, { ...whole, 'defect.growth': { depth: '0 mm/year', length: '0 mm/year' } })),
    ).toMatchObject({ missing: [] });
  });

  it('is not asked for by a hollow that nobody saw: a cause that is not known may lie inside', () => {
    const why = (cause: string) => hollow(cause).design.missing.find(({ field }) => field === 'filler')?.why ?? '';
    expect(why('unknown')).toMatch(/^nobody says whether the loss is a hollow/u);
    expect(why('external corrosion')).toMatch(/^the loss is a hollow/u);
  });
});

describe('a limit of a question', () => {
  it('is met by contents of 60 degC, which are asked of only above it', () => {
    const hot = (designTemperature: string) =>
      asksFor(
        withPaths(quietLoss, {
          'service.designTemperature': designTemperature,
          'laminate.glassTransition': '150 degC',
        }),
        'service.hazards',
      );
    expect([hot('60 degC'), hot('140 degF'), hot('60.01 degC')]).toEqual([false, false, true]);
  });

  it('is met by glass as stiff as glass makes a laminate, in either direction, and by nothing stiffer', () => {
    const stiff = (hoop: string, axial: string) =>
      asksFor(
        withPaths(quietLoss, { 'laminate.hoopModulus': hoop, 'laminate.axialModulus': axial }),
        'laminate.isolatingLayer',
      );
    expect([stiff('45 GPa', '14 GPa'), stiff('45.1 GPa', '14 GPa')]).toEqual([false, true]);
    expect([stiff('24 GPa', '45 GPa'), stiff('24 GPa', '45.1 GPa')]).toEqual([false, true]);
  });
});
