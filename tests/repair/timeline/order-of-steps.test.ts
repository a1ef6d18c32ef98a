import { describe, expect, it } from 'vitest';
import { type Time, time } from '../../../src/quantity/index.js';
import {
  designRepair,
  type PlanOptions,
  planWork,
  type RepairDesign,
  type WorkPlan,
} from '../../../src/repair/index.js';
import { designOf, idsOf, madeOf, secondsOf, stepOf } from '../../faults/answers.js';
import { type CaseFile, emptied, leak, loss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { planned as onSite } from '../plan-cases.js';

/** No step begins before what it rests on has ended, whatever takes how long. */

const lasting = (design: RepairDesign, hours: (place: number) => number): Record<string, Time> =>
  Object.fromEntries((design.timeline?.steps ?? []).map(({ id }, place) => [id, time.hour(hours(place))]));

const steady: Paths = { 'site.forecast': undefined, 'site.history': undefined };
const jobs: readonly (readonly [string, CaseFile])[] = [
  ['a sealed leak with filler', withPaths(leak, steady)],
  ['a leak in an empty line', withPaths(leak, { ...steady, ...emptied, seal: undefined })],
  ['a loss with filler', withPaths(loss, { ...steady, ...emptied })],
  ['a loss without filler', withPaths(quietLoss, steady)],
  [
    'a sealed leak without filler',
    withPaths(leak, { ...steady, filler: 'none', 'defect.cause': 'internal corrosion' }),
  ],
];
const planned = (file: CaseFile, options: PlanOptions = {}): WorkPlan => planWork(designOf(file), options);

describe('a cure that no number holds', () => {
  /** A night at the coldest that the resin cures behind a thermometer half a kelvin off, under a law steep enough to leave what numbers hold. */
  const by = (activationEnergy: number) => {
    const night = { 'site.forecast.1.pipeTemperature': 283.65, 'laminate.cure.activationEnergy': activationEnergy };
    const { verdict, missing } = designRepair(withPaths(onSite, night));
    return [verdict, missing.map(({ field }) => field)];
  };

  it('is not covered, where one that only takes too long asks for a longer history', () => {
    expect([60e3, 3.7e7, 5e7].map(by)).toEqual([
      ['designed', []],
      ['needs input', ['site.history']],
      ['not covered', []],
    ]);
  });
});

describe('steel that is heated', () => {
  const heated = (degrees: number) => {
    const history = [{ duration: time.hour(96), temperature: 283.65 + degrees }];
    const design = designRepair(
      withPaths(onSite, { 'site.forecast.1.pipeTemperature': 283.65, 'site.history': history }),
    );
    return design.warnings.filter(
      ({ step, text }) => step === 'filler-wait' && text.includes('heated above its forecast'),
    );
  };

  it('is warned of where it is warmer than the coldest of its forecast, with what it has to be kept at', () => {
    expect([heated(0), heated(-0.1)]).toEqual([[], []]);
    expect(heated(0.1).map(({ amounts = [] }) => amounts.map(({ value }) => value))).toEqual([[283.65 + 0.1]]);
  });
});

describe('the steps of a job', () => {
  it.each(jobs)('follow one another, the stock apart, which is there before resin or seal: %s', (_, file) => {
    const design = madeOf(file);
    for (const hours of [(place: number) => 1 + place, (place: number) => 20 - place, () => 0.1]) {
      const { steps } = planned(file, { durations: lasting(design, hours) });
      for (const [place, { id, startsAt }] of steps.entries()) {
        if (id === 'stock') expect(startsAt).toBe(0);
        else
          for (const before of steps.slice(0, place))
            if (before.id !== 'stock')
              expect(startsAt, `${id} after ${before.id}`).toBeGreaterThanOrEqual(before.endsAt);
      }
      const stocked = stepOf({ steps } as WorkPlan, 'stock').endsAt;
      for (const { id, startsAt } of steps)
        if (id === 'seal' || id === 'gate') expect(startsAt, id).toBeGreaterThanOrEqual(stocked);
    }
  });

  it('wait for a stock that comes late, and for nothing else', () => {
    const file = withPaths(leak, steady);
    const late = planned(file, { durations: { stock: time.hour(30) } });
    expect(stepOf(late, 'seal').startsAt).toBe(30 * 3600);
    expect(stepOf(late, 'rough-cleaning').startsAt).toBe(0);
    const bare = planned(withPaths(quietLoss, steady), { durations: { stock: time.hour(30) } });
    expect(stepOf(bare, 'gate').startsAt).toBe(30 * 3600);
    expect(stepOf(bare, 'surface').startsAt).toBe(0);
  });

  it('are those of the job: a seal where one is put on, filler where some is placed', () => {
    const has = (file: CaseFile, ...ids: string[]): boolean[] => {
      const steps = idsOf(planned(file));
      return ids.map((id) => steps.includes(id));
    };
    const seals = ['rough-cleaning', 'seal', 'putty'];
    const fills = ['filler', 'filler-wait'];
    const expected = [
      [true, true],
      [false, true],
      [false, true],
      [false, false],
      [true, false],
    ];
    for (const [index, [name, file]] of jobs.entries()) {
      const [sealed, filled] = expected[index] ?? [];
      expect(has(file, ...seals), name).toEqual(seals.map(() => sealed));
      expect(has(file, ...fills), name).toEqual(fills.map(() => filled));
    }
  });

  it('take the time of what cures in them, each its own', () => {
    const file = withPaths(leak, steady);
    const { cures, timeline } = madeOf(file);
    const waits = [cures.putty, cures.filler, cures.laminate].map((cure) =>
      cure !== 'none' && cure.law.sort === 'same at every hour' ? cure.law.wait : Number.NaN,
    );
    const told = ['putty', 'filler-wait', 'cure'].map((id) => {
      const step = timeline.steps.find((each) => each.id === id);
      return step?.duration.known === true ? step.duration.time : undefined;
    });
    expect(told).toEqual(waits);
    expect(new Set(waits).size).toBe(3);
  });

  it('hold the test as long as the rule set says, and not at all where none is made', () => {
    const test = (changes: Paths) => {
      const plan = planned(withPaths(quietLoss, { ...steady, ...changes }));
      return stepOf(plan, 'pressure-test').duration;
    };
    expect(secondsOf(test({}))).toBe(madeOf(quietLoss).acceptance.pressureTest.hold);
    expect(test({ 'acceptance.pressureTest': 'none' })).toEqual({ known: false, because: 'no pressure test is made' });
    expect(test({ acceptance: undefined })).toEqual({
      known: false,
      because: 'the case does not say whether the line is tested',
    });
    expect(planned(withPaths(quietLoss, { ...steady, crew: undefined })).withoutTime.join()).toContain('wrap');
  });
});

describe('prepared steel', () => {
  it('is good for four hours from the end of its preparation, and prepared again after that', () => {
    const again = (fillerWait: number) => {
      const plan = planned(withPaths(loss, { ...steady, ...emptied }), {
        durations: { surface: time.hour(10), 'filler-wait': time.hour(fillerWait) },
      });
      return [
        stepOf(plan, 'surface-again').startsAt - stepOf(plan, 'surface').endsAt,
        stepOf(plan, 'surface-again').duration,
      ] as const;
    };
    const [since, renewed] = again(5);
    expect(since).toBeGreaterThan(5 * 3600);
    expect(renewed).toMatchObject({ known: false });
    const [sooner, still] = again(1);
    expect(sooner).toBeLessThan(4 * 3600);
    expect(still).toEqual({ known: true, time: 0 });
    const quick = planned(withPaths(quietLoss, steady), { durations: { surface: time.hour(10) } });
    expect(stepOf(quick, 'surface-again').duration).toEqual({ known: true, time: 0 });
    const late = (hours: number) =>
      stepOf(
        planned(withPaths(quietLoss, steady), { durations: { surface: time.hour(1), stock: time.hour(1 + hours) } }),
        'surface-again',
      ).duration;
    expect(late(4)).toEqual({ known: true, time: 0 });
    expect(late(4.01)).toMatchObject({ known: false });
  });
});

describe('hours that were entered', () => {
  const file = withPaths(quietLoss, steady);

  it('move what follows, and only with a start on the clock', () => {
    const at = (options: PlanOptions) => stepOf(planned(file, options), 'wrap').startsAt / 3600;
    expect(at({ start: '07:00', actual: { wrap: '12:30' } })).toBeCloseTo(5.5, 9);
    expect(at({ start: '07:00', actual: { wrap: '2 07:00' } })).toBeCloseTo(24, 9);
    const unclocked = withPaths(file, { crew: undefined });
    expect(stepOf(planned(unclocked), 'wrap').startsAt).toBe(0);
  });

  it('fill a gap or add to a wait, and never cut one short', () => {
    const cure = (hours: number) =>
      secondsOf(stepOf(planned(file, { durations: { cure: time.hour(hours) } }), 'cure').duration);
    const own = secondsOf(stepOf(planned(file), 'cure').duration) ?? Number.NaN;
    expect(cure(1)).toBe(own);
    expect(cure(500)).toBe(500 * 3600);
    const survey = stepOf(planned(file, { durations: { survey: time.hour(2) } }), 'survey').duration;
    expect(survey).toEqual({ known: true, time: 7200 });
    expect(stepOf(planned(file), 'survey').duration).toEqual({ known: false, because: 'nobody has stated it' });
  });

  it('say of each open time which steps it holds of, and bring the line back when none is open', () => {
    const { earliestReturn } = planned(file);
    expect(earliestReturn).toMatchObject({
      known: false,
      because: expect.stringMatching(/permit, stock, survey, surface.*: nobody has stated it/u),
    });
    const all = lasting(madeOf(file), () => 1);
    const closed = planned(file, { durations: all });
    expect(closed.earliestReturn).toEqual({ known: true, time: stepOf(closed, 'return').endsAt });
  });
});

describe('a cure that runs past the forecast', () => {
  const cure = (hours: number) =>
    stepOf(planned(quietLoss, { durations: { surface: time.hour(hours) } }), 'cure').duration;
  const because = 'the temperature history ends before it has cured';

  it('lasts at least as long as the forecast still goes on, and nobody knows how long where that has ended', () => {
    expect(cure(1).known).toBe(true);
    const open = cure(70);
    expect(open).toMatchObject({ known: false, because });
    expect(!open.known && open.atLeast).toBeGreaterThan(0);
    expect(cure(1000)).toStrictEqual({ known: false, because });
  });
});
