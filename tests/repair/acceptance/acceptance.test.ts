import { describe, expect, it } from 'vitest';
import { planWork } from '../../../src/repair/index.js';
import { designOf, madeOf, stepOf } from '../../faults/answers.js';
import { evenLoss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** What a finished repair has to show, and how it is tested. */

const acceptanceOf = (changes: Paths, file = quietLoss) => {
  const { acceptance } = designOf(withPaths(file, changes));
  if (acceptance === undefined) throw new Error('no acceptance');
  return acceptance;
};
const testOf = (changes: Paths) => acceptanceOf(changes).pressureTest;
const onGas: Paths = { 'acceptance.pressureTest.medium': 'gas', 'acceptance.pressureTest.liquid': undefined };

describe('acceptance', () => {
  it('asks for hardness and test where the case says nothing of either, and for nothing where it does', () => {
    const unsaid = acceptanceOf({ acceptance: undefined });
    expect(unsaid.missing.map(({ field }) => field)).toEqual([
      'acceptance.qualifiedHardness',
      'acceptance.pressureTest',
    ]);
    expect(unsaid).not.toHaveProperty('hardness');
    expect(unsaid.pressureTest.medium).toBe('not stated');
    expect(acceptanceOf({}).missing).toEqual([]);
  });

  it('asks for a second look at the bond of a laminate that is too thick for a tap', () => {
    const thin = designOf(withPaths(evenLoss, { 'service.designPressure': '8 bar' }));
    expect(thin.laminate?.laidThickness).toBeLessThan(THICKEST_TAPPED);
    expect(thin.acceptance?.needsSecondMethod).toBe(false);
    const thick = designOf(withPaths(evenLoss, { 'service.designPressure': '55 bar' }));
    expect(thick.laminate?.laidThickness).toBeGreaterThan(THICKEST_TAPPED);
    expect(thick.acceptance?.needsSecondMethod).toBe(true);
    const just = { 'laminate.plyThickness': '1.016 mm', 'service.designPressure': '4 bar' };
    const tied = designOf(withPaths(evenLoss, { ...just, resin: 'none' }));
    expect(tied.laminate?.laidThickness).toBe(THICKEST_TAPPED);
    expect(tied.acceptance?.needsSecondMethod).toBe(false);
  });

  it('counts the readings of a Barcol tester by the softest mean that passes, where its table reaches', () => {
    const readings = (hardness: number) =>
      acceptanceOf({ 'acceptance.hardnessScale': 'Barcol', 'acceptance.qualifiedHardness': hardness }).hardness
        ?.readings;
    expect(readings(60)).toBeGreaterThan(0);
    expect(readings(45) ?? 0).toBeGreaterThanOrEqual(readings(65) ?? Number.NaN);
    expect(readings(10)).toBeUndefined();
    const soft = acceptanceOf({ 'acceptance.hardnessScale': 'Barcol', 'acceptance.qualifiedHardness': 10 });
    expect(soft.hardness).not.toHaveProperty('readings');
    for (const qualified of [60, 75, 90])
      expect(acceptanceOf({ 'acceptance.qualifiedHardness': qualified }).hardness?.readings).toBe(5);
  });
});

describe('the pressure test', () => {
  it('is made by nobody where the case asks for none, and says what is done in its place', () => {
    const none = testOf({ 'acceptance.pressureTest': 'none' });
    expect(none).toMatchObject({ medium: 'none', instead: expect.stringContaining('look for leaks at each step') });
    expect(none).not.toHaveProperty('volume');
    expect(none).not.toHaveProperty('storedEnergy');
  });

  it('with gas keeps people away, and with liquid counts the water that goes in', () => {
    const gas = testOf(onGas);
    expect(gas.distance).toBeGreaterThanOrEqual(30);
    expect(gas.tntEquivalent).toBeGreaterThan(0);
    expect(gas.volume).toBeGreaterThan(0);
    expect(gas).not.toHaveProperty('waterToAdd');
    const water = testOf({});
    expect(water.waterToAdd).toBeGreaterThan(0);
    expect(water.liquid).toBe('fresh water');
    expect(water).not.toHaveProperty('distance');
    expect(gas.storedEnergy ?? 0).toBeGreaterThan(20 * (water.storedEnergy ?? Number.NaN));
    const other = testOf({ 'acceptance.pressureTest.liquid': 'other' });
    expect(other.liquid).toBe('other');
    expect(other).not.toHaveProperty('waterToAdd');
    const said = (liquid: string | undefined) => {
      const { warnings, assumed } = designOf(withPaths(quietLoss, { 'acceptance.pressureTest.liquid': liquid }));
      const warned = (words: string): boolean => warnings.some(({ text }) => text.includes(words));
      const warm = assumed.filter(({ amount }) => amount.name === 'temperature of the test liquid');
      return [
        warned('with another liquid than'),
        warned('does not name the test liquid'),
        warm.map(({ amount }) => amount),
      ];
    };
    const [name, value] = ['temperature of the test liquid', madeOf(quietLoss).case.site.pipeTemperature];
    expect(said('fresh water')).toEqual([false, false, [{ name, kind: 'temperature', value }]]);
    expect(said('other')).toEqual([true, false, []]);
    expect(said(undefined)).toEqual([false, true, []]);
  });

  it('may reach the lowest rating of what hangs on the line, and not pass it', () => {
    const { pressure } = testOf({});
    const refused = (rating: number) =>
      designOf(withPaths(quietLoss, { 'acceptance.pressureTest.lowestRating': `${rating} Pa` })).reasons.filter(
        ({ text }) => text.includes('would overload a flange'),
      );
    expect(refused(pressure)).toEqual([]);
    const [reason] = refused(pressure - 1);
    expect([reason?.found?.value, reason?.limit?.value]).toEqual([pressure, pressure - 1]);
  });

  it('may bring the sound pipe to its yield, and is refused above', () => {
    const { pressure } = testOf({});
    const yields = (strength: number) =>
      designOf(
        withPaths(quietLoss, {
          'pipe.material.yieldStrength': `${strength} Pa`,
          'pipe.material.allowableStress': undefined,
        }),
      ).reasons.some(({ text }) => text.includes('would make the sound pipe yield'));
    const { outsideDiameter = Number.NaN, wallThickness } = madeOf(quietLoss).case.pipe;
    const stress = (pressure * outsideDiameter) / (2 * wallThickness);
    expect(yields(stress * 1.0001)).toBe(false);
    expect(yields(stress)).toBe(false);
    expect(yields(stress * 0.9999)).toBe(true);
  });

  it('is warned of where the laminate resists less that day, with both numbers', () => {
    const warned = (changes: Paths) =>
      designOf(withPaths(quietLoss, changes)).warnings.filter(({ text }) =>
        text.includes('lies above what the laid laminate resists'),
      );
    const { pressure, resistance } = madeOf(quietLoss).acceptance.pressureTest;
    expect(warned({})).toHaveLength(resistance < pressure ? 1 : 0);
    for (const bar of [10, 20, 30, 40, 50]) {
      const changes = { 'service.designPressure': `${bar} bar` };
      const test = testOf(changes);
      const told = warned(changes);
      expect(told.map(({ amounts }) => amounts?.map(({ value }) => value))).toEqual(
        test.resistance < test.pressure ? [[test.pressure, test.resistance]] : [],
      );
      expect(warned({ ...changes, 'acceptance.pressureTest': 'none' })).toEqual([]);
    }
    // As warm in service as on the day: nothing of the heat is left over for the test.
    const asWarm = { 'service.designPressure': '45 bar', 'service.designTemperature': '25 degC' };
    expect(warned(asWarm)).toHaveLength(1);
    expect(warned({ ...asWarm, 'acceptance.pressureTest': 'none' })).toEqual([]);
  });

  it('is stopped at the least of what bounds it: laminate, level and what hangs on the line', () => {
    const governing = new Set<string>();
    for (const bar of [22, 34, 38])
      for (const rating of [1.02, 2]) {
        const design = madeOf(
          withPaths(evenLoss, {
            'service.designPressure': `${bar} bar`,
            'pipe.material.allowableStress': undefined,
            'acceptance.pressureTest.lowestRating': `${1.1 * bar * rating} bar`,
          }),
        );
        const { pressure, resistance } = design.acceptance.pressureTest;
        expect(resistance).toBeGreaterThan(pressure);
        const { name, value } = [
          { name: 'what the laminate resists', value: resistance },
          { name: 'the test pressure with what it may be over', value: 1.05 * pressure },
          { name: 'the lowest rating', value: 1.1 * bar * rating * 1e5 },
        ].reduce((least, each) => (each.value < least.value ? each : least));
        const [stop] = stepOf(planWork(design), 'pressure-test').stops;
        expect(stop?.text).toContain(`on the gauge, ${name}`);
        expect(stop?.amounts?.[0]?.value).toBeCloseTo(value, 3);
        governing.add(name);
      }
    expect(governing.size).toBe(3);
  });

  it('is judged by what the laminate resists on that day, cooler and before anything grows', () => {
    const grown = {
      'service.designTemperature': '60 degC',
      'service.lowestTemperature': '5 degC',
    };
    const { laminate, acceptance } = madeOf(withPaths(quietLoss, grown));
    const today = madeOf(withPaths(quietLoss, { 'service.designTemperature': '25 degC' }));
    const share = acceptance.pressureTest.resistance / laminate.laidThickness;
    expect(share / (today.laminate.resistance.value / today.laminate.laidThickness)).toBeCloseTo(1, 6);
    expect(acceptance.pressureTest.resistance).toBeGreaterThan(laminate.resistance.value);
  });
});

/** A tap tells a hollow up to this thickness: 0.08 in. */
const THICKEST_TAPPED = 0.002032;
