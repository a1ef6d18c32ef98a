import { describe, expect, it } from 'vitest';
import { calculationSheet } from '../../src/report/index.js';
import { designOf } from './answers.js';
import { loss, withPaths } from './cases.js';

/** A sheet holds what is laid to the time that is allowed, which is the one that decided whether it fits. */

const sheetRow = (soakTime: string) => {
  const design = designOf(withPaths(loss, { 'crew.soakTime': soakTime }));
  const sheet = calculationSheet(design, { units: 'si' }).replace(/\s+/gu, ' ');
  const [, within, verdict] =
    /within (\d+\.\d+) min of a working time of \d+\.\d+ min: (fits|DOES NOT FIT)/u.exec(sheet) ?? [];
  return { minutes: Number(within), verdict, allowed: (design.rolls?.allowedTime ?? Number.NaN) / 60 };
};

describe('the sheet', () => {
  it.each([
    ['1 min', 'fits'],
    ['25 min', 'DOES NOT FIT'],
  ])('names the time by which a soaking of %s is judged', (soakTime, verdict) => {
    const row = sheetRow(soakTime);
    expect(row.verdict).toBe(verdict);
    expect(row.minutes).toBeGreaterThan(row.allowed * 0.99);
    expect(row.minutes).toBeLessThanOrEqual(row.allowed);
  });
});
