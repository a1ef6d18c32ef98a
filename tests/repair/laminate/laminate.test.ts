import { describe, expect, it } from 'vitest';
import { designRepair, type Governed } from '../../../src/repair/index.js';
import { wholeCase } from '../../../verification/laws/whole-case.js';
import { seeded } from '../../../verification/oracles/random.js';
import { asksFor, caseOf, designOf, extentOf, laminateOf } from '../../faults/answers.js';
import {
  type CaseFile,
  emptied,
  emptyLeak,
  evenLoss,
  leak,
  live,
  type Paths,
  quietLoss,
  withPaths,
} from '../../faults/cases.js';

/** What governs a laminate and what it is held by. */

const INPUT = 'energyReleaseRate';

/** What the formula was given each time. */
const given = (file: CaseFile, formula: string): readonly Readonly<Record<string, unknown>>[] => {
  const { record = [] } = designRepair(caseOf(file), { record: true });
  return record.flatMap((entry) => (entry.sort === 'step' && entry.formula === formula ? [entry.input] : []));
};

describe('a value that one of several criteria governs', () => {
  it('is that of the criterion that it names: the largest of all, of a pressure the smallest', () => {
    let seen = 0;
    for (let draw = 0; draw < 40; draw++) {
      const { laminate, extent } = designRepair(wholeCase(seeded('governed', draw)));
      const holds = ({ candidates, governing, value }: Governed, worst: (...values: number[]) => number): void => {
        expect(new Set(candidates.map(({ criterion }) => criterion)).size).toBe(candidates.length);
        expect(candidates.find(({ criterion }) => criterion === governing)?.value).toBe(value);
        expect(value).toBe(worst(...candidates.map((each) => each.value)));
        seen += 1;
      };
      if (laminate !== undefined) holds(laminate.thickness, Math.max);
      if (laminate !== undefined) holds(laminate.resistance, Math.min);
      if (extent !== undefined) holds(extent.overlap, Math.max);
    }
    expect(seen).toBeGreaterThan(60);
  });
});

describe('the overlap', () => {
  const overlaps = (file: CaseFile, changes: Paths = {}): Readonly<Record<string, number>> =>
    Object.fromEntries(
      extentOf(withPaths(file, changes)).overlap.candidates.map(({ criterion, value }) => [criterion, value]),
    );
  const iso: Paths = { basis: 'ISO 24817' };

  it('is asked for by the pipe, by the least there is, by the bond, and over a small hole by the hole', () => {
    const loss = overlaps(evenLoss, iso);
    expect(Object.keys(loss).toSorted()).toEqual(['adhesive', 'geometry', 'minimum']);
    expect(loss['geometry']).toBeCloseTo(2 * Math.sqrt(0.1683 * 0.00711), 9);
    expect(loss['minimum']).toBe(0.05);
    // A hole of 4 mm is designed as one of 15 mm.
    expect(overlaps(emptyLeak)['hole']).toBeCloseTo(4 * 0.015, 12);
    const { adhesive } = overlaps(evenLoss, { ...iso, 'laminate.lapShearStrength': '16 MPa' });
    expect(adhesive).toBeCloseTo((loss['adhesive'] ?? 0) / 2, 12);
  });

  it('is not asked for by a hole that is too large for that rule', () => {
    const still = { 'defect.growth.length': '0 mm/year', 'service.designPressure': '0.1 bar' };
    expect(Object.keys(overlaps(emptyLeak, { ...still, 'defect.holeDiameter': '15 mm' }))).toContain('hole');
    expect(Object.keys(overlaps(emptyLeak, { ...still, 'defect.holeDiameter': '45 mm' }))).not.toContain('hole');
  });

  it('has no number where the strength of the bond is not known', () => {
    const { extent, laminate } = designOf(withPaths(quietLoss, { 'laminate.lapShearStrength': undefined }));
    expect(laminate).toBeDefined();
    expect(extent).toBeUndefined();
  });
});

