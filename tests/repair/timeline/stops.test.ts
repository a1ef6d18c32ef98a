import { describe, expect, it } from 'vitest';
import { time } from '../../../src/quantity/index.js';
import { designRepair, type PlanOptions, planWork } from '../../../src/repair/index.js';
import { caseOf, designOf, stepOf } from '../../faults/answers.js';
import { quietLoss, withPaths } from '../../faults/cases.js';

/** Hours that were entered too early, and hours that stand on no clock. */

/** Steel that stays as it is read, no filler, starting at 08:00: two hours of preparing, then the gate. */
const file = withPaths(quietLoss, { 'site.forecast': undefined, 'site.history': undefined });
const durations = { surface: time.hour(2) };
const design = designOf(file);
const holds = planWork(design).steps.flatMap(({ id, sort }) => (sort === 'hold point' ? [id] : []));
const planned = (options: PlanOptions) => planWork(design, { start: '08:00', durations, passed: holds, ...options });
const stopsOf = (options: PlanOptions) =>
  planned(options).steps.flatMap(({ id, stop }) => (stop === undefined ? [] : [[id, stop]]));

describe('a step that began before what it waits for had ended', () => {
  it.each([
    ['none was entered', {}, undefined],
    ['the gate at the end of preparing', { gate: '10:00' }, undefined],
    ['the gate within the minute that a clock leaves', { gate: '09:59' }, undefined],
    ['the gate two minutes early, where the stock was there long before', { gate: '09:58' }, 'gate'],
    ['preparing before the survey began', { survey: '08:30', surface: '08:00' }, 'surface'],
  ])('stops the work there, and nobody knows when the line is back: %s', (_, actual, at) => {
    const stopped = at === undefined ? [] : [[at, 'Began before the step in front of it had ended.']];
    expect(stopsOf({ actual })).toEqual(stopped);
    const { earliestReturn } = planned({ actual, durations: { ...durations, ...allKnown } });
    if (at === undefined) expect(earliestReturn.known).toBe(true);
    else expect(earliestReturn).toMatchObject({ known: false, because: `stopped at ${at}` });
  });

  it('is no reason to refuse the plan where the steel was wrapped before it was prepared', () => {
    const plan = planned({ actual: { gate: '09:00' } });
    expect(stepOf(plan, 'surface-again').startsAt).toBe(3600);
    expect(stepOf(plan, 'surface').endsAt).toBe(2 * 3600);
    expect(stepOf(plan, 'surface-again').duration).toEqual({ known: true, time: 0 });
  });
});

/** Every time that the design cannot know, none of which takes any. */
const allKnown = Object.fromEntries(
  planWork(design).withoutTime.flatMap((id) => (id === 'surface' ? [] : [[id, time.hour(0)]])),
);

describe('a plan without a clock', () => {
  const unclocked = designOf(withPaths(file, { crew: undefined }));

  it('takes times of steps, and no hour', () => {
    expect(stepOf(planWork(unclocked, { durations }), 'gate').startsAt).toBe(2 * 3600);
    expect(stepOf(planWork(unclocked, { durations, actual: {} }), 'gate').startsAt).toBe(2 * 3600);
    expect(() => planWork(unclocked, { actual: { gate: '09:00' } })).toThrow(
      /actual\.gate.*needs the start of the job/u,
    );
  });
});

describe('the arithmetic of the hours', () => {
  const { record = [] } = designRepair(caseOf(file), { record: true });
  const inputsOf = (formula: string) =>
    record.flatMap((entry) => (entry.sort === 'step' && entry.formula === formula ? [entry.input] : []));

  it('has no list of hours that nobody entered', () => {
    expect(inputsOf('site/schedule')).toEqual([expect.objectContaining({ entered: undefined })]);
  });

  it('shows how long the steel has stood bare, though it is no time', () => {
    expect(inputsOf('site/elapsed-time')).toContainEqual({ from: 0, to: 0 });
  });
});
