import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { planScriptFile } from '../../../docs/plan-script.js';
import { attempt } from '../../../src/formula/index.js';
import { decodeCase } from '../../../src/json/index.js';
import { designRepair, hourOf, planWork, type WorkPlan } from '../../../src/repair/index.js';
import { leastOf } from '../../../src/repair/timeline/duration.js';
import { planHtml } from '../../../src/report/index.js';
import { planStepTimes } from '../../../src/report/plan-text.js';
import { exampleDocument } from '../../json/examples.js';
import { planned } from '../../repair/plan-cases.js';
import { runPage } from './page-run.js';

const { case: example } = decodeCase(exampleDocument('cooling-water-leak.json'));
const design = designRepair(example);
const plan = planWork(design);
const holds = plan.steps.filter(({ sort }) => sort === 'hold point').map(({ id }) => id);
const isStopped = ({ steps }: WorkPlan): boolean => steps.some(({ stop }) => stop !== undefined);
const backOf = (moved: WorkPlan): string => hourOf(moved, leastOf(moved.earliestReturn)) ?? '';

describe('the script of the plan', () => {
  it('is what a fresh build of the timeline gives: npm run plan-script', () => {
    const kept = readFileSync(new URL('../../../src/report/page/plan-script.ts', import.meta.url), 'utf8');
    expect(kept).toBe(planScriptFile());
  });
});

describe('hours on the page of a plan', () => {
  it('stand at first as in the plan', () => {
    const page = runPage(planHtml(plan));
    for (const step of plan.steps) expect(page.shown(`when-${step.id}`)).toBe(planStepTimes(plan, step));
    expect(page.shown('return')).toContain(backOf(plan));
  });

  it('are those of the command to the minute, whatever hours are entered, waits and all', () => {
    const steps = ['seal', 'surface', 'filler', 'wrap', 'inspection'];
    const hour = fc
      .tuple(fc.oneof({ arbitrary: fc.integer({ min: 12, max: 21 }), weight: 9 }, fc.nat(23)), fc.nat(59))
      .map((parts) => parts.map((part) => String(part).padStart(2, '0')).join(':'));
    const late = fc.uniqueArray(fc.tuple(fc.constantFrom(...steps), hour), { maxLength: 4, selector: ([id]) => id });
    let [other, refused, stopped] = [0, 0, 0];
    fc.assert(
      fc.property(late, (entered) => {
        const actual = Object.fromEntries(entered);
        const page = runPage(planHtml(plan));
        for (const id of holds) page.pass(id);
        for (const [id, at] of entered) page.enter(id, at);
        const asked = attempt(() => planWork(design, { actual, passed: holds }));
        if (!asked.ok) {
          // Before the hours that the case foresees the command refuses; the page marks the step and gives no time.
          expect(page.shown('return')).toContain('no time');
          refused += 1;
          return;
        }
        const moved = asked.value;
        for (const step of moved.steps) expect(page.shown(`when-${step.id}`)).toBe(planStepTimes(moved, step));
        const wait = (all: WorkPlan): number =>
          leastOf(all.steps.find(({ id }) => id === 'cure')?.duration ?? plan.earliestReturn);
        if (wait(moved) !== wait(plan)) other += 1;
        expect(page.shown('return').includes('no time')).toBe(!moved.earliestReturn.known && isStopped(moved));
        for (const { id, stop } of moved.steps) expect(page.shown(`fault-${id}`)).toBe(stop ?? '');
        if (isStopped(moved)) stopped += 1;
        else expect(page.shown('return')).toContain(backOf(moved));
      }),
      { seed: 20261125, numRuns: 150 },
    );
    // Colder or warmer hours make another wait: a page that kept the waits of the morning would not pass.
    expect(other).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(5);
    expect(stopped).toBeGreaterThan(20);
  });

  it('stay over a reload, apart from those of another plan, until they are cleared', () => {
    const store = new Map<string, string>();
    const html = planHtml(plan);
    const before = runPage(html, store);
    for (const id of holds) before.pass(id);
    before.enter('filler', '13:20');
    const again = runPage(html, store);
    expect(again.shown('when-filler')).toBe(before.shown('when-filler'));
    expect(again.shown('when-filler')).toContain('began 13:20');
    expect(runPage(planHtml(planWork(designRepair(planned))), store).shown('when-filler')).not.toContain('began');
    again.clear();
    expect(again.shown('when-filler'), 'asked, and not yet erased').toContain('began 13:20');
    again.clear();
    expect(again.shown('when-filler')).toBe(runPage(html).shown('when-filler'));
    expect(runPage(html, store).shown('when-filler')).toBe(runPage(html).shown('when-filler'));
  });

  it('move on a page that may keep nothing too', () => {
    const page = runPage(planHtml(plan), undefined);
    page.enter('permit', '09:00');
    expect(page.shown('when-permit')).toContain('began 09:00');
  });
});