describe('the energy of the bond over a leak', () => {
  const atDesign = (energyReleaseRate: string, footprint: string): Paths => ({
    'laminate.energyReleaseRateOverSeal': { energyReleaseRate, footprint },
  });
  const overSeal = (changes: Paths): unknown => given(withPaths(leak, changes), 'laminate/ring-resistance')[0]?.[INPUT];
  const across = (): number => designOf(leak).laminate?.footprint?.diameter ?? Number.NaN;

  it('that was found over a smaller seal, and is lower, never makes the laminate thinner than without it', () => {
    const thickness = (changes: Paths): number =>
      designOf(withPaths(leak, changes)).laminate?.thickness.value ?? Number.NaN;
    const without = thickness({});
    for (const stated of ['179.9 J/m2', '150 J/m2', '100 J/m2'])
      expect(thickness(atDesign(stated, `${across() - 1e-6} m`)), stated).toBeGreaterThan(without);
  });

  it.each([
    ['found over a seal as large', '120 J/m2', 0, {}, 120],
    ['found over a smaller one, and lower', '120 J/m2', -1e-6, {}, 120],
    ['found over a smaller one, and as high', '180 J/m2', -1e-6, {}, 180],
    ['found over a smaller one, and higher: no credit', '250 J/m2', -1e-6, {}, 180],
    ['found over a seal as large, and higher', '250 J/m2', 0, {}, 250],
    ['higher, with bands that stay: no credit', '250 J/m2', 1, { 'seal.bands': 'left' }, 180],
  ])('is that %s', (_, stated, wider, changes, energy) => {
    expect(overSeal({ ...atDesign(stated, `${across() + wider} m`), ...changes })).toBeCloseTo(energy, 9);
  });

  it('is that found on steel where nothing else was tested', () => {
    expect(overSeal({})).toBeCloseTo(180, 9);
  });

  it('found over a seal says nothing of a bare hole, and is no answer to what the seal reaches', () => {
    const stated = atDesign('250 J/m2', '1 m');
    expect(given(withPaths(emptyLeak, stated), 'laminate/hole-resistance')[0]?.[INPUT]).toBeCloseTo(180, 9);
    expect(asksFor(withPaths(leak, { ...stated, 'seal.collar': undefined }), 'seal.collar')).toBe(true);
  });

  it('is asked for where only a smaller seal was tested', () => {
    const asks = (footprint: string) =>
      asksFor(
        withPaths(leak, { ...atDesign('120 J/m2', footprint), 'laminate.energyReleaseRate': undefined }),
        'laminate.energyReleaseRate',
      );
    expect([asks('1 mm'), asks(`${across()} m`)]).toEqual([true, false]);
  });

  it('is that of a bond to filler only where filler lies under the whole wrap and was tested so', () => {
    const bare = (changes: Paths): unknown =>
      given(withPaths(emptyLeak, changes), 'laminate/hole-resistance')[0]?.[INPUT];
    const tested = { 'filler.qualifiedOverFiller': { energyReleaseRate: '90 J/m2' } };
    expect(bare({ ...tested, 'filler.underWholeWrap': true })).toBeCloseTo(90, 9);
    expect(bare({ ...tested, 'filler.underWholeWrap': false })).toBeCloseTo(180, 9);
    expect(bare({ ...tested, 'filler.underWholeWrap': undefined })).toBeCloseTo(180, 9);
    expect(bare({ filler: 'none' })).toBeCloseTo(180, 9);
    expect(overSeal({ ...tested, 'filler.underWholeWrap': true })).toBeCloseTo(90, 9);
  });
});

describe('the footprint of a leak', () => {
  it.each(['seal.sheet.across', 'seal.collar', 'seal.bands'])(
    'is not known without what the seal reaches: %s',
    (field) => {
      const without = withPaths(leak, { [field]: undefined });
      expect(asksFor(without, field)).toBe(true);
      expect(designOf(without).laminate).toBeUndefined();
    },
  );

  it('is the hole itself where nothing is put on it, and the larger of all that lies on it where a seal is', () => {
    expect(laminateOf(emptyLeak).footprint).toMatchObject({ under: 'hole', diameter: 0.015, bonded: 'beside it' });
    const wide = laminateOf(withPaths(leak, { 'seal.collar': '70 mm' })).footprint;
    expect(wide).toMatchObject({ under: 'seal', bonded: 'beside it' });
    expect(wide?.diameter).toBeGreaterThanOrEqual(0.07);
    const large = laminateOf(withPaths(leak, { 'seal.collar': '345 mm', 'service.designPressure': '0.2 bar' }));
    expect(large.footprint).toMatchObject({ under: 'seal', bonded: 'nowhere round the pipe' });
  });

  it('reaches along the pipe as far as the bands that stay', () => {
    const left = laminateOf(
      withPaths(leak, { 'seal.bands': 'left', 'seal.band.count': 5, 'service.designPressure': '0.3 bar' }),
    );
    expect(left.footprint).toMatchObject({ bonded: 'nowhere round the pipe' });
    expect(left.footprint?.length).toBeCloseTo(0.1, 12);
    const few = laminateOf(withPaths(leak, { 'seal.bands': 'left', 'service.designPressure': '0.3 bar' }));
    expect(few.footprint?.length).toBe(few.footprint?.diameter);
  });

  it('leaves putty alone to a static head that two hands hold, and to nothing else', () => {
    const alone = (changes: Paths) => {
      const { warnings, reasons } = designOf(withPaths(leak, { 'seal.siteLimit': '3 bar', ...changes }));
      return [
        warnings.some(({ text }) => text.includes('the putty alone holds the leak')),
        reasons.some(({ text }) => text.includes('putty alone holds no leak')),
      ];
    };
    expect(alone({})).toEqual([true, false]);
    expect(alone({ 'line.pressure': '0.9 bar' })).toEqual([false, true]);
    expect(alone(live('0.2 bar'))).toEqual([false, true]);
    expect(alone({ 'seal.bands': 'left' })).toEqual([false, false]);
    expect(alone(emptied)).toEqual([false, false]);
  });
});

