import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { time } from '../../../src/quantity/index.js';
import type { PlanOptions, RepairDesign } from '../../../src/repair/index.js';
import { designOf, planOf } from '../../../tests/faults/answers.js';
import { type CaseFile, leak, loss, type Paths, quietLoss, withPaths } from '../../../tests/faults/cases.js';

/** What the site says to the readings of the day, and what stands above the plan before anybody starts. */

interface Day {
  readonly from: CaseFile;
  readonly with?: Paths;
  /** Hours that are entered with the change. */
  readonly entered?: PlanOptions;
  readonly says: RegExp;
  /** A number of the alert, in SI units. */
  readonly value?: number;
  /** What the design holds where the alert stands, and not else. */
  readonly holds?: (design: RepairDesign) => boolean;
}

/** By share: a pound per square inch is written with seven figures here. */
const LIKE = 1e-6;

/** The alert stands over the changed plan, once, and not over the sound one. */
function alert(what: string, { from, with: changes = {}, entered = {}, says, value, holds }: Day): void {
  it(what, () => {
    const file = withPaths(from, changes);
    const told = (plan: ReturnType<typeof planOf>) => plan.alerts.filter(({ text }) => says.test(text));
    expect(told(planOf(from))).toEqual([]);
    const [first, ...more] = told(planOf(file, entered));
    expect(first).toBeDefined();
    expect(more).toEqual([]);
    if (value !== undefined) {
      const values = (first?.amounts ?? []).map((amount) => amount.value);
      expect(values.some((each) => Math.abs(each - value) <= LIKE * value)).toBe(true);
    }
    if (holds !== undefined) expect([designOf(from), designOf(file)].map(holds)).toEqual([false, true]);
  });
}

/** The site decides otherwise for the changed case, and by this check. */
function gate(what: string, from: CaseFile, changes: Paths, check: string): void {
  it(what, () => {
    const siteOf = (file: CaseFile) => {
      const { site } = designOf(file);
      const against = site?.reasons.filter(({ decision }) => decision !== 'go').map((reason) => reason.check);
      return { decision: site?.decision, against };
    };
    expect(siteOf(from)).toEqual({ decision: 'go', against: [] });
    expect(siteOf(withPaths(from, changes))).toEqual({ decision: 'wait', against: [check] });
  });
}

const hours = (...parts: readonly (readonly [duration: string, humidity: string])[]) =>
  parts.map(([duration, relativeHumidity]) => ({
    ...{ duration, relativeHumidity, pipeTemperature: '25 degC', airTemperature: '24 degC' },
  }));
const warm = (duration: string) => [{ duration, temperature: '25 degC' }];
/** A gate that is open now and stays open. */
const open: CaseFile = withPaths(quietLoss, { 'site.forecast': hours(['300 h', '50 %']) });
const HOUR = 3600;
const PSI = 6894.757;

describe('the site gate', () => {
  gate('without a forecast over the cure', quietLoss, { 'site.forecast': undefined }, 'forecast');
  gate('without a word about the steel', quietLoss, { 'site.surface': undefined }, 'steel prepared');
  alert('with a cure that the history does not reach, ten hours later', {
    from: withPaths(open, { 'site.history': warm('300 h') }),
    with: { 'site.history': warm('30 h') },
    entered: { start: '20:00' },
    says: /says WAIT/,
  });
});

