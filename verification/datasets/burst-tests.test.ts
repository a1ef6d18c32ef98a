import { describe, expect, it } from 'vitest';
import {
  type BurstMethod,
  burstMethods,
  burstPredictions,
  burstStatistics,
  readBurstTests,
  zhouHuang2012,
} from './burst-tests.js';

/** Overall statistics worked out by hand, outside this library, when the list was put together: mean, deviation, n. */
const worked: Readonly<Record<BurstMethod, readonly [mean: number, deviation: number, n: number]>> = {
  'original B31G': [0.696, 0.189, 81],
  'modified B31G': [0.851, 0.216, 81],
  'DNV-RP-F101': [0.9, 0.161, 63],
};

/** Means by primary publication from the same hand: original B31G, modified B31G, DNV. */
const byPublication: Readonly<Record<string, readonly (number | undefined)[]>> = {
  BEN2000: [0.668, 1.107, 0.918],
  KV1989: [0.545, 0.76, 0.749],
  MOK1991: [0.909, 1.064, 1.045],
  FRE2006: [0.716, 1.103, 0.986],
  BEN2005: [0.851, 0.802, 0.917],
  CHO2003: [0.884, 0.872, 1.117],
  CRO2000: [0.721, 0.803, 0.863],
  CHA2009: [0.908, 1.036, 0.963],
  SOU2007: [0.493, 0.608, undefined],
  BEN2016: [0.582, 0.67, undefined],
};

const statistics = burstStatistics();
const of = (method: BurstMethod, group: string) =>
  statistics.find((row) => row.method === method && row.group === group);

describe('the list of burst tests', () => {
  it('has 90 tests: 5 of sound pipe, 82 with longitudinal defects, 3 with grooves in other directions', () => {
    const tests = readBurstTests();
    expect(tests).toHaveLength(90);
    expect(new Set(tests.map(({ id }) => id)).size).toBe(90);
    expect(tests.filter(({ orientation }) => orientation === 'none')).toHaveLength(5);
    expect(tests.filter(({ orientation }) => orientation === 'longitudinal')).toHaveLength(82);
    expect(tests.filter(({ burst, wallThickness }) => !(burst > 0 && wallThickness > 0))).toEqual([]);
  });

  it('keeps the commas of quoted cells out of the columns', () => {
    const test = readBurstTests().find(({ id }) => id === 'BEN2000-TS3.2');
    expect(test?.flags).toContain('L 488.7 (A) vs 484 (B)');
    expect(test?.publication).toContain('IPC2000');
    expect(test?.crossCheck).toBe('A+B');
  });
});

describe('predicted over measured burst pressure', () => {
  it.each(burstMethods)('of %s keeps its mean and deviation within 0.001', (method) => {
    const [mean, deviation, n] = worked[method];
    const found = of(method, 'all');
    expect(found?.n).toBe(n);
    expect(Math.abs((found?.mean ?? 0) - mean)).toBeLessThan(0.001);
    expect(Math.abs((found?.deviation ?? 0) - deviation)).toBeLessThan(0.001);
  });

  it.each(Object.entries(byPublication))('in %s keeps its means within 0.001', (group, means) => {
    burstMethods.forEach((method, index) => {
      const mean = means[index];
      const found = of(method, group);
      if (mean === undefined) expect(found).toBeUndefined();
      else expect(Math.abs((found?.mean ?? 0) - mean), method).toBeLessThan(0.001);
    });
  });

  it('ranks the methods as the published comparison does: original B31G gives most away', () => {
    const means = burstMethods.map((method) => of(method, 'all')?.mean ?? 0);
    expect([...means].sort((a, b) => a - b)).toEqual(means);
  });

  it('lies within 0.1 of the inverse of the published comparison, which had other tests', () => {
    const compared = burstMethods.filter((method) => zhouHuang2012[method] !== undefined);
    expect(compared).toEqual(['original B31G', 'modified B31G']);
    for (const method of compared) {
      const published = 1 / (zhouHuang2012[method] ?? Number.NaN);
      expect(Math.abs((of(method, 'all')?.mean ?? 0) - published), method).toBeLessThan(0.1);
    }
  });

  it('shows its outlier, a test that modified B31G overrates by more than half', () => {
    const worst = burstPredictions().reduce((most, next) => (next.ratio > most.ratio ? next : most));
    expect([worst.test.group, worst.method]).toEqual(['HEZ2024', 'modified B31G']);
    expect(worst.ratio).toBeCloseTo(1.59, 1);
  });
});
