import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import type { Temperature, TemperatureDifference, Time } from '../../src/quantity/index.js';
import { elapsedTime, hoursToTry, leastSteelReading, type ScheduleInput, schedule } from '../../src/site/index.js';

const time = (value: number): Time => value as Time;
const work: ScheduleInput = {
  steps: [
    { name: 'permit', duration: time(600) },
    { name: 'stock', duration: time(900) },
    { name: 'steel', duration: time(3600) },
    { name: 'wrap', duration: time(1200) },
  ],
  links: [
    { step: 'steel', after: 'permit' },
    { step: 'wrap', after: 'steel' },
    { step: 'wrap', after: 'stock' },
  ],
};

const refusedFor = (change: Partial<ScheduleInput>): string => {
  try {
    schedule({ ...work, ...change });
  } catch (error) {
    if (isCalculationError(error) && error.code === 'invalid-input') return error.parameter;
    throw error;
  }
  return 'nothing';
};

describe('the hours of the work', () => {
  it('begin a step when all that it waits for has ended', () => {
    const { rows, end } = schedule(work);
    expect(rows.map(({ startsAt, endsAt }) => [startsAt, endsAt])).toEqual([
      [0, 600],
      [0, 900],
      [600, 4200],
      [4200, 5400],
    ]);
    expect(end).toBe(5400);
  });

  it('name the chain that sets the end, and what the rest can wait', () => {
    const { rows } = schedule(work);
    expect(rows.filter(({ critical }) => critical).map(({ name }) => name)).toEqual(['permit', 'steel', 'wrap']);
    expect(rows.map(({ slack }) => slack)).toEqual([0, 3300, 0, 0]);
  });

  it('put a real hour in place of the planned one, so that what stands before it can wait until then', () => {
    const { rows, end } = schedule({ ...work, entered: [{ step: 'wrap', at: time(10_000) }] });
    expect(rows.map(({ slack }) => slack)).toEqual([5800, 9100, 5800, 0]);
    expect(end).toBe(11_200);
  });

  const step = (name: string, seconds: number) => ({ name, duration: time(seconds) });

  it('hold a step that really began at its hour, though the work could wait longer for it', () => {
    // The coat stands at 1000 s; without it the primer could wait until 4900 s.
    const { rows } = schedule({
      steps: [step('primer', 600), step('coat', 100), step('cure', 5000)],
      links: [{ step: 'coat', after: 'primer' }],
      entered: [{ step: 'coat', at: time(1000) }],
    });
    expect(rows.map(({ slack }) => slack)).toEqual([400, 3900, 0]);
  });

  it.each([
    ['whichever is named first', [step('a', 300), step('b', 600), step('c', 100)], ['a', 'b'], ['b', 'c']],
    [
      'the one that is named first of two that end together',
      [step('a', 600), step('b', 600), step('c', 100)],
      ['b', 'a'],
      ['b', 'c'],
    ],
    ['one that takes no time', [step('a', 0), step('c', 100)], ['a'], ['a', 'c']],
  ])('go back along what ended last, %s', (_, steps, after, chain) => {
    const { rows } = schedule({ steps, links: after.map((each) => ({ step: 'c', after: each })) });
    expect(rows.filter(({ critical }) => critical).map(({ name }) => name)).toEqual(chain);
  });

  it('leave no slack in a chain, however its times add up', () => {
    for (let chain = 1; chain < 40; chain++) {
      const steps = Array.from({ length: 12 }, (_, at) => step(`${at}`, ((chain * (at + 7)) % 13) / 10 + chain / 7));
      const links = steps.slice(1).map(({ name }, at) => ({ step: name, after: `${at}` }));
      for (const { slack } of schedule({ steps, links }).rows) expect(slack).toBe(0);
    }
  });

  it('name the steps that there are where one is not', () => {
    const lost = () => schedule({ ...work, links: [{ step: 'lunch', after: 'permit' }] });
    expect(lost).toThrow('must be one of permit, stock, steel, wrap');
  });

  it.each([
    ['no steps', { steps: [] }, 'steps'],
    ['a negative time', { steps: [{ name: 'permit', duration: time(-1) }], links: [] }, 'steps[0].duration'],
    [
      'two steps of one name',
      { steps: [work.steps[0], work.steps[0]] as ScheduleInput['steps'], links: [] },
      'steps[1].name',
    ],
    ['a step that is not there', { links: [{ step: 'lunch', after: 'permit' }] }, 'links[0].step'],
    ['a step that waits for itself', { links: [{ step: 'steel', after: 'steel' }] }, 'links[0].after'],
    ['a step that waits for a later one', { links: [{ step: 'permit', after: 'wrap' }] }, 'links[0].after'],
    ['an hour of no step', { entered: [{ step: 'lunch', at: time(0) }] }, 'entered[0].step'],
    ['an hour that is none', { entered: [{ step: 'wrap', at: time(Number.NaN) }] }, 'entered[0].at'],
  ])('are refused for %s', (_, change, parameter) => {
    expect(refusedFor(change)).toBe(parameter);
  });
});

describe('the hours at which a job may start', () => {
  it('are those that the forecast begins, one at least, and a year of them at most', () => {
    expect([0, 1, 3600, 3601, 36_000].map((seconds) => hoursToTry(time(seconds)))).toEqual([1, 1, 1, 2, 10]);
    const year = 366 * 24;
    expect(hoursToTry(time(year * 3600))).toBe(year);
    expect(() => hoursToTry(time((year + 1) * 3600))).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter: 'site.forecast', value: year + 1, limit: year }),
    );
  });
});

describe('the time between two hours', () => {
  it('is refused where the later one comes first', () => {
    expect(elapsedTime({ from: time(600), to: time(4200) })).toBe(3600);
    expect(() => elapsedTime({ from: time(2), to: time(1) })).toThrow(/earlier hour/);
  });
});

describe('the least reading of the steel', () => {
  const reading = (least: number, error: number) =>
    leastSteelReading({ minimumTemperature: least as Temperature, thermometerError: error as TemperatureDifference });

  it('keeps the resin curing and the steel free of ice, whatever the thermometer is off', () => {
    expect(reading(283.15, 0.5)).toBe(283.65);
    expect(reading(268.15, 0.5)).toBe(273.65);
  });
});