describe('the cards on a telephone', () => {
  const narrow = (store?: Map<string, string>) => runPage(planHtml(plan), store, true);

  it('are folded but for the step that comes next, also after a reload', () => {
    const store = new Map<string, string>();
    const page = narrow(store);
    expect(page.open()).toEqual(['permit']);
    page.enter('permit', '07:40');
    expect(page.open()).toEqual(['permit']);
    page.pass('permit');
    expect(page.open()).toEqual(['permit', 'stock']);
    page.enter('stock', '08:00');
    expect(narrow(store).open()).toEqual(['survey']);
  });

  it('are all open on a desk, on paper and when they are asked for', () => {
    const all = plan.steps.map(({ id }) => id);
    expect(runPage(planHtml(plan)).open()).toEqual(all);
    const printed = narrow();
    printed.print();
    expect(printed.open()).toEqual(all);
    const asked = narrow();
    asked.openAll();
    expect(asked.open()).toEqual(all);
  });

  it('open where a hold point was passed over: what is wrong is never folded away', () => {
    const page = narrow();
    page.pass('gate');
    expect(page.marked('step-survey')).toBe(true);
    expect(page.open()).toContain('survey');
  });
});

describe('a hold point that is passed over', () => {
  test('is marked, and there is no return time until it is passed', () => {
    const page = runPage(planHtml(plan));
    page.enter('wrap', '16:00');
    for (const id of ['gate', 'filler-wait']) {
      expect(page.marked(`step-${id}`), id).toBe(true);
      expect(page.shown(`fault-${id}`)).toMatch(/^Hold point passed over/);
    }
    expect(page.marked('step-cure')).toBe(false);
    expect(page.shown('return')).toMatch(/^Back in service: no time\. Stop and call: /);
    expect(page.marked('return')).toBe(true);
    for (const id of holds.slice(0, holds.indexOf('cure'))) page.pass(id);
    expect(page.shown('return')).not.toContain('no time');
    expect(page.marked('return')).toBe(false);
  });

  test('stands as it was told to the plan, until it is entered otherwise', () => {
    const told = planWork(design, { actual: { wrap: '16:00' }, passed: holds.slice(0, holds.indexOf('cure')) });
    expect(runPage(planHtml(told)).shown('return')).toContain(backOf(told));
    const untold = planWork(design, { actual: { wrap: '16:00' } });
    expect(runPage(planHtml(untold)).shown('return')).toContain('no time');
    expect(planHtml(untold)).toContain('Hold point passed over');
  });

  test('is one whose later hold point is marked as passed, too', () => {
    const page = runPage(planHtml(plan));
    page.pass('cure');
    expect(page.marked('step-filler-wait')).toBe(true);
    expect(page.shown('return')).toContain('no time');
  });

  test('is not made good by its mark where the work began before the foreseen hours', () => {
    const page = runPage(planHtml(plan));
    for (const id of holds) page.pass(id);
    for (const id of ['filler', 'filler-wait', 'permit']) {
      page.enter(id, '07:00');
      expect(page.shown(`fault-${id}`), id).toMatch(/^Began before the start of the job/);
      expect(page.shown('return')).toContain('no time');
      page.enter(id, '');
      expect(page.shown('return')).not.toContain('no time');
    }
    page.enter('filler-wait', '07:00');
    expect(page.shown('when-filler-wait')).toContain('time not known');
  });

  test('is not made good by its mark where the work began before the wait was over', () => {
    const page = runPage(planHtml(plan));
    for (const id of holds) page.pass(id);
    page.enter('filler', '09:00');
    page.enter('wrap', '09:30');
    expect(page.shown('fault-wrap')).toBe('Began before the step in front of it had ended.');
    expect(page.shown('return')).toContain('no time');
  });
});
