import { describe, expect, it } from 'vitest';
import { timeline } from '../../../src/index.js';
import { time } from '../../../src/quantity/index.js';
import { planWork } from '../../../src/repair/index.js';
import { designOf, secondsOf, stepOf } from '../../faults/answers.js';
import { leak, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { designed } from '../by-use.js';
import { planned } from '../plan-cases.js';

/** Waits over the hours that are foreseen: where these begin, where they end, and where they are too cold or beyond the tests. */

const history = (...steps: readonly (readonly [hours: number, celsius: number])[]): Paths => ({
  'site.history': steps.map(([hours, celsius]) => ({ duration: `${hours} h`, temperature: `${celsius} degC` })),
  'laminate.transitionCuredAt': '5 degC',
  'site.forecast': undefined,
});

describe('a history that ends too soon', () => {
  const asked = (file: typeof leak, changes: Paths) =>
    designOf(withPaths(file, changes)).missing.flatMap(({ field, why }) => (field === 'site.history' ? [why] : []));

  it.each([
    ['none', quietLoss, 100, []],
    ['laminate', quietLoss, 10, ['glass/epoxy tape']],
    ['putty, that cures first', leak, 0.1, ['hand-kneaded epoxy putty']],
    ['filler, once the putty has', leak, 1, ['two-part epoxy filler']],
    ['laminate, once both have', leak, 10, ['glass/epoxy tape']],
  ])('is asked for, by the name of what has not cured: %s', (_, file, hours, names) => {
    const changes = history([hours, 23]);
    expect(asked(file, changes)).toEqual(names.map((name) => expect.stringContaining(`ends before ${name}`)));
    expect(designOf(withPaths(file, changes)).timeline === undefined).toBe(names.length > 0);
  });

  it('leaves wait and return open in a plan that starts after its end', () => {
    const plan = planWork(designed(planned), { start: '6 07:30' });
    const because = 'the temperature history ends before it has cured';
    expect(stepOf(plan, 'cure').duration).toEqual({ known: false, because });
    expect(plan.cures?.history).toEqual([]);
    expect(plan.earliestReturn).toMatchObject({ known: false, because: expect.stringContaining(because) });
  });
});

describe('a cure that began before the first hour that is foreseen', () => {
  it('takes nobody knows how long', () => {
    const { timeline: hours, cures: laws } = designed(planned);
    const foreseen = planned.site.forecast?.map(({ duration, pipeTemperature: temperature }) => ({
      duration,
      temperature,
    }));
    const curesFrom = (seconds: number) =>
      timeline(
        { steps: hours.steps, laws, history: foreseen },
        { clock: { start: { seconds: 7 * 3600, namesDay: false }, began: { cure: { seconds, namesDay: true } } } },
      ).steps.find(({ id }) => id === 'cure')?.duration;
    expect(secondsOf(curesFrom(8 * 3600))).toBeGreaterThan(0);
    expect(curesFrom(0)).toEqual({ known: false, because: 'the temperature history begins after it was laid' });
  });
});

describe('steel that stays as it is read', () => {
  it('has no hours of its own in a plan', () => {
    const still = { 'site.forecast': undefined, 'site.history': undefined };
    expect(
      planWork(designOf(withPaths(quietLoss, still)), { durations: { surface: time.hour(1) } }).cures?.history,
    ).toEqual([]);
  });
});

describe('steel that is foreseen far warmer than the air', () => {
  const read = (celsius: number): Paths => ({ 'site.airTemperature': `${celsius} degC` });
  const forecast = (...rows: readonly (readonly [steel: number, air: number])[]): Paths => ({
    'site.history': undefined,
    'site.forecast': rows.map(([steel, air]) => ({
      duration: '100 h',
      pipeTemperature: `${steel} degC`,
      airTemperature: `${air} degC`,
      relativeHumidity: '50 %',
    })),
  });

  it.each<[string, Paths, number[]]>([
    ['a history ten kelvin above the air', { ...history([200, 18]), ...read(8.1) }, []],
    ['more', { ...history([200, 18]), ...read(7.9) }, [18, 7.9]],
    ['a history of day and night', { ...history([10, 20], [14, 13], [200, 20]), ...read(11) }, []],
    ['one that is heated after its first hour', { ...history([1, 12], [200, 25]), ...read(11) }, [25, 11]],
    ['a night that the pipe keeps warm', forecast([18, 17], [13, 9]), []],
    ['a night that is said to leave the steel as it was', forecast([18, 17], [18, 7]), [18, 7]],
    [
      'heated steel, of which another warning tells',
      { ...forecast([18, 7]), 'site.history': history([200, 30])['site.history'] },
      [],
    ],
  ])('is said once, with both temperatures: %s', (_, changes, celsius) => {
    const { warnings } = designOf(withPaths(quietLoss, changes));
    const told = warnings.filter(({ text }) => text.includes('count on steel of {0} in air of {1}'));
    const values = told.flatMap(({ amounts = [] }) => amounts.map(({ value }) => value - 273.15));
    expect(values).toEqual(celsius.map((each) => expect.closeTo(each, 9)));
  });
});

describe('a warning of the cure', () => {
  /** Putty that cures down to 5 degC, filler and laminate down to 10. */
  it.each([
    ['none is too cold', history([200, 23]), []],
    ['at the coldest that still cures, behind half a kelvin of error', history([200, 23], [5, 10.5]), []],
    ['too cold for two of three, even if long after', history([200, 23], [5, 8]), ['filler-wait', 'cure']],
    ['too cold for all', history([200, 23], [5, 4]), ['putty', 'filler-wait', 'cure']],
  ])('says that hours too cold for it count nothing, at its wait: %s', (_, changes, steps) => {
    const { warnings } = designOf(withPaths(leak, changes));
    expect(warnings.flatMap(({ text, step }) => (text.includes('too cold for') ? [step] : []))).toEqual(steps);
  });

  it.each([
    ['seal.putty', ['seal', 'putty']],
    ['filler', ['filler', 'filler-wait']],
    ['laminate', ['wrap', 'cure']],
  ])('beyond the tests of its maker stands where it is laid and where it is waited for: %s', (path, steps) => {
    // Tested at the reference temperature alone.
    const untested = { [`${path}.cure.testedFrom`]: '23 degC', [`${path}.cure.testedTo`]: '23 degC' };
    const told = (changes: Paths) =>
      designOf(withPaths(leak, { ...changes, ...history([200, 18]) })).warnings.flatMap(({ text, step }) =>
        text.includes('beyond the temperatures at which its maker tested') ? [step] : [],
      );
    expect(told({})).toEqual([]);
    expect(told(untested)).toEqual(steps);
  });
});

describe('air that is colder than the steel that a plan counts on', () => {
  const kelvin = (celsius: number) => celsius + 273.15;
  const told = (changes: Paths) =>
    designOf(
      withPaths(quietLoss, { 'site.history': undefined, 'site.forecast': undefined, ...changes }),
    ).warnings.flatMap(({ text, step, amounts = [] }) =>
      /the air is colder|in air of/.test(text) ? [{ step, values: amounts.map(({ value }) => value) }] : [],
    );
  const read = (steel: number, air: number): Paths => ({
    'site.pipeTemperature': `${steel} degC`,
    'site.airTemperature': `${air} degC`,
  });
  const hours = (steel: number, air: number) => ({
    'site.forecast': [
      { duration: '200 h', pipeTemperature: `${steel} degC`, airTemperature: `${air} degC`, relativeHumidity: '50 %' },
    ],
  });

  it.each<[string, Paths, number[]]>([
    ['nobody foresees it, and it is read warmer', read(20, 19), [20, 19]],
    ['nobody foresees it, and it is as warm', read(20, 20), []],
    ['a forecast keeps it warm', { ...read(20, 20), ...hours(25, 12) }, [25, 12]],
    ['a forecast has it ten kelvin above the air', { ...read(20, 20), ...hours(22, 12) }, []],
    ['a forecast has it colder than the air', { ...read(20, 20), ...hours(12, 25) }, []],
    ['a history keeps it warm', { ...read(18, 2), ...history([200, 18]), 'site.forecast': undefined }, [18, 2]],
    ['a history follows the air', { ...read(18, 10), ...history([200, 18]), 'site.forecast': undefined }, []],
  ])('is told at the first wait, with both: %s', (_, changes, celsius) => {
    const found = celsius.length === 0 ? [] : [{ step: 'cure', values: celsius.map(kelvin) }];
    expect(told(changes)).toEqual(found);
  });
});
