import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** What is asked before anybody signs, and in which words. */

const missingOf = (changes: Paths) => designOf(withPaths(quietLoss, changes)).missing;

describe('the fibre', () => {
  const stiff = { 'laminate.hoopModulus': '46 GPa' };
  it.each([
    ['carbon', { 'laminate.fibre': 'carbon' }, 'the fibre is carbon:', 'The fibre is carbon: first lay'],
    ['stiffer than glass', stiff, 'the fibre is called glass, and', 'The fibre is as stiff as carbon: first lay'],
  ])('is called what it is, asked for its isolating layer and told to the crew: %s', (_, changes, asked, told) => {
    expect(missingOf(changes)).toMatchObject([
      { field: 'laminate.isolatingLayer', why: expect.stringMatching(new RegExp(`^${asked}`, 'u')) },
    ]);
    const isolated = withPaths(quietLoss, { ...changes, 'laminate.isolatingLayer': 'one ply of glass' });
    const warned = designOf(isolated).warnings.filter(({ step }) => step === 'wrap');
    expect(warned.some(({ text }) => text.startsWith(`${told} one ply of glass`))).toBe(true);
  });
});

describe('a held line', () => {
  it('is asked for, and for its coldest only where it is held', () => {
    const fields = (heldLine: unknown) =>
      missingOf({ 'loads.heldLine': heldLine, 'service.lowestTemperature': undefined }).map(({ field }) => field);
    expect(fields(undefined)).toEqual(['loads.heldLine']);
    expect(fields('none')).toEqual([]);
    expect(fields({ tieInTemperature: '25 degC' })).toContain('service.lowestTemperature');
  });
});

describe('a line in soil that is called free to move', () => {
  it('is warned of, since soil holds it', () => {
    const soil = { cover: '1 m', density: '2000 kg/m3', waterAbove: 'none', traffic: 'none' };
    const told = (changes: Paths) =>
      designOf(withPaths(quietLoss, { 'pipe.cathodicProtection': 'none', ...changes })).warnings.filter(({ text }) =>
        text.includes('free to move along itself, and it lies in soil'),
      ).length;
    const held = { 'loads.heldLine': { tieInTemperature: '25 degC' }, 'service.lowestTemperature': '0 degC' };
    expect([told({}), told({ 'loads.soil': soil }), told({ 'loads.soil': soil, ...held })]).toEqual([0, 1, 0]);
  });
});

describe('service that cracks steel', () => {
  it.each([
    [undefined, /with its method and day$/u],
    ['visual, good light', /names no method that finds cracks/u],
  ])('asks for a test, and for one that finds cracks: %s', (method, why) => {
    const test = method === undefined ? undefined : { method, result: 'no crack found', date: '2026-05-04' };
    const missing = missingOf({ 'service.cracking': { environment: 'stress corrosion', test } });
    expect(missing).toMatchObject([{ field: 'service.cracking.test', why: expect.stringMatching(why) }]);
  });
});
