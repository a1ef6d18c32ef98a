import { describe, expect, it } from 'vitest';
import { designRepair, type Governed } from '../../../src/repair/index.js';
import { wholeCase } from '../../../verification/laws/whole-case.js';
import { seeded } from '../../../verification/oracles/random.js';
import { asksFor, caseOf, designOf, extentOf, laminateOf } from '../../faults/answers.js';
import {
  type CaseFile,
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
