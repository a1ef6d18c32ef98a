import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { type Time, temperature, time } from '../../src/quantity/index.js';
import { designRepair, hourOf, planWork, type RepairCase, type WorkPlan } from '../../src/repair/index.js';
import { leastOf } from '../../src/repair/timeline/duration.js';
import { designed, listed, present, timeOf } from './by-use.js';
import { partWall } from './example-case.js';
import { planned, plannedLeak, waterTape } from './plan-cases.js';

const stepOf = (plan: WorkPlan, id: string) => {
  const step = plan.steps.find((each) => each.id === id);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step;
};
const constant: RepairCase = { ...planned, site: { ...planned.site, forecast: undefined } };

describe('a plan', () => {
  const plan = planWork(designRepair(planned));

  it('goes from the permit to the return to service, each step after those that it waits for', () => {
    expect(plan.steps.map(({ id }) => id)).toEqual([
      'permit',
      'stock',
      'survey',
      'surface',
      'gate',
      'filler',
      'filler-wait',
      'surface-again',
      'wrap',
      'cure',
      'inspection',
      'pressure-test',
      'return',
    ]);
    for (const step of plan.steps) {
      for (const id of step.after) expect(step.startsAt).toBeGreaterThanOrEqual(stepOf(plan, id).endsAt);
    }
  });

  it('seals a leak and waits for its putty before the steel is prepared', () => {
    const ids = planWork(designRepair(plannedLeak)).steps.map(({ id }) => id);
    expect(ids.slice(ids.indexOf('survey'))).toEqual([
      'survey',
      'rough-cleaning',
      'seal',
      'putty',
      'surface',
      'gate',
      'filler',
      'filler-wait',
      'surface-again',
      'wrap',
      'cure',
      'inspection',
      'pressure-test',
      'return',
    ]);
  });

  it('has in every step something to do, what lets it go on, what stops it, whom to call and who signs', () => {
    for (const each of [plan, planWork(designRepair(plannedLeak)), planWork(designRepair(waterTape))]) {
      for (const { does, goes, stops, call, signs } of each.steps) {
        for (const lines of [does, goes, stops]) expect(lines.length).toBeGreaterThan(0);
        expect(call).not.toBe('');
        expect(signs).not.toBe('');
      }
    }
  });

  it('names in each line only amounts that it has', () => {
    for (const each of [plan, planWork(designRepair(plannedLeak))]) {
      const lines = [
        ...each.steps.flatMap(({ does, uses, practice, goes, stops }) => [does, uses, practice, goes, stops].flat()),
        ...each.alerts,
        ...each.removal,
      ];
      for (const { text, amounts = [] } of lines) {
        const named = new Set([...text.matchAll(/\{(\d)\}/gu)].map(([, index]) => Number(index)));
        expect([...named].sort()).toEqual(amounts.map((_, index) => index));
        for (const { value } of amounts) expect(value).toSatisfy(Number.isFinite);
      }
    }
  });

  it('releases no hold point by the clock: each wait says what is to be seen', () => {
    for (const id of ['filler-wait', 'cure']) {
      const { sort, goes, stops } = stepOf(plan, id);
      expect(sort).toBe('hold point');
      expect(stops.some(({ text }) => text.includes('Time alone is not enough'))).toBe(true);
      expect(goes.some(({ text }) => /print|Shore D/u.test(text))).toBe(true);
    }
  });

  it('waits on constant steel as long as the design says, and lays the wrap as long as its rolls', () => {
    const design = designed(constant);
    const own = planWork(design);
    for (const id of ['filler-wait', 'wrap', 'cure'] as const) {
      expect(timeOf(own, id)).toBe(timeOf(design.timeline, id));
    }
    const { cure } = constant.laminate;
    if (cure.mechanism !== 'two-part reaction') throw new Error('expected a reaction');
    const { activationEnergy = Number.NaN, referenceTemperature, cureTime } = cure;
    // Half a kelvin is what a thermometer is off whose error nobody states.
    const warmer = 1 / referenceTemperature - 1 / (constant.site.pipeTemperature - 0.5);
    expect(timeOf(own, 'cure')).toBeCloseTo(cureTime / Math.exp((activationEnergy / 8.31446261815324) * warmer), 6);
    expect(timeOf(own, 'wrap')).toBe(design.rolls.wrapTime);
  });

  it('knows no return while a step has no time, and says why', () => {
    expect(plan.withoutTime).toEqual(['permit', 'stock', 'survey', 'surface', 'surface-again', 'inspection', 'return']);
    const told = planWork(designRepair(constant), {
      durations: {
        permit: time.minute(30),
        survey: time.minute(45),
        surface: time.hour(2),
        inspection: time.hour(1),
        return: time.minute(20),
      },
    });
    const bare = planWork(designRepair(constant));
    expect(told.withoutTime).toEqual(['stock', 'surface-again']);
    expect(told.earliestReturn).toMatchObject({ known: false, because: 'stock, surface-again: nobody has stated it' });
    const all = Object.fromEntries(bare.withoutTime.map((id) => [id, time.minute(30)]));
    expect(planWork(designRepair(constant), { durations: all }).earliestReturn.known).toBe(true);
    expect(leastOf(told.earliestReturn) - leastOf(bare.earliestReturn)).toBeCloseTo(
      30 * 60 + 45 * 60 + 7200 + 3600 + 1200,
      6,
    );
  });

  it('never lets a stated time shorten a wait', () => {
    const cut = planWork(designRepair(constant), { durations: { cure: time.minute(5) } });
    expect(timeOf(cut, 'cure')).toBe(timeOf(planWork(designRepair(constant)), 'cure'));
  });

  it('names the chain that sets the return, and how much the rest can wait', () => {
    const told = planWork(designRepair(constant), {
      durations: { permit: time.hour(1), survey: time.hour(1), surface: time.hour(2), stock: time.hour(1.5) },
    });
    expect(told.criticalPath).not.toContain('stock');
    expect(stepOf(told, 'stock').slack).toBeCloseTo(2.5 * 3600, 6);
    expect(told.steps.filter(({ critical }) => critical).map(({ id }) => id)).toEqual(told.criticalPath);
    const slow = planWork(designRepair(constant), { durations: { surface: time.hour(2), stock: time.hour(5) } });
    expect(slow.criticalPath.slice(0, 2)).toEqual(['stock', 'gate']);
    expect(stepOf(slow, 'surface').slack).toBeCloseTo(3 * 3600, 6);
  });

  it('sees the filler placed later on colder steel, and waits as long as that takes', () => {
    // Twelve hours at 20 degC, then twelve at 14: placed at the eleventh hour, most of the wait is in the cold.
    const soon = timeOf(planWork(designRepair(planned)), 'filler-wait');
    const late = timeOf(planWork(designRepair(planned), { durations: { surface: time.hour(11) } }), 'filler-wait');
    expect(late).toBeGreaterThan(soon * 1.2);
  });

  it('says no hour of a wait that runs out of the forecast', () => {
    const short = planWork(designRepair(planned), { durations: { surface: time.hour(80) } });
    // 84 h of forecast, and laid at its 81st hour or later.
    const { duration, startsAt } = stepOf(short, 'cure');
    const forecast = (planned.site.forecast ?? []).reduce((sum, each) => sum + each.duration, 0);
    const because = 'the temperature history ends before it has cured';
    expect(duration).toEqual({ known: false, because, atLeast: expect.closeTo(forecast - startsAt, 6) });
    expect(short.earliestReturn).toMatchObject({ known: false, because: expect.stringContaining(`cure: ${because}`) });
    expect(short.withoutTime).toContain('cure');
  });

  it('has no steps for a design that was not made, and says why', () => {
    const refused = planWork(designRepair({ ...planned, fitting: { kind: 'tee' } }));
    expect(refused.steps).toEqual([]);
    expect(refused.verdict).toBe('not covered');
    expect(refused.reasons.length).toBeGreaterThan(0);
    const asking = planWork(
      designRepair({ ...planned, laminate: { ...planned.laminate, lapShearStrength: undefined } }),
    );
    expect(asking.steps).toEqual([]);
    expect(asking.missing.join()).toMatch(/lapShearStrength/);
  });

  it('brings whole packs, and at least what is used', () => {
    const design = designRepair(planned);
    const [tape, resin, filler] = plan.materials;
    expect(tape?.order?.value).toBe(design.wrap?.rolls);
    for (const [item, pack] of [
      [tape, planned.wrap.rollLength],
      [resin, planned.resin === 'none' ? 0 : planned.resin.kitMass],
      [filler, planned.filler === 'none' ? 0 : planned.filler.kitMass],
    ] as const) {
      expect(Number.isInteger(item?.order?.value)).toBe(true);
      expect((item?.order?.value ?? 0) * pack).toBeGreaterThanOrEqual(item?.use?.value ?? Number.POSITIVE_INFINITY);
    }
  });

  it('warns of what stands against the day: no crew, no hardness, a gate that says wait, steel bare for long', () => {
    const texts = (repairCase: RepairCase) =>
      planWork(designRepair(repairCase))
        .alerts.map(({ text }) => text)
        .join(' ');
    expect(texts(partWall)).toMatch(/no crew/);
    expect(texts(partWall)).toMatch(/No qualified hardness/);
    expect(texts(partWall)).toMatch(/says WAIT/);
    expect(texts(planned)).toMatch(/starts \{0\} after the steel was prepared/);
    expect(texts({ ...planned, filler: 'none' })).not.toMatch(/after the steel was prepared/);
  });

  it('lets nobody sign the return without the qualified hardness', () => {
    const unsigned = planWork(designRepair(partWall));
    expect(stepOf(unsigned, 'return').signs).toMatch(/nobody/);
    expect(stepOf(plan, 'return').signs).not.toMatch(/nobody/);
  });
});

