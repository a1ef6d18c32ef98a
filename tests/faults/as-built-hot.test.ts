import { describe, expect, it } from 'vitest';
import { arealWeight, temperature, time } from '../../src/quantity/index.js';
import { type AsBuiltRecord, compareAsBuilt } from '../../src/repair/index.js';
import { madeOf } from './answers.js';
import { loss, quietLoss, withPaths } from './cases.js';
import { goodRecord } from './records.js';

/** What a second attacker got past a record. */

const design = madeOf(quietLoss);
const verdictOn = (point: string, change: Partial<AsBuiltRecord>, of = design) =>
  compareAsBuilt(of, { ...goodRecord(of), ...change }).points.find((each) => each.point === point)?.verdict;

describe('a batch on a hot noon', () => {
  const hot = goodRecord(design).climate?.map((read) => ({ ...read, airTemperature: temperature.degC(40) })) ?? [];
  const within = (minutes: number) =>
    goodRecord(design).batches?.map((batch) => ({ ...batch, usedWithin: time.minute(minutes) })) ?? [];

  it('gels in a third of the time that it has at 25 degC', () => {
    expect(verdictOn('batches', { batches: within(20) })).toBe('meets');
    expect(verdictOn('batches', { batches: within(20), climate: hot })).toBe('does not meet');
    expect(verdictOn('batches', { batches: within(5), climate: hot })).toBe('meets');
  });

  it('has a number that is one', () => {
    const batches = within(5).map((batch, index) => (index === 0 ? { ...batch, number: 'TBD' } : batch));
    expect(verdictOn('batches', { batches })).toBe('not shown');
  });
});

describe('steel on a hot day', () => {
  const on = (degC: number, testedTo: string) => {
    const filled = madeOf(withPaths(loss, { 'filler.cure.testedTo': testedTo }));
    const climate = goodRecord(filled).climate?.map((read) => ({ ...read, steelTemperature: temperature.degC(degC) }));
    return verdictOn('climate', { climate }, filled);
  };

  it('is no hotter than the filler was tested, though the laminate was tested hotter', () => {
    expect([on(34, '40 degC'), on(36, '40 degC')]).toEqual(['meets', 'meets']);
    expect([on(34, '35 degC'), on(36, '35 degC')]).toEqual(['meets', 'does not meet']);
    // The laminate was tested to 40 degC.
    expect([on(40, '60 degC'), on(41, '60 degC')]).toEqual(['meets', 'does not meet']);
  });
});

describe('filler under a wrap that is laid over many days', () => {
  const filled = madeOf(loss);
  const days = (...laid: readonly string[]) => {
    let at = 0;
    const batches = goodRecord(filled).batches?.map((batch) =>
      batch.use === 'filler' ? batch : { ...batch, mixedOn: laid[Math.min(at++, laid.length - 1)] ?? '' },
    );
    return verdictOn('filler age', { batches: batches ?? [] }, filled);
  };

  it('lies open until the last batch of resin is laid, whatever was laid before', () => {
    expect(days('2026-06-01')).toBe('meets');
    expect(days('2026-06-01', '2026-06-01', '2026-06-20')).toBe('does not meet');
    expect(days('2026-06-20', '2026-06-01', '2026-06-01')).toBe('does not meet');
    expect(days('2026-05-31')).toBe('does not meet');
  });

  it('may lie for the two days that practice allows, and says how long it lay', () => {
    expect(days('2026-06-03')).toBe('meets');
    const batches = goodRecord(filled).batches?.map((batch) =>
      batch.use === 'filler' ? batch : { ...batch, mixedOn: '2026-06-20' },
    );
    const { points } = compareAsBuilt(filled, { ...goodRecord(filled), batches, laidOn: undefined });
    const lay = points.find(({ point }) => point === 'filler age');
    expect(lay?.amounts?.[0]?.value).toBe(19 * 86_400);
  });
});

describe('hardness on another scale', () => {
  const barcol = madeOf(
    withPaths(quietLoss, { 'acceptance.hardnessScale': 'Barcol', 'acceptance.qualifiedHardness': 40 }),
  );
  const readings = (scale: 'Shore D' | 'Barcol') => ({
    hardness: { readings: Array.from({ length: 40 }, () => 40), hasStopped: true, scale },
  });

  it('is none', () => {
    expect(verdictOn('hardness', readings('Barcol'), barcol)).toBe('meets');
    expect(verdictOn('hardness', readings('Shore D'), barcol)).toBe('not shown');
    const { scale: _, ...unnamed } = readings('Barcol').hardness;
    expect(verdictOn('hardness', { hardness: unnamed as never }, barcol)).toBe('not shown');
  });
});

describe('the salts of prepared steel', () => {
  const salts = (readings: readonly number[]): Partial<AsBuiltRecord> => {
    const { steel } = goodRecord(design);
    if (steel === undefined) throw new Error('no steel');
    return { steel: { ...steel, salts: readings.map((mg) => arealWeight.gPerM2(mg / 1000)) } };
  };

  it('are no mean: one place of 35 mg/m2 among clean ones is too salty', () => {
    expect(verdictOn('steel', salts([1, 1, 1, 1, 1]))).toBe('meets');
    expect(verdictOn('steel', salts([35, 1, 1, 1, 1]))).toBe('does not meet');
  });
});

describe('two batches with one number', () => {
  it('are not told apart', () => {
    const batches = goodRecord(design).batches?.map((batch) => ({ ...batch, number: '7' })) ?? [];
    expect(batches.length).toBeGreaterThan(1);
    expect(verdictOn('batches', { batches })).toBe('not shown');
  });
});