describe('plate and ring over a seal', () => {
  const decided = (file: CaseFile): string | undefined => {
    const { record = [] } = designRepair(caseOf(file), { record: true });
    const text = record.flatMap((entry) => (entry.sort === 'decision' ? [entry.what.text] : []));
    return text.find((what) => /^thickness of the (?:ring|plate)$/u.test(what));
  };
  const asked = (file: CaseFile, formula: string): number => {
    const { record = [] } = designRepair(caseOf(file), { record: true });
    const [result] = record.flatMap((entry) =>
      entry.sort === 'step' && entry.formula === formula ? [entry.result] : [],
    );
    return typeof result === 'number' ? result : Number.NaN;
  };
  const low = { 'service.designPressure': '1 bar', 'line.pressure': '0.2 bar' };

  it.each([
    ['a wide seal on a small pipe', { ...low, 'seal.collar': '150 mm', 'seal.sheet.across': '100 mm' }],
    ['a seal', {}],
    ['a seal at low pressure', low],
  ])('are both computed, and the one that asks for less is named: %s', (_, changes) => {
    const file = withPaths(leak, changes);
    const [plate, ring] = [asked(file, 'laminate/thickness-hole'), asked(file, 'laminate/thickness-ring')];
    expect(decided(file)).toBe(`thickness of the ${ring < plate ? 'ring' : 'plate'}`);
    const over = laminateOf(file).thickness.candidates.find(({ criterion }) => criterion === 'leak through the hole');
    expect(over?.value).toBe(Math.min(plate, ring));
  });

  it('is warned of as wide only where a plate holds it that is wider than three of its thicknesses', () => {
    const bare = (holeDiameter: string) =>
      withPaths(emptyLeak, {
        'service.designPressure': '1 bar',
        'defect.growth.length': '0 mm/year',
        'defect.holeDiameter': holeDiameter,
      });
    const isWide = (file: CaseFile): boolean => {
      const { footprint, laidThickness } = laminateOf(file);
      return (footprint?.diameter ?? Number.NaN) > 3 * laidThickness;
    };
    const warned = (file: CaseFile): boolean =>
      designOf(file).warnings.some(({ text }) => text.includes('three laminate thicknesses wide'));
    const [small, large] = [bare('5 mm'), bare('40 mm')];
    expect([isWide(large), warned(large)]).toEqual([true, true]);
    expect(warned(small)).toBe(isWide(small));
    const ring = withPaths(leak, { 'seal.bands': 'left', 'service.designPressure': '0.3 bar' });
    expect([isWide(ring), warned(ring)]).toEqual([true, false]);
  });
});

describe('a laminate that the hoop load relieves along the pipe', () => {
  it('has no pressure by the axial line, and is designed by the others', () => {
    const stiff = { 'laminate.axialModulus': '60 GPa', 'laminate.hoopModulus': '24 GPa', 'laminate.poissonRatio': 0.3 };
    const criteria = (changes: Paths) =>
      laminateOf(withPaths(evenLoss, changes)).resistance.candidates.map(({ criterion }) => criterion);
    expect(criteria({})).toContain('axial strain, substrate ignored');
    expect(criteria(stiff)).toEqual(['hoop strain, substrate ignored']);
  });
});

