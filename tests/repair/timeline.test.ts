import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureWaitOverHistory, type TemperatureStep } from '../../src/cure/index.js';
import type { Time } from '../../src/quantity/index.js';
import { designRepair, planWork, type RepairCase, stepAt, timeline } from '../../src/repair/index.js';
import { leastOf } from '../../src/repair/timeline/duration.js';
import { planText } from '../../src/report/index.js';
import { designed, timeOf } from './by-use.js';
import { partWall } from './example-case.js';
import { planned, plannedLeak } from './plan-cases.js';

const HOUR = 3600;

/** Kelvin that a thermometer is off whose error nobody states. */
const UNSTATED_ERROR = 0.5;

describe('the timeline of a design', () => {
  it('is the timeline of its plan, hour by hour, as long as nothing is entered', () => {
    for (const repairCase of [planned, plannedLeak, partWall]) {
      const design = designed(repairCase);
      const { steps, earliestReturn } = planWork(design);
      expect(steps.map(({ id, startsAt, endsAt, duration }) => ({ id, startsAt, endsAt, duration }))).toEqual(
        design.timeline.steps.map(({ id, startsAt, endsAt, duration }) => ({ id, startsAt, endsAt, duration })),
      );
      expect(earliestReturn).toBe(design.timeline.earliestReturn);
    }
  });

  it('is data: a copy of it run again gives the same hours', () => {
    const design = designed(planned);
    const history = planned.site.forecast?.map(({ duration, pipeTemperature }) => ({
      duration,
      temperature: pipeTemperature - UNSTATED_ERROR,
    }));
    const copy = JSON.parse(JSON.stringify({ steps: design.timeline.steps, laws: design.cures, history }));
    expect(timeline(copy)).toEqual(design.timeline);
  });

  it('starts the cure of the laminate when the wrap is laid, on the steel of that hour', () => {
    // Twelve hours at 20 degC, twelve at 14, then 18, counted by hand from the hour at which the wrap ends, each colder by what a
    // thermometer may be off.
    const design = designed(planned);
    const { cure } = planned.laminate;
    if (cure.mechanism !== 'two-part reaction') throw new Error('expected a reaction');
    const laid = stepAt(design.timeline, 'wrap')?.endsAt ?? Number.NaN;
    expect(laid).toBeGreaterThan(HOUR);
    expect(laid).toBeLessThan(12 * HOUR);
    const [day = 0, night = 0, then = 0] =
      planned.site.forecast?.map(({ pipeTemperature }) => pipeTemperature - UNSTATED_ERROR) ?? [];
    const steps = [
      { duration: 12 * HOUR - laid, temperature: day },
      { duration: 12 * HOUR, temperature: night },
      { duration: 72 * HOUR, temperature: then },
    ] as unknown as TemperatureStep[];
    const { cureTime: requiredTime, workingTime: _, ...sheet } = cure;
    expect(timeOf(design.timeline, 'cure')).toBeCloseTo(cureWaitOverHistory({ ...sheet, steps, requiredTime }).wait, 6);
  });

  it('gives the gate of the site the hours from opening resin to the end of the cure', () => {
    for (const repairCase of [planned, plannedLeak]) {
      const { timeline: hours, site } = designed(repairCase);
      const [gate, cure] = [stepAt(hours, 'gate')?.endsAt ?? Number.NaN, stepAt(hours, 'cure')?.endsAt ?? Number.NaN];
      expect(leastOf(site.holdTime)).toBeCloseTo(cure - gate, 6);
    }
  });

  it('asks for a history that reaches to the end of the cure, by the hour at which the wrap is laid', () => {
    const until = stepAt(designed(planned).timeline, 'cure')?.endsAt ?? Number.NaN;
    const lasting = (time: number): RepairCase => {
      const [day, night, then] = planned.site.forecast ?? [];
      if (day === undefined || night === undefined || then === undefined) throw new Error('expected a forecast');
      const last = { ...then, duration: (time - day.duration - night.duration) as Time };
      return { ...planned, site: { ...planned.site, forecast: [day, night, last] } };
    };
    expect(designRepair(lasting(until + 60)).verdict).toBe('designed');
    const short = designRepair(lasting(until - 60));
    expect(short.verdict).toBe('needs input');
    expect(short.missing.map(({ field }) => field)).toEqual(['site.history']);
    expect(short.timeline).toBeUndefined();
  });

  it('keeps filler and laminate apart where they bear one name', () => {
    if (planned.filler === 'none') throw new Error('expected a filler');
    const alike = designed({ ...planned, filler: { ...planned.filler, name: planned.laminate.name } });
    expect(timeOf(alike.timeline, 'filler-wait')).toBe(timeOf(designed(planned).timeline, 'filler-wait'));
    expect(timeOf(alike.timeline, 'cure')).toBe(timeOf(designed(planned).timeline, 'cure'));
  });

  it('has a reason for every step whose time is not known', () => {
    const { timeline: hours } = designed(partWall);
    const unknown = hours.steps.flatMap(({ id, duration }) => (duration.known ? [] : [[id, duration.because]]));
    expect(Object.fromEntries(unknown)).toMatchObject({
      permit: 'nobody has stated it',
      wrap: 'the case states no crew',
      'pressure-test': 'the case does not say whether the line is tested',
    });
  });

  it('never brings the line back earlier for more preparation, whether the forecast reaches over the cure or not', () => {
    const design = designed(planned);
    const stated = Object.fromEntries(planWork(design).withoutTime.map((id) => [id, (0.5 * HOUR) as Time]));
    const back = (hours: number) => planWork(design, { durations: { ...stated, surface: (hours * HOUR) as Time } });
    const reached = new Set<boolean>();
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (a, b) => {
          const [sooner, later] = [Math.min(a, b), Math.max(a, b)].map((hours) => back(hours).earliestReturn);
          if (sooner === undefined || later === undefined) throw new Error('no return');
          reached.add(sooner.known);
          expect(leastOf(later)).toBeGreaterThanOrEqual(leastOf(sooner) - 1e-6);
          if (!sooner.known) expect(later.known).toBe(false);
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
    expect(reached).toEqual(new Set([true, false]));
  });

  it('lets no stated time stand for a wait that runs past the forecast', () => {
    const durations = { surface: (200 * HOUR) as Time, cure: HOUR as Time };
    const plan = planWork(designed(planned), { durations });
    expect(plan.steps.find(({ id }) => id === 'cure')?.duration).toMatchObject({ known: false, atLeast: HOUR });
    expect(plan.earliestReturn.known).toBe(false);
  });

  it('never lets a step begin before what it waits for has ended, whatever is entered for one step', () => {
    const { timeline: hours, cures: laws } = designed(plannedLeak);
    const ids = fc.constantFrom(...hours.steps.map(({ id }) => id));
    fc.assert(
      fc.property(ids, fc.integer({ min: 0, max: 20 * HOUR }), (id, time) => {
        const { steps } = timeline({ steps: hours.steps, laws }, { durations: { [id]: time as Time } });
        for (const { startsAt, after } of steps) {
          for (const { id: before, endsAt } of steps)
            if (after.includes(before)) expect(startsAt).toBeGreaterThanOrEqual(endsAt);
        }
      }),
      { seed: 20261125, numRuns: 50 },
    );
  });
});

describe('a plan beside its design', () => {
  const pages = [planned, plannedLeak].map((repairCase) => planText(planWork(designed(repairCase))));

  it.each([
    ['the mixing that the trade allows beside the working time', /TRADE[^.]*knead/iu],
    ['how far before a leak the trade begins', /about 100 mm before/u],
    ['a customary thickness of the filler', /elsewhere\./u],
    ['a customary pad or sheet', /three times the size|Stainless sheet of/u],
    ['a customary wait of the putty', /About 15 min/u],
  ])('says nothing of %s', (_, customary) => {
    for (const page of pages) expect(page).not.toMatch(customary);
  });

  it('keeps the figure of the trade where the design has none: how old bare steel may be', () => {
    for (const page of pages) expect(page).toMatch(/TRADE Bare steel older than 4 h/u);
  });

  it('keeps the soaking of the trade only where no crew states its own', () => {
    const soaked = (soakTime: Time | undefined): string => {
      const crew = planned.crew === undefined ? undefined : { ...planned.crew, soakTime };
      return planText(planWork(designed({ ...planned, resin: 'none', crew })));
    };
    expect(soaked(undefined)).toMatch(/soak about 10 s/u);
    expect(soaked(30 as Time)).toMatch(/Soak each roll for 30 s/u);
    expect(soaked(30 as Time)).not.toMatch(/soak about/u);
  });
});
