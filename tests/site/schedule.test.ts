import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import type { Temperature, TemperatureDifference, Time } from '../../src/quantity/index.js';
import { elapsedTime, leastSteelReading, type ScheduleInput, schedule } from '../../src/site/index.js';

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

  it.each([
    ['no steps', { steps: [] }, 'steps'],
    ['a negative time', { steps: [{ name: 'permit', duration: time(-1) }], links: [] }, 'steps[0].duration'],
    [
      'two steps of one name',
      { steps: [work.steps[0], work.steps[0]] as ScheduleInput['steps'], links: [] },
      'steps[1].name',
    ],
    ['a step that is not there', { links: [{ step: 'lunch', after: 'permit' }] }, 'links[0].step'],
    ['a step that waits for a later one', { links: [{ step: 'permit', after: 'wrap' }] }, 'links[0].after'],
    ['an hour of no step', { entered: [{ step: 'lunch', at: time(0) }] }, 'entered[0].step'],
    ['an hour that is none', { entered: [{ step: 'wrap', at: time(Number.NaN) }] }, 'entered[0].at'],
  ])('are refused for %s', (_, change, parameter) => {
    expect(refusedFor(change)).toBe(parameter);
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