describe('the factor of a leak over its life', () => {
  const warned = (file: CaseFile, words: string): boolean =>
    designOf(file).warnings.some(({ text }) => text.includes(words));
  const factor = (changes: Paths): unknown => {
    const file = withPaths(emptyLeak, { 'service.designPressure': '1 bar', ...changes });
    const [input] = given(file, 'laminate/service-factor');
    return [input?.['leakFactor'], warned(file, 'is taken by formula')];
  };

  it('is that of the class, and by formula only in a class that has one and where the case asks for it', () => {
    const class3 = { 'repair.class': 3, 'repair.life': '10 year' };
    expect(factor(class3)).toEqual([expect.closeTo(0.333, 9), false]);
    expect(factor({ ...class3, 'repair.leakFactorByFormula': false })).toEqual([expect.closeTo(0.333, 9), false]);
    const byFormula = factor({ ...class3, 'repair.leakFactorByFormula': true });
    expect(byFormula).toEqual([expect.closeTo(0.666 * 10 ** (-0.01584 * 9), 6), true]);
    const class1 = { 'repair.class': 1, 'repair.life': '10 year' };
    const fixed = expect.closeTo(0.83 * 10 ** (-0.02088 * 9), 6);
    expect(factor(class1)).toEqual([fixed, false]);
    expect(factor({ ...class1, 'repair.leakFactorByFormula': true })).toEqual([fixed, false]);
  });

  it('is lowered by heat as the bond is where that was tested, by the factor of the strain where not, and never raised', () => {
    const heat = (changes: Paths): readonly unknown[] => {
      const file = withPaths(emptyLeak, { 'service.designPressure': '1 bar', ...changes });
      const [input] = given(file, 'laminate/service-factor');
      return [input?.['temperatureFactor'], warned(file, 'temperature factor of the leak resistance is not known')];
    };
    const strain = given(emptyLeak, 'laminate/service-factor')[0]?.['temperatureFactor'];
    const hot = (energy: string, share: number): Paths => ({
      'laminate.atDesignTemperature': {
        energyReleaseRate: energy,
        hoopModulus: `${24 * share} GPa`,
        axialModulus: `${14 * share} GPa`,
      },
    });
    expect(heat({})).toEqual([strain, true]);
    const [half, said] = heat(hot('90 J/m2', 1));
    expect(half).toBeLessThan(1);
    expect(said).toBe(false);
    expect(heat(hot('180 J/m2', 1))).toEqual([1, false]);
    expect(heat(hot('250 J/m2', 1))).toEqual([1, false]);
    const overFiller = {
      'filler.underWholeWrap': true,
      'filler.qualifiedOverFiller': { energyReleaseRate: '90 J/m2' },
    };
    expect(heat({ ...hot('90 J/m2', 1), ...overFiller })[0]).toBe(strain);
  });
});

describe('the joints of a sheet', () => {
  const sheet = (): Paths => ({
    wrap: { form: 'sheet', width: '300 mm', rollLength: '25 m', waste: '10 %' },
    'laminate.shearModulus': undefined,
  });
  const laid = (changes: Paths = {}) => designOf(withPaths(evenLoss, { ...sheet(), ...changes }));

  it('are none where one band is as wide as the laminate is long', () => {
    const { extent } = laid({ 'wrap.width': '2 m' });
    const length = extent?.totalLength ?? Number.NaN;
    expect(laid({ 'wrap.width': `${length} m` }).laminate).not.toHaveProperty('joints');
    expect(laid({ 'wrap.width': `${length - 1e-4} m` }).laminate).toHaveProperty('joints');
    expect(designOf(evenLoss).laminate).not.toHaveProperty('joints');
  });

  it('leave along the pipe as many plies as the lines along it ask for, and every ply round it', () => {
    const whole = laid({ 'wrap.width': '2 m' }).laminate;
    const joined = laid().laminate;
    if (whole === undefined || joined?.joints === undefined) throw new Error('no laminate with joints');
    const { carryingPlies, lostPlies } = joined.joints;
    expect(joined.plies).toBeGreaterThanOrEqual(whole.plies);
    expect(carryingPlies + lostPlies).toBe(joined.plies);
    const along = whole.thickness.candidates.find(({ criterion }) => criterion === 'axial strain, substrate ignored');
    expect(carryingPlies * 0.8e-3).toBeGreaterThanOrEqual(along?.value ?? Number.NaN);
    // Fewer than the hoop line asks for may go through.
    expect(carryingPlies).toBeLessThan(whole.plies + 1);
    const pressure = (name: string) =>
      joined.resistance.candidates.find(({ criterion }) => criterion === name)?.value ?? 0;
    const hoop = pressure('hoop strain, substrate ignored') / joined.laidThickness;
    const alone = whole.resistance.candidates.find(({ criterion }) => criterion === 'hoop strain, substrate ignored');
    expect(hoop / ((alone?.value ?? 0) / whole.laidThickness)).toBeCloseTo(1, 9);
    const axial = pressure('axial strain, substrate ignored') / (carryingPlies * 0.8e-3);
    const axialAlone = whole.resistance.candidates.find(
      ({ criterion }) => criterion === 'axial strain, substrate ignored',
    );
    expect(axial / ((axialAlone?.value ?? 0) / whole.laidThickness)).toBeCloseTo(1, 9);
  });

  it('are as many in a laminate that the lines along the pipe govern as that asks for', () => {
    const pulled = laid({ 'loads.axialForce': '60 kN', 'service.designPressure': '15 bar' }).laminate;
    if (pulled?.joints === undefined) throw new Error('no joints');
    expect(pulled.thickness.governing).toMatch(/^axial/u);
    expect(pulled.joints.carryingPlies).toBe(Math.ceil(pulled.thickness.value / 0.8e-3 - 1e-9));
  });
});

