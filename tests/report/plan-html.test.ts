import { createContext, runInContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { designRepair, hourOf, planWork, type RepairCase } from '../../src/repair/index.js';
import { leastOf } from '../../src/repair/timeline/duration.js';
import { planHtml } from '../../src/report/index.js';
import { partWall } from '../repair/example-case.js';
import { planned, plannedLeak } from '../repair/plan-cases.js';

const page = (repairCase: RepairCase) => planHtml(planWork(designRepair(repairCase)));
const constant: RepairCase = { ...planned, site: { ...planned.site, forecast: undefined } };

/** A page as far as its script touches it. */
function run(html: string): { enter: (step: string, hour: string) => void; shown: (id: string) => string } {
  const [, data = ''] = /<script type="application\/json" id="plan">(.*?)<\/script>/su.exec(html) ?? [];
  const [, script = ''] = /<script>(.*?)<\/script>/su.exec(html) ?? [];
  const elements = new Map<string, { textContent: string }>([['plan', { textContent: data }]]);
  for (const [, id = '', text = ''] of html.matchAll(/<output id="([^"]+)">(.*?)<\/output>/gsu))
    elements.set(id, { textContent: text });
  const fields = [...html.matchAll(/data-step="([^"]+)"/gu)].map(([, step = '']) => {
    const field = {
      step,
      value: '',
      listeners: [] as (() => void)[],
      addEventListener: (_: string, call: () => void) => field.listeners.push(call),
    };
    return field;
  });
  const document = {
    getElementById: (id: string) => elements.get(id),
    querySelector: (selector: string) => fields.find(({ step }) => selector === `[data-step="${step}"]`),
    querySelectorAll: () => fields,
  };
  runInContext(script, createContext({ document, JSON, Math }));
  return {
    enter: (step, hour) => {
      const field = fields.find((each) => each.step === step);
      if (field === undefined) throw new Error(`no field ${step}`);
      field.value = hour;
      for (const listener of field.listeners) listener();
    },
    shown: (id) => elements.get(id)?.textContent ?? '',
  };
}

describe('a plan as a page', () => {
  it('needs nothing from elsewhere', () => {
    expect(page(planned)).not.toMatch(/https?:|<link|<img|src=|@import|url\(/u);
  });

  it('reads without its script: every line of the text plan stands on it', () => {
    const html = page(plannedLeak)
      .replaceAll(/<script.*?<\/script>/gsu, '')
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&')
      .replaceAll('&lt;', '<');
    const plan = planWork(designRepair(plannedLeak));
    for (const step of plan.steps) expect(html).toContain(step.title.replaceAll('"', '"'));
    const said = plan.steps.flatMap(({ does, uses, goes, stops }) => [...does, ...uses, ...goes, ...stops]);
    expect(said.length).toBeGreaterThan(50);
    // As far as the first amount, whose unit and digits the page chooses.
    for (const { text } of said) expect(html).toContain(text.split('{')[0]?.trim());
  });

  it('escapes what the case says', () => {
    const html = page({ ...planned, title: 'line <b>"7" & 8</b></script>' });
    expect(html).toContain('line &lt;b&gt;&quot;7&quot; &amp; 8&lt;/b&gt;');
    expect(html).not.toContain('<b>"7"');
  });

  it('has a field for the real hour of each step', () => {
    const plan = planWork(designRepair(planned));
    for (const { id } of plan.steps) expect(page(planned)).toContain(`data-step="${id}"`);
  });

  it('moves the hours as the plan itself does when a real hour is entered', () => {
    const design = designRepair(constant);
    const browser = run(planHtml(planWork(design)));
    browser.enter('filler', '09:10');
    const moved = planWork(design, { actual: { filler: '09:10' } });
    for (const step of moved.steps) {
      expect(browser.shown(`when-${step.id}`)).toContain(hourOf(moved, step.startsAt));
    }
    expect(browser.shown('return')).toContain(hourOf(moved, leastOf(moved.earliestReturn)));
    browser.enter('wrap', '09:30');
    expect(browser.shown('when-wrap')).toMatch(/began 09:30.*does not release it/);
    browser.enter('wrap', '');
    expect(browser.shown('when-wrap')).toContain(
      hourOf(moved, moved.steps.find(({ id }) => id === 'wrap')?.startsAt ?? (0 as never)),
    );
  });

  it('has no script where nobody stated a start', () => {
    expect(page(partWall)).not.toContain('<script');
  });

  it('sends nobody to work on a design that was not made', () => {
    const html = page({ ...planned, fitting: { kind: 'tee' } });
    expect(html).toContain('No work: the design says not covered');
    expect(html).not.toContain('data-step');
  });
});
