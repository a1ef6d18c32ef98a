import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { temperature, time } from '../../../src/quantity/index.js';
import { designRepair, hourOf, planWork } from '../../../src/repair/index.js';
import { leastOf } from '../../../src/repair/timeline/duration.js';
import { planText } from '../../../src/report/index.js';
import { planned } from '../plan-cases.js';
import { jobOf } from './of-every-kind.js';

/** Hours that were entered, or times that were stated: what they say to the crew, and what they do not. */

const alertsOf = (...asked: Parameters<typeof jobOf>): string[] => jobOf(...asked).plan.alerts.map(({ text }) => text);

describe('bare steel', () => {
  it('of four hours is what the trade allows: prepared again only beyond them', () => {
    const bareFor = (hours: number) =>
      alertsOf('wall loss from inside', {
        durations: { surface: time.hour(1), 'surface-again': time.hour(hours) },
      }).filter((text) => text.includes('after the steel was prepared'));
    expect(bareFor(4)).toEqual([]);
    expect(bareFor(4.01)).toHaveLength(1);
  });

  it('that was wrapped before it was prepared, by the hours entered, has stood for no time', () => {
    const alerts = alertsOf('wall loss from inside', {
      durations: { surface: time.hour(3) },
      actual: { surface: '09:00', wrap: '10:00' },
    });
    expect(alerts.filter((text) => text.includes('after the steel was prepared'))).toEqual([]);
    expect(alerts.every((text) => typeof text === 'string')).toBe(true);
  });
});

describe('an hour that was entered too early', () => {
  const early = (text: string) => /was entered/.test(text);

  it('for a step after a hold point is marked: the hour does not release it', () => {
    expect(alertsOf('wall loss under tape', { actual: { filler: '08:00', wrap: '09:00' } }).filter(early)).toEqual([
      expect.stringMatching(/^"Lay the wrap.*" was entered \{0\} before the end of "Wait until the filler is firm"/),
      expect.stringMatching(/^"Lay the wrap.*" was entered before "Prepare the bare steel again" began/),
    ]);
  });

  it('for a step after plain work is none: the work was done sooner', () => {
    const job = jobOf('wall loss under tape', { actual: { filler: '08:00', 'filler-wait': '08:01' } });
    const [filler, wait] = ['filler', 'filler-wait'].map((id) => job.plan.steps.find((step) => step.id === id));
    expect(filler?.sort).toBe('work');
    expect(wait?.startsAt).toBeLessThan(filler?.endsAt ?? 0);
    expect(job.plan.alerts.filter(({ text }) => early(text))).toEqual([]);
  });

  it('before the step that it waits for even began is marked as such', () => {
    expect(
      alertsOf('wall loss under tape', { actual: { filler: '12:00', 'filler-wait': '11:00' } }).filter(early),
    ).toEqual([
      expect.stringMatching(/^"Wait until the filler is firm" was entered before "Mix and place the filler" began/),
    ]);
  });
});

describe('a hold point that nobody passed before what waits for it began', () => {
  const before = ['permit', 'survey', 'surface', 'gate'];
  const planOf = (passed: readonly string[]) =>
    jobOf('wall loss under tape', { actual: { filler: '09:10' }, passed }).plan;

  it('stops the plan: there is no time of return, and none before it would have been', () => {
    const [none, all] = [planOf([]), planOf(before)];
    expect(none.steps.flatMap(({ id, stop }) => (stop === undefined ? [] : [id]))).toEqual(before);
    expect(none.earliestReturn).toMatchObject({ known: false, because: 'stopped at permit, survey, surface, gate' });
    expect(leastOf(none.earliestReturn)).toBe(leastOf(all.earliestReturn));
    expect(planText(none)).toMatch(/Back in service: no time\. Stop and call/);
    expect(planText(none).replaceAll(/\s+/g, ' ')).toContain('STOP! Hold point passed over');
  });

  it('stops it alone where the others are passed', () => {
    expect(planOf(before).steps.some(({ stop }) => stop !== undefined)).toBe(false);
    expect(planText(planOf(before))).not.toMatch(/no time\.|STOP!/);
    expect(planOf(before).steps.flatMap(({ id, passed }) => (passed === true ? [id] : []))).toEqual(before);
    for (const id of before) {
      const plan = planOf(before.filter((each) => each !== id));
      expect(plan.steps.filter(({ stop }) => stop !== undefined).map((step) => step.id)).toEqual([id]);
    }
  });

  it('is asked by its name, and a step that is none is refused', () => {
    try {
      planOf(['filler']);
      expect.fail('not refused');
    } catch (error) {
      expect(isCalculationError(error) && [error.code, error.parameter]).toEqual(['invalid-input', 'passed.filler']);
      expect(String(error)).toContain('must be a hold point of this plan: permit, survey,');
    }
  });
});

describe('a time that was stated', () => {
  it('stands on the plan as it was stated, and nothing stands there where none was', () => {
    const durations = { surface: time.hour(1), 'surface-again': time.hour(3) };
    expect(jobOf('wall loss from inside', { durations }).plan.stated).toEqual(durations);
    expect(jobOf('wall loss from inside').plan).not.toHaveProperty('stated');
  });
});

