import { describe, expect, it } from 'vitest';
import type { AsBuiltPointName } from '../../src/repair/index.js';
import { madeOf } from './answers.js';
import { leak, loss, type Paths, quietLoss, withPaths } from './cases.js';
import { barRatedFor, compared, pointOf } from './records.js';

/** What a design did not ask for and the record states all the same is not passed over. */

const wallLoss = madeOf(loss);
const thin: Paths = { thickness: wallLoss.laminate.thickness.value * 0.95 };

describe('a repair of a wall loss', () => {
  it.each<[string, AsBuiltPointName, Paths]>([
    ['under which preparation opened a hole', 'hole', { 'survey.hole': 0.01 }],
    [
      'under which preparation opened a slot',
      'slot',
      { 'survey.slot': { axialLength: 0.012, circumferentialWidth: 0.07 } },
    ],
    ['on which a seal wept', 'seal', { 'seal.heldDry': false }],
    ['over soft putty', 'putty firm', { 'seal.puttyWasFirm': false }],
    ['over bands that nobody planned', 'bands', { 'seal.bandsWereRemoved': false }],
  ])('%s does not meet, and is rated for nothing', (_, point, change) => {
    for (const design of [wallLoss, madeOf(quietLoss)]) expect(pointOf(design, change, point)).toBe('does not meet');
    expect(barRatedFor(wallLoss, thin)).toBeGreaterThan(0);
    expect(barRatedFor(wallLoss, { ...thin, ...change })).toBeUndefined();
  });

  it('says by how much a hole that the design knows nothing of is too large', () => {
    const found = compared(wallLoss, { 'survey.hole': 0.01 }).points.find(({ point }) => point === 'hole');
    expect([found?.found?.value, found?.limit?.value, found?.shortfall?.value]).toEqual([0.01, 0, 0.01]);
  });

  it('is asked for no seal and no hole, and meets without a word on them', () => {
    for (const change of [
      { seal: undefined, 'survey.hole': undefined },
      { seal: undefined, 'survey.hole': 0 },
      { seal: undefined, 'survey.slot': { axialLength: 0, circumferentialWidth: 0 } },
    ])
      expect(compared(wallLoss, change).verdict).toBe('meets');
  });
});

describe('a repair of a hole', () => {
  it('beside which a slot has opened does not meet', () => {
    const slot = { axialLength: 0.05, circumferentialWidth: 0.05 };
    expect(pointOf(madeOf(leak), { 'survey.slot': slot }, 'slot')).toBe('does not meet');
  });
});

describe('bands that stay under the wrap by design', () => {
  it('speak against nothing', () => {
    const left = madeOf(withPaths(leak, { 'seal.bands': 'left' }));
    expect(compared(left, { 'seal.bandsWereRemoved': false }).verdict).toBe('meets');
  });
});

describe('a record that can never be right', () => {
  it.each<[string, Paths]>([
    ['a word where yes or no is meant', { 'seal.heldDry': 'no' }],
    ['a word for firm putty', { 'seal.puttyWasFirm': 'soft' }],
    ['a word for bands', { 'seal.bandsWereRemoved': 'left' }],
    ['a word for firm filler', { fillerWasFirm: 'no' }],
    ['a word for clean steel', { 'steel.isFreeOfOil': 'no' }],
    ['a number for rust bloom', { 'steel.hasRustBloom': 0 }],
    ['a word for a hardness that has stopped', { 'hardness.hasStopped': 'no' }],
    ['a slot that is shorter than nothing', { 'survey.slot': { axialLength: -0.01, circumferentialWidth: 0.01 } }],
    ['a slot that is narrower than nothing', { 'survey.slot': { axialLength: 0.01, circumferentialWidth: -0.01 } }],
    ['a highest test pressure below the lowest', { 'pressureTest.highestPressure': 1e5 }],
  ])('is refused: %s', (_, change) => {
    const design = madeOf(leak);
    expect(compared(design).verdict).toBe('meets');
    expect(() => compared(design, change)).toThrow(/must be/u);
  });
});
