import { describe, expect, it } from 'vitest';
import { planWork } from '../../src/repair/index.js';
import { planText } from '../../src/report/index.js';
import { designOf, madeOf } from '../faults/answers.js';
import { bend, leak, type Paths, quietLoss, slot as underVacuum, withPaths } from '../faults/cases.js';

/** Openings that are not round and pipe that is not straight, designed; by hand beside the library where a number stands. */

/** The slot with no vacuum over it, which would govern. */
const slot = withPaths(underVacuum, { 'loads.externalPressure': 'none' });

const leakOf = (design: ReturnType<typeof madeOf>): number =>
  design.laminate.resistance.candidates.find(({ criterion }) => criterion === 'leak through the slot')?.value ?? 0;

describe('a slot', () => {
  it('is refused with the ceiling of its strongest bound where no thickness holds the pressure', () => {
    const at = (energyReleaseRate: string) =>
      designOf(withPaths(slot, { 'laminate.energyReleaseRate': energyReleaseRate }));
    const [weak, weaker] = ['0.2 J/m2', '0.05 J/m2'].map((energy) => at(energy).reasons[0]);
    expect(weak?.text).toContain('no thickness');
    // A ceiling goes with the root of the energy.
    expect((weak?.limit?.value ?? 0) / (weaker?.limit?.value ?? 0)).toBeCloseTo(2, 6);
    expect(weak?.limit?.value).toBeLessThan(weak?.found?.value ?? 0);
  });

  it('is held along the pipe by the modulus along it, the opening grown by both ends and never below 15 mm', () => {
    const design = madeOf(slot);
    const { laminate, found } = design;
    const { designSlot } = found;
    // 12 mm and 70 mm, 0.2 mm a year at each end over ten years.
    expect(designSlot?.axialLength).toBeCloseTo(0.016, 12);
    expect(designSlot?.circumferentialWidth).toBeCloseTo(0.074, 12);
    expect(found.holeAtEndOfLife).toBeCloseTo(Math.hypot(0.016, 0.074), 12);
    expect(laminate.thickness.governing).toBe('leak through the slot');
    // As stiff along the pipe as round it, it holds more over a slot round the pipe; stiffer round it only, no more.
    const along = leakOf(madeOf(withPaths(slot, { 'laminate.axialModulus': '24 GPa' }))) / leakOf(design);
    const round = leakOf(madeOf(withPaths(slot, { 'laminate.hoopModulus': '27 GPa' }))) / leakOf(design);
    expect(along).toBeGreaterThan(1.15);
    expect(Math.abs(round - 1)).toBeLessThan(0.01);
    const small = madeOf(withPaths(slot, { 'defect.slot': { axialLength: '2 mm', circumferentialWidth: '3 mm' } }));
    expect(small.found.designSlot).toEqual({ axialLength: 0.015, circumferentialWidth: 0.015 });
  });

  it('is wider than any strip can hold, and held as a ring', () => {
    const wide = { 'defect.axialLength': '300 mm', 'defect.circumferentialWidth': '300 mm' };
    const [open, wider] = [200, 280].map((mm) =>
      madeOf(
        withPaths(slot, {
          ...wide,
          'defect.slot': { axialLength: `${mm} mm`, circumferentialWidth: `${mm} mm` },
          'service.designPressure': '1 bar',
        }),
      ),
    );
    // Only the half crack still grows with it.
    expect((wider as typeof open)?.laminate.thickness.value).toBeGreaterThanOrEqual(
      open?.laminate.thickness.value ?? 9,
    );
    expect(wider?.laminate.thickness.value).toBeLessThan(1.3 * (open?.laminate.thickness.value ?? 0));
  });

  it('opens over the whole defect once the wall round it is used up', () => {
    const design = designOf(withPaths(slot, { 'defect.remainingWall': '1.5 mm' }));
    expect(design.found?.slotAtEndOfLife).toEqual({
      axialLength: design.found?.lengthAtEndOfLife,
      circumferentialWidth: design.found?.widthAtEndOfLife,
    });
  });

  it('keeps its own extents down to the least wall that counts as one', () => {
    const still = { 'defect.readingError': 'none', 'defect.growth': { depth: '0 mm/year', length: '0 mm/year' } };
    const extents = (remainingWall: string) => {
      const { slotAtEndOfLife } =
        designOf(withPaths(slot, { ...still, 'defect.remainingWall': remainingWall })).found ?? {};
      return [slotAtEndOfLife?.axialLength, slotAtEndOfLife?.circumferentialWidth];
    };
    expect([extents('1 mm'), extents('0.99 mm')]).toEqual([
      [0.012, 0.07],
      [0.04, 0.11],
    ]);
  });

  it('is sealed by a pad for the circle through its corners', () => {
    const { seal } = designOf(withPaths(slot, { seal: withPaths(leak['seal'] as object, { 'pad.multiple': 3 }) }));
    expect(seal === 'none' ? 0 : seal?.padDiameter).toBeCloseTo(3 * Math.hypot(0.012, 0.07), 12);
  });

  it('is thicker under a vacuum, which then governs', () => {
    const { thickness } = madeOf(underVacuum).laminate;
    expect(thickness.governing).toBe('ring buckling under pressure from outside');
    expect(thickness.value).toBeGreaterThan(madeOf(slot).laminate.thickness.value);
  });

  it('has its extents on the page of the survey', () => {
    const text = planText(planWork(madeOf(slot))).replaceAll(/\s+/gu, ' ');
    expect(text).toMatch(/Slot no longer than 12 mm along and 70 mm round the pipe/);
  });
});

