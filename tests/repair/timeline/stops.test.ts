import { describe, expect, it } from 'vitest';
import { time } from '../../../src/quantity/index.js';
import { type Designed, designRepair, type PlanOptions, planWork } from '../../../src/repair/index.js';
import { caseOf, designOf, madeOf, stepOf } from '../../faults/answers.js';
import { loss, quietLoss, withPaths } from '../../faults/cases.js';

/** Hours that were entered too early, and hours that stand on no clock. */

/** Steel that stays as it is read, no filler, starting at 08:00: two hours of preparing, then the gate. */
const file = withPaths(quietLoss, { 'site.forecast': undefined, 'site.history': undefined });
const durations = { surface: time.hour(2) };
const design = madeOf(file);
const holdsOf = (made: Designed) => planWork(made).steps.flatMap(({ id, sort }) => (sort === 'hold point' ? [id] : []));
const holds = holdsOf(design);
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

describe('resin on steel that had stood bare for too long', () => {
  const OLD = 'Began on steel that had stood bare for too long: take it off, and prepare the steel again.';
  // Without filler: prepared by 10:00, and the trade gives it four hours. Seen with a filler: by that hour too.
  const filled = madeOf(withPaths(loss, { 'site.forecast': undefined, 'site.history': undefined }));
  // The filler is firm in less than three hours.
  const warm = madeOf(
    withPaths(loss, { 'site.forecast': undefined, 'site.history': undefined, 'site.pipeTemperature': '30 degC' }),
  );
  const stopsAt = (made: Designed, options: PlanOptions) =>
    planWork(made, { start: '08:00', durations, passed: holdsOf(made), ...options }).steps.flatMap(({ id, stop }) =>
      stop === undefined ? [] : [[id, stop]],
    );
  const late = (hours: number) => ({ durations: { ...durations, 'surface-again': time.hour(hours) } });

  it.each<[string, Designed, PlanOptions, string[]]>([
    ['wrapped four hours after it was prepared', design, { actual: { wrap: '14:00' } }, []],
    ['wrapped some minutes later than that', design, { actual: { wrap: '14:05' } }, ['wrap']],
    ['wrapped fourteen hours after', design, { actual: { wrap: '2 00:00' } }, ['wrap']],
    [
      'prepared again at 22:00, wrapped an hour after that',
      design,
      { actual: { 'surface-again': '22:00', wrap: '2 00:00' }, ...late(1) },
      [],
    ],
    [
      'prepared again, and wrapped too late after that',
      design,
      { actual: { 'surface-again': '15:00', wrap: '20:05' }, ...late(1) },
      ['wrap'],
    ],
    ['filled four hours after it was prepared', filled, { actual: { filler: '14:00' } }, []],
    ['filled some minutes later than that', filled, { actual: { filler: '14:05' } }, ['filler']],
    ['filled too late, and the rest prepared again', filled, { actual: { filler: '22:00' }, ...late(1) }, ['filler']],
    [
      'prepared for nobody knows how long, and wrapped six hours after the gate',
      design,
      { durations: {}, actual: { gate: '11:00', wrap: '17:00' } },
      ['wrap'],
    ],
    [
      'so too, and wrapped an hour after the gate',
      design,
      { durations: {}, actual: { gate: '16:00', wrap: '17:00' } },
      [],
    ],
    [
      'so too, and filled more than four hours before the wrap',
      warm,
      { durations: {}, actual: { filler: '08:25', wrap: '12:30' } },
      ['wrap'],
    ],
  ])('stops the work there: %s', (_, made, options, at) => {
    expect(stopsAt(made, options)).toEqual(at.map((id) => [id, OLD]));
  });

  const MAYBE =
    'Nobody entered when the steel was ready, and it may have stood bare for too long: enter the hour of the gate.';
  const AGAIN =
    'Nobody entered when the steel was ready again, and it may have stood bare for too long: enter the hour at which it was prepared again.';

  it.each<[string, Designed, PlanOptions['actual'], [string, string][]]>([
    ['nothing was entered', design, {}, []],
    ['wrapped four hours after preparing began', design, { surface: '08:00', wrap: '12:00' }, []],
    ['wrapped some minutes later than that', design, { surface: '08:00', wrap: '12:05' }, [['wrap', MAYBE]]],
    ['wrapped by an hour alone', design, { wrap: '19:00' }, [['wrap', MAYBE]]],
    ['wrapped the next day', design, { surface: '08:20', wrap: '2 07:30' }, [['wrap', MAYBE]]],
    ['filled the next day', filled, { surface: '08:20', filler: '2 08:00' }, [['filler', MAYBE]]],
    ['so too, with the hour of the gate', filled, { surface: '08:20', gate: '2 07:30', filler: '2 08:00' }, []],
    [
      'prepared again, and wrapped sixteen hours after that began',
      filled,
      { filler: '09:00', 'surface-again': '16:00', wrap: '2 08:00' },
      [['wrap', AGAIN]],
    ],
    ['so too, three hours after', filled, { filler: '09:00', 'surface-again': '16:00', wrap: '19:00' }, []],
  ])('stops the work where nobody knows how long preparing took, and it may have: %s', (_, made, actual, at) => {
    expect(stopsAt(made, { durations: {}, actual })).toEqual(at);
  });

  it('leaves the return unknown', () => {
    const { earliestReturn } = planned({ actual: { wrap: '22:00' }, durations: { ...durations, ...allKnown } });
    expect(earliestReturn).toMatchObject({ known: false, because: 'stopped at wrap' });
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
