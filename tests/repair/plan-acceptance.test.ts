import { describe, expect, it } from 'vitest';
import {
  absolute,
  energyReleaseRate,
  type Length,
  length,
  roundedUp,
  stress,
  temperature,
} from '../../src/quantity/index.js';
import { compareAsBuilt, designRepair, planWork, type RepairCase } from '../../src/repair/index.js';
import { calculationSheet } from '../../src/report/index.js';
import { designed, listed, present } from './by-use.js';
import { leaking, partWall } from './example-case.js';
import { planned, plannedLeak } from './plan-cases.js';

const acceptanceOf = (repairCase: RepairCase) => {
  const { acceptance } = designRepair(repairCase);
  if (acceptance === undefined) throw new Error('no acceptance');
  return acceptance;
};
const tested = (test: NonNullable<RepairCase['acceptance']>['pressureTest']): RepairCase => ({
  ...planned,
  acceptance: { hardnessScale: 'Shore D', qualifiedHardness: 80, pressureTest: test },
});

describe('the acceptance of a design', () => {
  it('asks for 90 per cent of the qualified hardness as the mean, and for no reading below 80', () => {
    expect(acceptanceOf(planned).hardness).toMatchObject({ leastMean: 72, leastSingle: 64, readings: 5 });
  });

  it('lists the hardness that nobody stated as missing, and leaves the design as it is', () => {
    const { hardness, missing } = acceptanceOf(partWall);
    expect(hardness).toBeUndefined();
    expect(missing.map(({ field }) => field)).toContain('acceptance.qualifiedHardness');
    expect(designRepair(partWall)).toMatchObject({ verdict: 'designed', missing: [] });
  });

  it('asks for the thickness and the overlap of the design, and every visual limit', () => {
    const design = designRepair(planned);
    const { leastThickness, leastOverlap, highestWrinkle, inspection, needsSecondMethod } = acceptanceOf(planned);
    expect(leastThickness).toBe(design.laminate?.thickness.value);
    expect(leastOverlap).toBe(design.extent?.overlap.value);
    expect(highestWrinkle).toBeCloseTo(Math.min(0.0025, 0.2 * (design.laminate?.laidThickness ?? 0)), 12);
    expect(inspection.length).toBeGreaterThan(10);
    expect(needsSecondMethod).toBe((design.laminate?.laidThickness ?? 0) > 0.002032);
  });
});

describe('the least thickness', () => {
  /** Qualified with more plies than the pressure asks for. */
  const thin: RepairCase = {
    ...planned,
    laminate: { ...planned.laminate, qualifiedPlies: (designRepair(planned).laminate?.plies ?? 0) + 3 },
  };

  it('is that of the fewest plies where they decide, in the design, on the plan, on the sheet and as built', () => {
    const design = designed(thin);
    const least = design.laminate.leastPlies * thin.laminate.plyThickness;
    expect(least).toBeGreaterThan(design.laminate.thickness.value);
    expect(design.acceptance.leastThickness).toBeCloseTo(least, 15);
    const goes = planWork(design).steps.find(({ id }) => id === 'inspection')?.goes ?? [];
    expect(goes.flatMap(({ amounts = [] }) => amounts)).toContainEqual(
      roundedUp('thickness', 'length', design.acceptance.leastThickness),
    );
    expect(calculationSheet(design)).toMatch(new RegExp(`Thickness, least +${(1000 * least).toPrecision(4)} mm`));
    const verdict = (thickness: number) =>
      compareAsBuilt(design, { thickness: thickness as Length }).points.find(({ point }) => point === 'thickness');
    expect(verdict(least)?.verdict).toBe('meets');
    expect(verdict(least * 0.999)).toMatchObject({ verdict: 'does not meet', limit: { value: least } });
  });
});