describe('the metal beside a slot', () => {
  const refused = (changes: Paths) =>
    designOf(withPaths(slot, changes)).reasons.filter(({ text }) => text.startsWith('at the ends of the slot'));
  const standing = (assessment: Paths): number =>
    refused({ 'service.designPressure': '20 MPa', assessment })[0]?.limit?.value ?? Number.NaN;

  it.each([
    [{ designFactor: 0.5 }, 1 / 0.5],
    [{ safetyFactor: 3 }, 3],
    [{ designFactor: 0.9, safetyFactor: 1.5 }, 1.5],
  ])('stands less by the larger of its factors, 1.25 at least: %j', (assessment, factor) => {
    expect(standing({ designFactor: 1 }) / standing(assessment)).toBeCloseTo(factor / 1.25, 12);
  });

  it('may be at its limit itself, and no more', () => {
    const limit = standing({ designFactor: 0.5 });
    const at = (pascals: number) =>
      refused({ 'service.designPressure': `${pascals} Pa`, assessment: { designFactor: 0.5 } }).length;
    expect([at(limit), at(limit * (1 + 1e-9))]).toEqual([0, 1]);
  });
});

describe('a bend', () => {
  const straight = madeOf(withPaths(bend, { fitting: 'none' }));

  it('is thicker by the larger of 1.2 and its inside', () => {
    const [wide, tight] = ['841.5 mm', '252.45 mm'].map((bendRadius) =>
      madeOf(withPaths(bend, { 'fitting.bendRadius': bendRadius })),
    );
    const t = straight.laminate.thickness.value;
    expect(wide?.laminate.thickness.value).toBeCloseTo(1.2 * t, 12);
    expect(tight?.laminate.thickness.value).toBeCloseTo(1.25 * t, 12);
    expect(tight?.laminate.fittingFactor).toBeCloseTo(1.25, 12);
  });

  it('resists what its laid thickness is worth on straight pipe', () => {
    const [on, off] = [madeOf(bend), straight].map(
      ({ laminate }) => laminate.resistance.value / laminate.laidThickness,
    );
    expect((off ?? 0) / (on ?? 1)).toBeCloseTo(1.2, 10);
  });

  it('is long enough along its inside, and its tape keeps the stated overlap along its outside', () => {
    const { extent, wrap } = madeOf(bend);
    const [R, r] = [0.8415, 0.1683 / 2];
    // Where the turns close up the tape lies thicker, by the share of the radii, and runs out over five times that.
    const passes = wrap.form === 'tape' ? wrap.passes : Number.NaN;
    const taper = (5 * passes * 0.8e-3 * (R + r)) / (0.48 * (R - r));
    expect(extent.insideLength).toBeCloseTo(straight.extent.totalLength - 2 * straight.extent.taper + 2 * taper, 12);
    expect(extent.totalLength).toBeCloseTo(((extent.insideLength ?? 0) * (R + r)) / (R - r), 12);
    expect(wrap.form === 'tape' ? wrap.insideOverlap : 0).toBeCloseTo(1 - (0.48 * (R - r)) / (R + r), 12);
    const text = planText(planWork(madeOf(bend))).replaceAll(/\s+/gu, ' ');
    expect(text).toContain('measured along the outside of the bend');
  });
});

describe('a flange', () => {
  it('takes a tenth more, and says so', () => {
    const [at, off] = [madeOf(withPaths(quietLoss, { fitting: { kind: 'flange' } })), madeOf(quietLoss)];
    expect(at.laminate.thickness.value / off.laminate.thickness.value).toBeCloseTo(1.1, 12);
    expect(at.rules.some(({ name }) => name === 'factor of a flange')).toBe(true);
  });
});
