import { describe, expect, it } from 'vitest';
import { designRepair, planWork, type RepairCase } from '../../src/repair/index.js';
import { planHtml, planText } from '../../src/report/index.js';
import { partWall } from '../repair/example-case.js';
import { planned, plannedLeak } from '../repair/plan-cases.js';

const page = (repairCase: RepairCase) => planHtml(planWork(designRepair(repairCase)));

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
    // As far as the first amount, whose unit and digits the page chooses, or the first place to write on, which is a field.
    for (const { text } of said) expect(html).toContain(text.split(/\{|__/u)[0]?.trim());
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

  it('has a place for every blank of the text, each kept by a name of its own', () => {
    const names = [...page(plannedLeak).matchAll(/data-note="([^"]+)"/gu)].map(([, name]) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of ['telephone-designer', 'batch-0', 'permit-go-0-0', 'permit-sign-0-1'])
      expect(names).toContain(name);
    expect(page(plannedLeak).replaceAll(/<script.*?<\/script>/gsu, '')).not.toContain('____');
  });

  it('has a place for the steel of every hour of the cure, and for the gauge where the line is under pressure', () => {
    const plan = planWork(designRepair(plannedLeak));
    const cure = plan.steps.find(({ id }) => id === 'cure');
    const hours = cure?.duration.known === true ? Math.ceil(cure.duration.time / 3600) : 0;
    expect(hours).toBeGreaterThan(10);
    const html = page(plannedLeak);
    expect(html.match(/data-note="cure-steel-\d+"/gu)).toHaveLength(hours);
    expect(html.match(/data-note="cure-gauge-\d+"/gu)).toHaveLength(hours);
    expect(page(planned)).not.toContain('cure-gauge');
    expect(planText(plan)).toMatch(
      /HOURS Each hour from the start of this step: steel in degC,\s+gauge in bar\n {8}1 ______ ______/u,
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
