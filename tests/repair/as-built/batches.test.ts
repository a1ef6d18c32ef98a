import { describe, expect, it } from 'vitest';
import type { AsBuiltPoint, BatchRecord, Designed } from '../../../src/repair/index.js';
import { madeOf } from '../../faults/answers.js';
import { emptied, loss, type Paths, withPaths } from '../../faults/cases.js';
import { compared, goodRecord } from '../../faults/records.js';
import { present } from '../by-use.js';

/** What was mixed, on which days and for how many layers; surveyed on 6 May 2026, 15 per cent of waste in either mix. */

const design = madeOf(withPaths(loss, { ...emptied, 'filler.waste': '15 %' }));
const good: readonly BatchRecord[] = goodRecord(design).batches ?? [];

const pointWith = (changes: Paths, of: Designed = design): AsBuiltPoint | undefined =>
  compared(of, changes).points.find(({ point }) => point === 'batches');

const scaled = (use: BatchRecord['use'], by: number): BatchRecord[] =>
  good.map((batch) =>
    batch.use === use ? ({ ...batch, base: batch.base * by, hardener: batch.hardener * by } as BatchRecord) : batch,
  );

describe('the batches of a record', () => {
  it('are counted where they are good', () => {
    expect(pointWith({})).toMatchObject({
      text: expect.stringMatching(/^\{0\} batches in their ratio/u),
      amounts: [{ kind: 'count', value: good.length }],
    });
  });

  it('are more of resin where more layers were laid than planned, and of filler as many as before', () => {
    const planned = Math.max(design.laminate.plies, design.wrap.layers);
    const more = (batches: BatchRecord[]) => pointWith({ layers: planned + 2, batches });
    const least = (planned + 2) / planned / 1.15;
    const short = more(scaled('laminate resin', least * 0.999));
    expect(short?.verdict).toBe('does not meet');
    expect(short?.text).toMatch(/^laminate resin: \{0\} mixed of \{1\}/u);
    expect(short?.amounts?.[1]?.value).toBeCloseTo(present(design.mixes.laminateResin).mass * least, 9);
    const enough = scaled('laminate resin', least * 1.000001);
    expect(more(enough)?.verdict).toBe('meets');
    const filler = scaled('filler', 1.000001 / 1.15).filter(({ use }) => use === 'filler');
    const resin = enough.filter(({ use }) => use === 'laminate resin');
    expect(more([...filler, ...resin])?.verdict).toBe('meets');
  });

  it('show how much was mixed at once where it is far more than planned', () => {
    const { batchMass } = present(design.mixes.laminateResin);
    const amounts = pointWith({ batches: scaled('laminate resin', 3) })?.amounts?.map(({ value }) => value) ?? [];
    expect(amounts[0]).toBeCloseTo(3 * batchMass, 9);
    expect(amounts[1]).toBe(batchMass);
  });
});

describe('the days of a record', () => {
  const onDays = (
    mixedOn: readonly (string | undefined)[],
    changes: Paths = {},
    pack: object = { useBefore: '2027-06-01' },
  ) => {
    const filler = good.filter(({ use }) => use === 'filler').map((each) => ({ ...each, useBefore: '2026-06-01' }));
    const resin = good.filter(({ use }) => use === 'laminate resin');
    const laid = resin.map(({ useBefore: _, ...batch }, index) => ({
      ...batch,
      ...pack,
      number: `R ${index + 1}`,
      mixedOn: mixedOn[Math.min(index, mixedOn.length - 1)],
    }));
    return pointWith({ batches: [...filler, ...laid], laidOn: undefined, ...changes });
  };
  const SET = 'layers that had set';

  it.each([
    ['one day', ['2026-06-01'], false],
    ['a night through', ['2026-06-01', '2026-06-02'], false],
    ['three days', ['2026-06-01', '2026-06-02', '2026-06-03'], true],
    ['three days, the last one first', ['2026-06-03', '2026-06-02', '2026-06-01'], true],
    ['three days, one of them recorded by nobody', ['2026-06-01', '2026-06-03', undefined], true],
  ])('lay layers on those that had set only where they are more than two: %s', (_, days, isSaid) => {
    expect(onDays(days)?.text.includes(SET)).toBe(isSaid);
    expect(onDays(days)?.verdict).toBe(isSaid ? 'not shown' : 'meets');
  });

  it('are none before the survey, whatever else nobody recorded', () => {
    const early = onDays([undefined, '2026-05-05']);
    expect(early?.verdict).toBe('does not meet');
    expect(early?.text).toContain('laid on 2026-05-05, before the survey of this design on 2026-05-06');
    expect(onDays(['2026-05-06'])?.text).not.toContain('before the survey');
    const undated = madeOf(withPaths(loss, { ...emptied, date: undefined }));
    const resin = (goodRecord(undated).batches ?? []).map((batch) => ({ ...batch, mixedOn: '2020-01-01' }));
    expect(pointWith({ batches: resin, laidOn: '2020-01-01' }, undated)?.verdict).toBe('meets');
  });

  it('are those up to the last day of the resin, and not that of the filler', () => {
    const days = ['2026-06-01'];
    const laid = (laidOn: string) => onDays(days, { laidOn }, { useBefore: '2026-06-02' });
    expect(laid('2026-06-02')?.verdict).toBe('not shown');
    const late = laid('2026-06-03');
    expect(late?.verdict).toBe('does not meet');
    expect(late?.text).toBe(
      [1, 2, 3, 4, 5].map((n) => `batch R ${n}: laid on 2026-06-03, to be used before 2026-06-02`).join('; '),
    );
    // The date of a pack that nobody recorded is open, and laid too late on no day.
    const undated = onDays(days, { laidOn: '2026-06-03' }, {});
    expect(undated?.verdict).toBe('not shown');
  });
});