describe('the pressure test of a design', () => {
  it('is at 1.1 times the design pressure, held for an hour', () => {
    const { pressureTest } = acceptanceOf(planned);
    expect(pressureTest.pressure).toBeCloseTo(1.1 * 4e6, 3);
    expect(pressureTest.hold).toBe(3600);
  });

  it('with liquid takes the bore times the length, and what compression and stretch ask for besides', () => {
    const { pressureTest } = acceptanceOf(planned);
    const [D, t, L, P] = [0.3239, 0.00838, 30, 4.4e6];
    const volume = (Math.PI / 4) * (D - 2 * t) ** 2 * L;
    expect(pressureTest.volume).toBeCloseTo(volume, 9);
    // Second route: compressed water and widened pipe, added to first order and then the product of both.
    const compressed = (4.5e-5 * P) / 101559.77492836995;
    // The modulus is that of the case, 207 GPa.
    const widened = ((D / t) * 0.91 * P) / 207e9;
    const added = volume * ((1 + widened) / (1 - compressed) - 1);
    expect(pressureTest.waterToAdd).toBeCloseTo(added, 9);
  });

  it('with liquid says how a blocked line moves with one kelvin: up when it warms well above 4 degC', () => {
    const warm = acceptanceOf({
      ...planned,
      site: { ...planned.site, pipeTemperature: temperature.degC(25), forecast: undefined },
    });
    const cool = acceptanceOf({
      ...planned,
      site: { ...planned.site, pipeTemperature: temperature.degC(12), forecast: undefined },
    });
    expect(warm.pressureTest.pressurePerKelvin).toBeGreaterThan(cool.pressureTest.pressurePerKelvin ?? 0);
    // About (beta - 2 (1 + nu) alpha) / (1/B + D (1 - nu^2) / (t E)) with beta of water at 25 degC, 2.57e-4 1/K.
    const hand = (2.57e-4 - 2 * 1.3 * 11.7e-6) / (1 / 2.2e9 + (38.65 * 0.91) / 207e9);
    expect(Math.abs((warm.pressureTest.pressurePerKelvin ?? 0) / hand - 1)).toBeLessThan(0.05);
  });

  it('outside the table of water says nothing of it, and keeps the rest', () => {
    const hot = acceptanceOf({
      ...planned,
      site: {
        ...planned.site,
        pipeTemperature: temperature.degC(39),
        airTemperature: temperature.degC(39),
        forecast: undefined,
      },
    });
    expect(hot.pressureTest.waterToAdd).toBeUndefined();
    expect(hot.pressureTest.volume).toBeGreaterThan(0);
    expect(designRepair(planned).verdict).toBe('designed');
  });

  it('with gas stores far more, with a distance for people and a warning', () => {
    const gas = { medium: 'gas', length: length.m(30), atmosphere: absolute.bar(1.013) } as const;
    const liquid = acceptanceOf(planned).pressureTest.storedEnergy ?? 0;
    const { pressureTest } = acceptanceOf(tested(gas));
    expect(pressureTest.storedEnergy).toBeGreaterThan(50 * liquid);
    expect(pressureTest.tntEquivalent).toBeCloseTo((pressureTest.storedEnergy ?? 0) / 4266920, 12);
    expect(pressureTest.distance).toBeGreaterThanOrEqual(30);
    expect(designRepair(tested(gas)).warnings.some(({ text }) => text.includes('test with liquid'))).toBe(true);
  });

  it('that is not made says what takes its place; where nobody decided, it says so', () => {
    const none = acceptanceOf(tested('none')).pressureTest;
    expect(none).toMatchObject({ medium: 'none' });
    expect(none.instead).toMatch(/steps/);
    expect(acceptanceOf(partWall).pressureTest.medium).toBe('not stated');
  });

  it('is refused where the sound pipe would yield under it', () => {
    const yielding = (MPa: number): RepairCase => ({
      ...planned,
      pipe: {
        ...planned.pipe,
        material: { ...planned.pipe.material, yieldStrength: stress.MPa(MPa), allowableStress: undefined },
      },
    });
    const warns = (MPa: number) =>
      designRepair(yielding(MPa)).reasons.some(({ text }) => text.includes('would make the sound pipe yield'));
    const hoop = (1.1 * 4 * 323.9) / (2 * 8.38);
    expect([warns(hoop * 1.001), warns(hoop * 0.999)]).toEqual([false, true]);
  });
});

describe('filler under the whole wrap', () => {
  if (leaking.filler === 'none') throw new Error('expected a filler');
  const { filler } = leaking;
  const whole = (over?: number): RepairCase => ({
    ...leaking,
    filler: {
      ...filler,
      underWholeWrap: true,
      ...(over === undefined ? {} : { qualifiedOverFiller: { energyReleaseRate: energyReleaseRate.JPerM2(over) } }),
    },
  });

  it('is not covered, unless the system was qualified over filler', () => {
    expect(designRepair(whole())).toMatchObject({ verdict: 'not covered' });
    expect(designRepair(whole()).reasons[0]?.text).toMatch(/qualified over filler/);
    expect(designRepair(whole(90)).verdict).toBe('designed');
  });

  it('takes the energy release rate of that bond in place of the one to steel', () => {
    const steel = { ...leaking, laminate: { ...leaking.laminate, energyReleaseRate: energyReleaseRate.JPerM2(90) } };
    const over = designRepair(whole(90)).laminate?.resistance.candidates;
    expect(over).toEqual(designRepair(steel).laminate?.resistance.candidates);
    expect(over).not.toEqual(designRepair(leaking).laminate?.resistance.candidates);
  });

  it('takes filler for the whole length of the wrap', () => {
    const volume = (repairCase: RepairCase) => present(designRepair(repairCase).mixes?.filler).volume ?? 0;
    expect(volume(whole(180))).toBeGreaterThan(1.5 * volume(leaking));
  });
});

describe('a sealed leak', () => {
  it('has the times of its putty beside those of filler and laminate, each by its use', () => {
    const cures = listed(present(designRepair(plannedLeak).cures));
    expect(cures.map(([use, { material }]) => [use, material])).toEqual([
      ['putty', 'hand-kneaded putty'],
      ['filler', 'epoxy filler'],
      ['laminate', 'glass/epoxy'],
    ]);
  });
});
