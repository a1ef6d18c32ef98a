import { describe, expect, it } from 'vitest';
import { energyFromTests } from '../../../src/laminate/index.js';
import { energyReleaseRate, gauge, type Length, length } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { leaking, sealed } from '../example-case.js';

/** The bond of a laminate over a leak, by the maker's tests of holes. */

const holeTests = [10, 10, 10, 15, 15, 15, 25, 25, 25].map((diameter, i) => ({
  holeDiameter: length.mm(diameter),
  laminateThickness: length.mm(6),
  pressure: gauge.MPa([29, 27, 31, 21, 20, 22.5, 12.6, 13.4, 11.8][i] as number),
}));
const withTests = (tests: typeof holeTests, more: Partial<RepairCase['laminate']> = {}): RepairCase => ({
  ...leaking,
  laminate: { ...leaking.laminate, energyReleaseRate: undefined, holeTests: tests, ...more },
});
const { hoopModulus, axialModulus, poissonRatio, shearModulus } = leaking.laminate;
const moduli = {
  hoopModulus,
  axialModulus,
  poissonRatio,
  shearModulus: shearModulus as NonNullable<typeof shearModulus>,
};

describe('a laminate whose bond is known by tests of holes', () => {
  it('is that of a laminate whose maker states their lower confidence limit', () => {
    const { lowerLimit } = energyFromTests({ tests: holeTests, ...moduli });
    const stated = { ...leaking, laminate: { ...leaking.laminate, energyReleaseRate: lowerLimit } };
    const [byTests, byValue] = [designRepair(withTests(holeTests)), designRepair(stated)];
    expect(byTests.verdict).toBe('designed');
    expect(byTests.laminate).toEqual(byValue.laminate);
  });

  it('asks for more over the leak where every hole leaked at less', () => {
    const over = (tests: typeof holeTests): number => {
      const candidates = designRepair(withTests(tests)).laminate?.thickness.candidates ?? [];
      return candidates.find(({ criterion }) => /leak|hole/u.test(criterion))?.value ?? Number.NaN;
    };
    const weaker = holeTests.map((each) => ({ ...each, pressure: gauge.MPa(gauge.inMPa(each.pressure) * 0.8) }));
    expect(over(weaker)).toBeGreaterThan(over(holeTests));
  });

  it('is not designed by eight tests, nor by two sizes of hole', () => {
    const few = designRepair(withTests(holeTests.slice(1)));
    expect(few.verdict).toBe('not covered');
    expect(JSON.stringify(few)).toMatch(/tests of holes: tests is .* for a lower confidence limit/u);
    const alike = designRepair(withTests(holeTests.map((each) => ({ ...each, holeDiameter: length.mm(15) }))));
    expect(alike.verdict).toBe('not covered');
    expect(JSON.stringify(alike)).toMatch(/sizes of hole/u);
  });

  it('waits for the shear modulus by which the tests are read, and for nothing else of the bond', () => {
    const open = designRepair(withTests(holeTests, { shearModulus: undefined }));
    expect(open.verdict).toBe('needs input');
    const asked = open.missing.map(({ field }) => field);
    expect(asked).toContain('laminate.shearModulus');
    expect(asked).not.toContain('laminate.energyReleaseRate');
  });
});

describe('a bond that was tested over a seal', () => {
  const footprint = designRepair(sealed).laminate?.footprint?.diameter ?? (0 as Length);
  /** Less than the bond to steel, and found over a rim itself: it is not lowered for its worst place. */
  const testedOver = (share: number) => {
    const rate = energyReleaseRate.JPerM2(150);
    const over = { energyReleaseRate: rate, footprint: (footprint * share) as Length };
    return designRepair({ ...sealed, laminate: { ...sealed.laminate, energyReleaseRateOverSeal: over } });
  };

  it('counts for a footprint as large as it was tested over, and not for a larger one', () => {
    const [smaller, alike, larger] = [1 - 1e-9, 1, 1.1].map(testedOver);
    expect(alike?.laminate?.footprint?.diameter).toBe(footprint);
    expect(alike?.laminate?.thickness.value).toBe(larger?.laminate?.thickness.value);
    expect(smaller?.laminate?.thickness.value).toBeGreaterThan(1.5 * (alike?.laminate?.thickness.value ?? Number.NaN));
  });
});