describe('the hours of a plan', () => {
  const design = designRepair(constant);
  const at = (plan: WorkPlan, id: string) => hourOf(plan, stepOf(plan, id).startsAt);

  it('count from the start of the crew, or another one that is asked for', () => {
    expect(at(planWork(design), 'permit')).toBe('07:30');
    expect(at(planWork(design, { start: '13:05' }), 'permit')).toBe('13:05');
  });

  it('start on the hours of the forecast that belong to a later start', () => {
    const made = designRepair(planned);
    const night = timeOf(planWork(made, { start: '17:30' }), 'filler-wait');
    expect(night).toBeGreaterThan(timeOf(planWork(made), 'filler-wait'));
  });

  it('move with a real hour: what follows moves by as much', () => {
    const before = planWork(design);
    const moved = planWork(design, { actual: { filler: '09:10' } });
    const by = (9 * 60 + 10 - (7 * 60 + 30)) * 60;
    expect(at(moved, 'filler')).toBe('09:10');
    for (const id of ['filler-wait', 'wrap', 'cure', 'return']) {
      expect(stepOf(moved, id).startsAt - stepOf(before, id).startsAt).toBeCloseTo(by, 6);
    }
    expect(stepOf(moved, 'gate').startsAt).toBe(stepOf(before, 'gate').startsAt);
    expect(stepOf(moved, 'filler').actual).toBe('09:10');
  });

  it('cross midnight to the nearest day, or to the one that is named', () => {
    const before = planWork(design);
    const cured = stepOf(before, 'inspection').startsAt;
    const night = planWork(design, { actual: { inspection: '23:50' } });
    expect(Math.abs(stepOf(night, 'inspection').startsAt - cured)).toBeLessThanOrEqual(43_200);
    const named = planWork(design, { actual: { inspection: '4 10:00' } });
    expect(at(named, 'inspection')).toBe('day 4 10:00');
  });

  it('mark a step that was entered before a wait was over: the wait is not shortened', () => {
    const early = planWork(design, { actual: { filler: '08:00', wrap: '09:00' } });
    const wait = stepOf(early, 'filler-wait');
    const alert = early.alerts.find(({ text }) => text.includes('does not release it'));
    expect(timeOf(early, 'filler-wait')).toBe(timeOf(present(design.timeline), 'filler-wait'));
    expect(alert?.amounts?.[0]?.value).toBeCloseTo(wait.endsAt - stepOf(early, 'wrap').startsAt, 6);
    expect(stepOf(early, 'wrap').startsAt).toBeLessThan(wait.endsAt);
  });

  it.each([
    [{ start: '25:00' }, 'start'],
    [{ start: 'noon' }, 'start'],
    [{ actual: { filler: '9h' } }, 'actual.filler'],
    [{ actual: { lunch: '12:00' } }, 'actual.lunch'],
    [{ durations: { permit: -1 as Time } }, 'durations.permit'],
    [{ durations: { lunch: time.hour(1) } }, 'durations.lunch'],
  ])('refuse %j', (options, parameter) => {
    try {
      planWork(design, options);
    } catch (error) {
      expect(isCalculationError(error) && error.code).toBe('invalid-input');
      expect(isCalculationError(error) && error.parameter).toBe(parameter);
      return;
    }
    expect.fail('not refused');
  });

  it('refuse a real hour where nobody stated a start', () => {
    const { crew: _, ...nobody } = constant;
    expect(() => planWork(designRepair(nobody), { actual: { filler: '09:10' } })).toThrow(/start of the job/);
    expect(hourOf(planWork(designRepair(nobody)), time.hour(1))).toBeUndefined();
  });

  it('never bring the line back earlier when a step begins later', () => {
    const later = fc.integer({ min: 0, max: 11 * 60 });
    fc.assert(
      fc.property(later, later, (a, b) => {
        const back = (minutes: number): number => {
          const clock = 7 * 60 + 30 + minutes;
          const text = `${String(Math.floor(clock / 60)).padStart(2, '0')}:${String(clock % 60).padStart(2, '0')}`;
          return leastOf(planWork(design, { actual: { filler: text } }).earliestReturn);
        };
        expect(back(Math.max(a, b))).toBeGreaterThanOrEqual(back(Math.min(a, b)));
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });
});

describe('a hotter site', () => {
  it('never lengthens a wait of the plan nor a working time', () => {
    const degrees = fc.double({ min: 10.5, max: 38, noNaN: true });
    fc.assert(
      fc.property(degrees, degrees, (a, b) => {
        const [cool, warm] = [Math.min(a, b), Math.max(a, b)].map((each) => {
          const site = {
            ...plannedLeak.site,
            pipeTemperature: temperature.degC(each),
            airTemperature: temperature.degC(each),
          };
          const design = designRepair({ ...plannedLeak, site });
          const plan = planWork(design);
          return [
            ...(['putty', 'filler-wait', 'cure'] as const).map((id) => timeOf(plan, id)),
            ...listed(present(design.cures)).map(([, { workingTime }]) => workingTime),
          ];
        });
        warm?.forEach((warmTime, index) => {
          expect(warmTime).toBeLessThanOrEqual(cool?.[index] ?? Number.NaN);
        });
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });
});

describe('a moisture-cured system', () => {
  const rows = [
    {
      temperature: temperature.degC(15),
      humidity: 0.5 as never,
      cureTime: time.hour(10),
      workingTime: time.minute(30),
    },
    { temperature: temperature.degC(30), humidity: 0.8 as never, cureTime: time.hour(3), workingTime: time.minute(10) },
  ];
  const moist: RepairCase = {
    ...waterTape,
    laminate: { ...waterTape.laminate, cure: { mechanism: 'moisture', rows } },
    site: { ...waterTape.site, forecast: undefined },
  };

  it("never gets a time by Arrhenius: it waits by one of the maker's own rows", () => {
    const design = designRepair(moist, { record: true });
    expect(rows.map(({ cureTime }) => cureTime)).toContain(timeOf(present(design.timeline), 'cure'));
    expect(rows.map(({ workingTime }) => workingTime)).toContain(design.cures?.laminate.workingTime);
    expect(timeOf(planWork(design), 'cure')).toBe(timeOf(present(design.timeline), 'cure'));
  });

  it('outside the tested climate gets no time, and no plan', () => {
    const cold = {
      ...moist,
      site: { ...moist.site, pipeTemperature: temperature.degC(5), airTemperature: temperature.degC(5) },
      filler: 'none' as const,
    };
    expect(planWork(designRepair(cold)).steps).toEqual([]);
  });
});