describe('a second opinion on the shared load', () => {
  it.each(['substrate ignored', 'substrate sharing load', 'substrate yielded'])(
    'is given to that alone: %s',
    (method) => {
      const shares = method === 'substrate sharing load';
      const { thickOverThin } = laminateOf(withPaths(evenLoss, { 'repair.method': method }));
      expect(thickOverThin !== undefined).toBe(shares);
    },
  );
});

describe('the fewest plies', () => {
  it('are those of the rule set or of the qualification, whichever are more', () => {
    const idle = { 'service.designPressure': '2 bar' };
    const plies = (qualified: number | undefined) => {
      const { laminate } = designOf(withPaths(evenLoss, { ...idle, 'laminate.qualifiedPlies': qualified }));
      return [laminate?.leastPlies, laminate?.plies];
    };
    expect([plies(undefined), plies(1), plies(3)]).toEqual([
      [2, 2],
      [2, 2],
      [3, 3],
    ]);
  });
});

describe('a laminate at the borders of its equations', () => {
  it('is thin below a twelfth of the pipe, and refused at it', () => {
    // 12 plies of 0.8 mm are 9.6 mm.
    const round = (diameter: number, plyThickness = '0.8 mm', fabricWeight = '800 g/m2') =>
      designOf(
        withPaths(evenLoss, {
          'pipe.outsideDiameter': `${diameter / 1000} m`,
          'laminate.plyThickness': plyThickness,
          'resin.fabricWeight': fabricWeight,
          'laminate.qualifiedPlies': 12,
          'service.designPressure': '8 bar',
          'wrap.width': '50 mm',
        }),
      ).reasons.filter(({ text }) => text.includes('too thick for the equations'));
    expect(round(115.4)).toEqual([]);
    expect(round(115)[0]?.found?.value).toBeCloseTo(0.0096, 9);
    expect(round(115)[0]?.limit?.value).toBeCloseTo(0.115 / 12, 9);
    // Numbers that binary holds: 12 plies of 2^-9 m on 9/32 m are a twelfth to the last digit.
    expect(round(281.25, '0.001953125 m', '1950 g/m2')).toHaveLength(1);
    expect(round(281.26, '0.001953125 m', '1950 g/m2')).toEqual([]);
  });

  it('is one of the hoop direction up to a lead of fifteen degrees', () => {
    const steep = (width: number) =>
      designOf(withPaths(evenLoss, { 'wrap.width': `${width} mm` })).reasons.filter(({ text }) =>
        text.includes('too wide for this pipe'),
      );
    // tan a = w (1 - o)/(pi D) or sin a: between 270 and 290 mm at 15 degrees.
    expect(steep(268)).toEqual([]);
    const [reason] = steep(300);
    expect(reason?.limit?.value).toBeCloseTo(Math.PI / 12, 12);
    expect(reason?.found?.value).toBeGreaterThan(Math.PI / 12);
  });
});