describe('an alert of the plan', () => {
  alert('on a line that stays under pressure', {
    from: withPaths(loss, { line: { state: 'empty, dry, isolated, vented' } }),
    with: { line: loss['line'] },
    says: /UNDER PRESSURE/,
    value: 150 * PSI,
  });
  alert('where the steel stops the work', {
    from: quietLoss,
    with: { 'site.surface.grade': 'St 2' },
    says: /says STOP/,
    holds: ({ site }) => site?.decision === 'stop',
  });
  alert('where the weather is better later', {
    from: open,
    with: { 'site.relativeHumidity': '95 %', 'site.forecast': hours(['4 h', '95 %'], ['300 h', '50 %']) },
    says: /site says WAIT; the forecast/,
    value: 4 * HOUR,
    holds: ({ site }) => site?.weather === 'wait',
  });
  alert('where the steel lets the work wait', {
    from: quietLoss,
    with: { 'site.surface': undefined },
    says: /site says WAIT/,
    holds: ({ site }) => site?.steel === 'wait',
  });
  alert('where a roll is not laid in its working time', {
    from: withPaths(quietLoss, { resin: 'none' }),
    with: { 'crew.layingSpeed': '0.2 m/min' },
    says: /DOES NOT FIT/,
    holds: ({ rolls }) => rolls?.fits === false,
  });
  alert('where the test would break the repair', {
    from: quietLoss,
    with: { 'service.designTemperature': '25 degC', 'service.designPressure': '45 bar' },
    says: /NO PRESSURE TEST/,
    holds: ({ acceptance }) => (acceptance?.pressureTest.pressure ?? 0) > (acceptance?.pressureTest.resistance ?? 0),
  });
  alert('where nobody stated a qualified hardness', {
    from: quietLoss,
    with: { acceptance: undefined },
    says: /No qualified hardness/,
    holds: ({ acceptance }) => acceptance !== undefined && acceptance.hardness === undefined,
  });
  alert('where nobody stated a crew', {
    from: quietLoss,
    with: { crew: undefined },
    says: /no crew/,
    holds: ({ rolls }) => rolls !== undefined && rolls.wrapTime === undefined,
  });
  alert('where the steel lies bare while the filler cures', {
    from: withPaths(loss, { 'filler.cure.cureTime': '1 h' }),
    with: { 'filler.cure.cureTime': '9 h' },
    says: /after the steel was prepared/,
    value: 4 * HOUR,
  });
  alert('where a step is entered before another began', {
    from: leak,
    entered: { actual: { surface: '09:30', gate: '09:00' } },
    says: /before "Prepare .*" began/,
  });
  alert('where the wrap is entered before the filler is firm', {
    from: withPaths(loss, { 'filler.cure.cureTime': '4 h' }),
    entered: { actual: { filler: '08:30', wrap: '10:00' } },
    says: /Lay the wrap.* before the end of/,
  });
});

/** The input that a plan is refused for, with the unit of what is no text of a clock; none where it is made. */
function refusedOf(file: CaseFile, options: PlanOptions): string | undefined {
  try {
    planOf(file, options);
    return undefined;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return error.unit === '' ? error.parameter : `${error.parameter} [${error.unit}]`;
  }
}

describe('an hour that is entered', () => {
  const foreseen: CaseFile = withPaths(quietLoss, { 'site.history': warm('500 h'), 'crew.start': '07:30' });
  const nobody: CaseFile = withPaths(quietLoss, { crew: undefined });
  for (const [what, file, good, bad, parameter] of [
    ['as no hour of a clock', foreseen, { start: '07:30' }, { start: '7h30' }, 'start'],
    ['as a start before the foreseen hours', foreseen, { start: '07:30' }, { start: '07:00' }, 'start'],
    [
      'for a step before the foreseen hours',
      foreseen,
      { start: '07:30', actual: { wrap: '07:30' } },
      { start: '07:30', actual: { wrap: '07:00' } },
      'actual.wrap',
    ],
    [
      'without a start on the clock',
      nobody,
      { start: '07:30', actual: { wrap: '10:00' } },
      { actual: { wrap: '10:00' } },
      'actual.wrap',
    ],
    [
      'for a step that the job does not have',
      quietLoss,
      { actual: { wrap: '10:00' } },
      { actual: { filler: '10:00' } },
      'actual.filler',
    ],
    [
      'as a time of a step that is less than nothing',
      quietLoss,
      { durations: { survey: time.hour(1) } },
      { durations: { survey: time.hour(-1) } },
      'durations.survey [s]',
    ],
  ] as const)
    it(what, () => {
      expect(refusedOf(file, good)).toBeUndefined();
      expect(refusedOf(file, bad)).toBe(parameter);
    });
});
