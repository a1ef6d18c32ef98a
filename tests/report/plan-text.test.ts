import { describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { torqued, weighed } from '../../src/quantity/index.js';
import { designRepair, planWork, type RepairCase } from '../../src/repair/index.js';
import { planText } from '../../src/report/index.js';
import { planAmountText } from '../../src/report/plan-amount.js';
import { exampleDocument } from '../json/examples.js';
import { partWall } from '../repair/example-case.js';
import { planned, plannedLeak, waterTape } from '../repair/plan-cases.js';

const example = (name: string): RepairCase => decodeCase(exampleDocument(name)).case;
const cases: readonly (readonly [string, RepairCase])[] = [
  ['the leak of the examples', example('cooling-water-leak.json')],
  ['the corroded line of the examples', example('hydrocarbon-line-corrosion.json')],
  ['the crack of the examples', example('sour-gas-crack.json')],
  ['a sealed leak', plannedLeak],
  ['tape that brings its resin', waterTape],
  ['a case that states nothing of the site', partWall],
];

describe('a plan as text', () => {
  it.each(cases)('has lines of at most 60 characters, in both systems: %s', (_, repairCase) => {
    for (const units of ['si', 'us'] as const) {
      const lines = planText(planWork(designRepair(repairCase)), { units }).split('\n');
      expect(lines.filter((line) => line.length > 60)).toEqual([]);
      expect(lines.at(-1)).toBe('');
    }
  });

  it.each(cases)('leaves no mark of an amount and no number that is none: %s', (_, repairCase) => {
    expect(planText(planWork(designRepair(repairCase)))).not.toMatch(/\{\d\}|NaN|undefined|Infinity/u);
  });

  it('has a block for each step, with what to do, go, stop, whom to call, who signs and the real hour', () => {
    const plan = planWork(designRepair(planned));
    const text = planText(plan);
    const blocks = text.split('\n\n').filter((block) => /^\d+ {2}/u.test(block));
    expect(blocks.length).toBe(plan.steps.length);
    for (const block of blocks) {
      for (const label of ['DO    ', 'GO    ', 'STOP  ', 'CALL  ', 'SIGN  ', 'HOUR  '])
        expect(block).toContain(`\n${label}`);
    }
  });

  it('says when the line is back, what sets it, and what counts as nothing', () => {
    const text = planText(planWork(designRepair(planned))).replaceAll(/\s+/gu, ' ');
    expect(text).toMatch(/Start: 07:30\./);
    expect(text).toMatch(/Back in service: not known, not before day 3 \d\d:\d\d/);
    expect(text).toMatch(/What sets it: permit, survey, surface, gate, filler, filler-wait, wrap, cure/);
    expect(text).toMatch(/Why it is not known: permit, stock, .* nobody has stated it\./);
  });

  it('sends nobody to work on a design that was not made', () => {
    const text = planText(planWork(designRepair(example('sour-gas-crack.json'))));
    expect(text).toContain('NO WORK: the design says NOT COVERED.');
    expect(text).toMatch(/crack/);
    expect(text).not.toMatch(/\nDO {4}/);
  });

  it('names every roll or batch that does not fit, and what helps', () => {
    const slow: RepairCase = { ...waterTape, crew: { layingSpeed: (10 / 3600) as never, crews: 1, start: '07:30' } };
    const text = planText(planWork(designRepair(slow))).replaceAll(/\s+/gu, ' ');
    expect(text).toMatch(/DOES NOT FIT: a roll may gel before it is laid/);
    expect(text).toMatch(/What helps: shorter: a roll of/);
    expect(text).not.toMatch(/What helps: \d+ crews/);
  });

  it('marks what is common practice, apart from what the design asks', () => {
    expect(planText(planWork(designRepair(planned)))).toMatch(/\nTRADE Bare steel older than 4 h is prepared again/);
  });
});

describe('an amount of the plan', () => {
  const text = (
    kind: Parameters<typeof planAmountText>[0]['kind'],
    value: number,
    toward?: 'up' | 'down',
    units: 'si' | 'us' = 'si',
  ) => planAmountText({ name: 'x', kind, value, ...(toward === undefined ? {} : { toward }) }, units);

  it('stands in the units of packs and tools', () => {
    expect(text('mass', 0.187)).toBe('187 g');
    expect(text('mass', 2)).toBe('2 kg');
    expect(text('length', 0.0000625)).toBe('62.5 um');
    expect(text('length', 0.1683)).toBe('168 mm');
    expect(text('length', 6.448)).toBe('6.45 m');
    expect(text('gauge pressure', 660000)).toBe('6.6 bar');
    expect(text('time', 35)).toBe('35 s');
    expect(text('time', 2700)).toBe('45 min');
    expect(text('time', 21132)).toBe('5 h 52 min');
    expect(text('length', 0.1683, undefined, 'us')).toBe('6.63 in');
    expect(text('mass', 0.5, undefined, 'us')).toBe('1.1 lb');
    expect(text('temperature', 298.15, undefined, 'us')).toBe('77.0 degF');
  });

  it('is a torque on the next step that a wrench has, never below what holds the seal', () => {
    const torque = (value: number, units: 'si' | 'us' = 'si') => planAmountText(torqued('torque', value), units);
    expect(torque(0.3016)).toBe('0.31 N m');
    expect(torque(1.2)).toBe('1.20 N m');
    expect(torque(7.31)).toBe('7.4 N m');
    expect(torque(23.1)).toBe('23.5 N m');
    expect(torque(61.2)).toBe('62 N m');
    expect(torque(0.3016, 'us')).toBe('0.23 lbf ft');
  });

  it('is a mass to the nearest step of a scale no coarser than the ratio allows', () => {
    const mass = (value: number, units: 'si' | 'us' = 'si') =>
      planAmountText(weighed('hardener', value, 0.000934), units);
    expect(planAmountText({ ...weighed('step', 0.000934, 0.000934), toward: 'down' }, 'si')).toBe('0.5 g');
    expect(mass(0.03737)).toBe('37.5 g');
    expect(mass(0.1495)).toBe('149.5 g');
    expect(mass(0.03737, 'us')).toBe('1.32 oz');
    expect(planAmountText(weighed('base', 1.2345, 0.01), 'si')).toBe('1.23 kg');
    expect(planAmountText(weighed('base', 0.0123, 0.001), 'si')).toBe('12 g');
  });

  it('is rounded up where it must be reached, down where it must not be passed', () => {
    expect(text('length', 0.0846697, 'up')).toBe('84.7 mm');
    expect(text('length', 0.0846697, 'down')).toBe('84.6 mm');
    expect(text('time', 21132, 'up')).toBe('5 h 53 min');
    expect(text('time', 377, 'down')).toBe('6 min');
    expect(text('temperature', 287.2204, 'up')).toBe('14.1 degC');
    expect(text('length', 0.06, 'up')).toBe('60 mm');
    expect(text('time', 3600, 'up')).toBe('60 min');
    expect(text('time', 7199, 'up')).toBe('120 min');
  });
});
