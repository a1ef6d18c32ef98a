import { describe, expect, it } from 'vitest';
import { designRepair } from '../../src/repair/index.js';
import { asksFor, caseOf, designOf, madeOf, planOf } from './answers.js';
import { type CaseFile, emptied, leak, live, quietLoss, withPaths } from './cases.js';

/** What two people left open who looked for valid cases that hurt. */

describe('a wall that bears more than the rest of the line', () => {
  const sound = withPaths(quietLoss, { ...live('10 bar'), 'defect.remainingWall': '6.5 mm' });

  it('is no leave to pass the design pressure while people work', () => {
    expect(designOf(sound).line).toMatchObject({ highestPressure: 40e5, limitedBy: 'design pressure' });
  });

  it('is none by a surge either, for which the repair alone is sized', () => {
    const { line } = designOf(withPaths(sound, { 'service.surge': '50 bar' }));
    expect(line).toMatchObject({ highestPressure: 40e5, limitedBy: 'design pressure' });
  });
});

describe('a pressure carried lately that is above the design pressure', () => {
  const read = (pressure: string) =>
    withPaths(quietLoss, { ...live('10 bar'), 'service.recentPressure': { pressure, date: '2026-04-20' } });

  it('is not believed: it is asked for', () => {
    expect(asksFor(read('41 bar'), 'service.recentPressure')).toBe(true);
    expect(asksFor(read('40 bar'), 'service.recentPressure')).toBe(false);
  });
});

describe('a seal on a line that is empty', () => {
  it('is not refused in the record of a design that was made: nothing pushes on it, toxic or not', () => {
    const toxic = withPaths(leak, {
      ...emptied,
      'service.contents': 'sodium cyanide in water',
      'service.hazards': ['toxic'],
      'repair.class': 3,
      'laminate.resists.contents': 'sodium cyanide in water',
      'seal.putty.resists.contents': 'sodium cyanide in water',
    });
    const { verdict, record = [] } = designRepair(caseOf(toxic), { record: true });
    expect(verdict).toBe('designed');
    expect(JSON.stringify(record)).not.toContain('refuse');
  });
});

describe('carbon over an isolating layer', () => {
  it('has the layer on the list of what to bring, for all the steel under the wrap', () => {
    const carbon = { 'laminate.fibre': 'carbon', 'laminate.isolatingLayer': 'one ply of glass' };
    const listed = (file: CaseFile) => planOf(file).materials.find(({ name }) => name.includes('one ply of glass'));
    const laid = madeOf(quietLoss).rolls;
    expect(listed(withPaths(quietLoss, carbon))?.note?.amounts?.[0]?.value).toBeCloseTo(laid.end - laid.start, 9);
    expect(listed(quietLoss)).toBeUndefined();
  });
});

describe('loss from outside round a hole', () => {
  it('is filled like any other: 60 x 45 mm, 5.08 mm deep and 0.2 mm a year at each end', () => {
    const filled = (cause: string): number => {
      const { mixes } = designOf(withPaths(leak, { 'defect.cause': cause }));
      return mixes?.filler === undefined || mixes.filler === 'none' ? Number.NaN : (mixes.filler.volume ?? Number.NaN);
    };
    const more = filled('external corrosion') - filled('internal corrosion');
    expect(more).toBeCloseTo(0.064 * 0.045 * 0.00508, 9);
  });
});

describe('the time that the climate has to hold', () => {
  it('is not known where nobody knows how long the wrap takes: as long as the cure, at least', () => {
    const known = madeOf(quietLoss);
    const { site, timeline } = madeOf(withPaths(quietLoss, { crew: undefined }));
    const cure = timeline.steps.find(({ id }) => id === 'cure')?.duration;
    expect(known.site.holdTime.known).toBe(true);
    expect(site.holdTime).toEqual({
      known: false,
      because: 'the time of "wrap": the case states no crew',
      atLeast: cure?.known === true ? cure.time : Number.NaN,
    });
  });
});

describe('sheet that brings its own resin, in bands', () => {
  it('is laid in time by its longest band, which is the outermost', () => {
    const stock = { wrap: { form: 'sheet', width: '150 mm', rollLength: '20 m' }, resin: 'none' };
    const { rolls } = madeOf(withPaths(quietLoss, stock));
    const lengths = rolls.rolls.map(({ length }) => length);
    expect(rolls.chargeLength).toBe(Math.max(...lengths));
    expect(rolls.chargeLength).toBeGreaterThan(lengths[0] ?? Number.NaN);
  });
});