describe('the real hour of a step', () => {
  it('stands at its step alone, as it was entered', () => {
    const { plan } = jobOf('wall loss under tape', { actual: { filler: '09:10' } });
    expect(plan.steps.flatMap((step) => ('actual' in step ? [[step.id, step.actual]] : []))).toEqual([
      ['filler', '09:10'],
    ]);
  });

  it('needs a start of the job on the clock, which a plan can have of its own', () => {
    const { crew: _, ...nobody } = planned;
    const design = designRepair(nobody);
    try {
      planWork(design, { actual: { filler: '09:10' } });
      expect.fail('not refused');
    } catch (error) {
      expect(isCalculationError(error) && [error.code, error.parameter]).toEqual(['invalid-input', 'actual.filler']);
    }
    const plan = planWork(design, { start: '08:00', actual: { filler: '09:10' } });
    expect(plan.start).toBe('08:00');
    // An hour and ten minutes after eight.
    expect(plan.steps.find(({ id }) => id === 'filler')?.startsAt).toBe(70 * 60);
  });
});

/** The input that is refused and what is said of it; none where nothing is. */
function refusedOf(
  options: Parameters<typeof planWork>[1],
): { parameter?: string | undefined; message: string } | undefined {
  try {
    planWork(designRepair(planned), options);
    return undefined;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return error;
  }
}

describe('an hour before the first that is foreseen', () => {
  it('is never that of the next day in silence', () => {
    for (const start of ['07:29', '07:00', '00:00']) {
      const refused = refusedOf({ start });
      expect(refused?.parameter).toBe('start');
      expect(refused?.message).toContain(`${start}; must not be before 07:30`);
      expect(refused?.message).toContain('2 07:00');
    }
    expect(refusedOf({ start: '07:30' })).toBeUndefined();
    expect(refusedOf({ start: '2 07:00' })).toBeUndefined();
  });

  it('is refused as the real hour of a step too, whether or not a material is laid in it', () => {
    for (const id of ['permit', 'filler', 'filler-wait']) {
      const refused = refusedOf({ actual: { [id]: '07:00' } });
      expect(refused?.parameter).toBe(`actual.${id}`);
      expect(refused?.message).toContain('07:00; must not be before the start of the job');
      expect(refusedOf({ actual: { [id]: '07:30' } })).toBeUndefined();
    }
  });

  it('is any other hour on steel that nobody foresees: no wait hangs on it', () => {
    const { site, ...rest } = planned;
    const { forecast: _, history: __, ...steady } = site;
    const design = designRepair({ ...rest, site: steady });
    const cure = (start: string) => planWork(design, { start }).steps.find(({ id }) => id === 'cure')?.duration;
    expect(cure('07:00')).toEqual(cure('07:30'));
    expect(cure('07:00')?.known).toBe(true);
    const { steps } = planWork(design, { actual: { permit: '07:00' } });
    expect(steps.find(({ id }) => id === 'permit')?.startsAt).toBe(-30 * 60);
  });

  it('gives no shorter wait where the next day is warmer, and names that day where it is meant', () => {
    const warmer = {
      ...planned,
      site: {
        ...planned.site,
        forecast: [
          { ...planned.site.forecast?.[0], duration: time.hour(22), pipeTemperature: temperature.degC(11) },
          { ...planned.site.forecast?.[0], duration: time.hour(200), pipeTemperature: temperature.degC(30) },
        ] as NonNullable<typeof planned.site.forecast>,
      },
    };
    const design = designRepair(warmer);
    const plan = planWork(design, { start: '2 07:30' });
    const cure = ({ steps }: typeof plan) => leastOf(steps.find(({ id }) => id === 'cure')?.duration as never);
    expect(cure(planWork(design))).toBeGreaterThan(cure(plan));
    expect(hourOf(plan, time.hour(0))).toBe('day 2 07:30');
    expect(() => planWork(design, { start: '07:00' })).toThrow(/must not be before 07:30/);
  });
});

describe('a plan that starts at another hour', () => {
  it('has the same waits on steel that stays as warm, and its gate asks the forecast of that hour', () => {
    const now = jobOf('wall loss under tape');
    const late = planWork(now.design, { start: '19:30' });
    const gate = (plan: typeof late) =>
      plan.steps.find(({ id }) => id === 'gate')?.goes.find(({ text }) => /^Steel \{0\} or more above/.test(text));
    const [, dewNow = 0] = gate(now.plan)?.amounts?.map(({ value }) => value) ?? [];
    const [, dewLate = 0] = gate(late)?.amounts?.map(({ value }) => value) ?? [];
    // From 20 degC at 60 per cent to 12 degC at 70: 12.0 to 6.7 degC by the tables of moist air.
    expect(dewNow - 273.15).toBeCloseTo(12, 0);
    expect(dewLate - 273.15).toBeCloseTo(6.7, 0);
  });
});
