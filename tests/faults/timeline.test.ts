import { describe, expect, it } from 'vitest';
import type { Time } from '../../src/quantity/index.js';
import type { WorkPlan } from '../../src/repair/index.js';
import { designOf, isSaidUnknown, planOf, secondsOf, stepOf } from './answers.js';
import { type CaseFile, leak, loss, withPaths } from './cases.js';

/** Issue 9, items 7, 9 and 10: what becomes of the hours. */

const HOUR = 3600;
const preparing = (hours: number) => ({ durations: { surface: (hours * HOUR) as Time } });

/** From the gate to the end of the cure, in hours. */
function hoursOfWork(plan: WorkPlan): number {
  const [gate, cure] = [stepOf(plan, 'gate'), stepOf(plan, 'cure')];
  return (cure.endsAt - gate.startsAt) / HOUR;
}

/** Steel and air over the coming hours: how long, how warm, how damp. */
const forecast = (...stretches: readonly (readonly [hours: number, celsius: number, humidity: string])[]) =>
  stretches.map(([hours, celsius, relativeHumidity]) => ({
    duration: `${hours} h`,
    pipeTemperature: `${celsius} degC`,
    airTemperature: `${celsius - 1} degC`,
    relativeHumidity,
  }));

describe('a wait beyond the forecast', () => {
  /** The forecast of 72 h covers the cure after 20 h of preparation, and not after 30. */
  const [short, long] = [planOf(leak, preparing(20)), planOf(leak, preparing(30))];

  it('is known while the forecast reaches over it', () => {
    expect(secondsOf(stepOf(short, 'cure').duration)).toBeGreaterThan(30 * HOUR);
  });

  it('never brings the line back earlier', () => {
    const [sooner, later] = [short, long].map((plan) => secondsOf(plan.earliestReturn) ?? Number.POSITIVE_INFINITY);
    expect(later).toBeGreaterThanOrEqual(sooner ?? Number.NaN);
  });

  it('is said not to be known, with the reason', () => {
    expect(isSaidUnknown(stepOf(long, 'cure').duration)).toBe(true);
  });

  it('leaves the return to service not known either', () => {
    expect(isSaidUnknown(long.earliestReturn)).toBe(true);
  });
});

describe('the hours of design and plan', () => {
  /** 4 h of 35 degC, then 11 degC: an hour later at the wrap is a day part later at the end. */
  const chilled = (damp: string): CaseFile =>
    withPaths(leak, {
      'site.history': undefined,
      'site.pipeTemperature': '35 degC',
      'site.airTemperature': '34 degC',
      'site.forecast': forecast([4, 35, '50 %'], [49, 11, '70 %'], [4, 11, damp], [100, 11, '70 %']),
      'seal.putty.cure.cureTime': '1 h',
      'filler.rate': '0.02 kg/min',
    });

  it('reach over the 53rd to the 57th hour, and dry they let the weather go', () => {
    expect(hoursOfWork(planOf(chilled('70 %')))).toBeGreaterThan(53);
    expect(designOf(chilled('70 %')).site?.weather).toBe('go');
  });

  it('are the same for the cure of the laminate', () => {
    const cure = designOf(leak).timeline?.steps.find(({ id }) => id === 'cure')?.duration;
    expect(cure?.known).toBe(true);
    expect(secondsOf(cure?.known === true ? cure.time : undefined)).toBeCloseTo(
      secondsOf(stepOf(planOf(leak), 'cure').duration) ?? Number.NaN,
      3,
    );
  });

  it('are the same for the time that the climate has to hold', () => {
    const held = secondsOf(designOf(chilled('70 %')).site?.holdTime);
    expect((held ?? Number.NaN) / HOUR).toBeCloseTo(hoursOfWork(planOf(chilled('70 %'))), 6);
  });

  it('never let the weather go over a stretch of 97 per cent humidity', () => {
    expect(designOf(chilled('97 %')).site?.weather).not.toBe('go');
  });

  it('are those of the plan in its gate: a day of preparation moves it into the damp', () => {
    // The design alone is done after 25 h; with a day of preparation it works through hours 34 to 48.
    const gate = (damp: string) => {
      const stretches = forecast(
        [10, 25, '45 %'],
        [14, 25, '65 %'],
        [10, 25, '45 %'],
        [14, 25, damp],
        [40, 25, '60 %'],
      );
      return stepOf(planOf(withPaths(loss, { 'site.forecast': stretches }), preparing(24)), 'gate');
    };
    expect(gate('97 %')).not.toEqual(gate('65 %'));
  });
});

describe('the wrap within its working time', () => {
  const rollsOf = (changes: Readonly<Record<string, unknown>>) => {
    const { rolls, verdict } = designOf(withPaths(loss, changes));
    if (rolls?.chargeTime === undefined || rolls.workingTime === undefined) throw new Error(verdict);
    return { fits: rolls.fits, charge: rolls.chargeTime, working: rolls.workingTime };
  };

  it('is judged where the crew is stated', () => {
    expect(rollsOf({ 'crew.crews': 1 }).fits).toBe(true);
  });

  it('never fits where it takes more than 0.8 of it', () => {
    expect(rollsOf({ 'crew.soakTime': '25 min' }).fits).toBe(false);
    const { fits, charge, working } = rollsOf({ 'crew.crews': 2 });
    expect([fits, charge > 0.8 * working]).not.toEqual([true, true]);
  });

  it('is one helix that no second crew makes shorter', () => {
    expect(rollsOf({ 'crew.crews': 2 }).charge).toBe(rollsOf({ 'crew.crews': 1 }).charge);
  });

  it('takes the error of the thermometer off the working time', () => {
    const working = (temperatureError: string): number =>
      rollsOf({ 'site.instruments.temperatureError': temperatureError }).working;
    expect(working('5 K')).toBeLessThan(working('0.5 K'));
  });

  it('is that of the laminate, whatever the filler is called', () => {
    /** Filler 200 min, laminate 20 min. */
    const named = (name: string) =>
      rollsOf({ 'filler.name': name, 'filler.cure.workingTime': '200 min', 'laminate.cure.workingTime': '20 min' });
    expect(named('glass/epoxy tape, demonstration data')).toEqual(named('filler'));
  });
});
