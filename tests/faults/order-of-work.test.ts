import { describe, expect, it } from 'vitest';
import type { PlanStep } from '../../src/repair/index.js';
import { designOf, idsOf, linesOf, newWarnings, planOf, stepOf, verdictOf } from './answers.js';
import { type CaseFile, emptyLeak, evenLoss, leak, loss, withPaths } from './cases.js';

/** Issue 9, items 8 and 9: the order of the work, and what the design warns of. */

const textsOf = (step: PlanStep): string[] => linesOf(step).map(({ text }) => text);
const allTexts = (file: CaseFile): string[] => planOf(file).steps.flatMap(textsOf);

describe('the order of the work on a leak', () => {
  const ids = idsOf(planOf(leak));
  const place = (id: string): number => {
    expect(ids).toContain(id);
    return ids.indexOf(id);
  };

  it('has all its steps', () => {
    for (const id of ['permit', 'survey', 'seal', 'putty', 'surface', 'gate', 'filler', 'wrap']) place(id);
  });

  it('seals the leak and lets the putty grow firm before the steel is prepared', () => {
    const order = ['seal', 'putty', 'surface', 'gate', 'filler', 'wrap'].map(place);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it('cleans roughly before the seal, in a step of its own', () => {
    const before = ids.slice(0, place('seal')).filter((id) => !['permit', 'stock', 'survey'].includes(id));
    expect(before.filter((id) => !['surface', 'gate'].includes(id))).not.toEqual([]);
  });

  it('prepares again what stayed bare too long, as a hold point that somebody signs', () => {
    // The filler takes 5.9 h; bare steel is good for 4.
    expect(stepOf(planOf(leak), 'wrap').startsAt - stepOf(planOf(leak), 'surface').endsAt).toBeGreaterThan(4 * 3600);
    const between = planOf(leak).steps.slice(place('filler-wait') + 1, place('wrap'));
    expect(between.filter(({ sort, signs }) => sort === 'hold point' && signs !== '')).not.toEqual([]);
  });
});

describe('a line that stays under pressure', () => {
  it('says so before anything else, with its pressure', () => {
    const pressure = designOf(loss).line?.pressure;
    expect(pressure).toBeGreaterThan(0);
    const [first] = planOf(loss).alerts;
    expect(first?.amounts ?? []).toContainEqual(expect.objectContaining({ kind: 'gauge pressure', value: pressure }));
  });
});

describe('the warnings of the design', () => {
  /** 600 mm of thinned wall round the hole, 10 bar; with 7.5 mm left it would leak, with 3.1 mm tear open. */
  const round = (remainingWall: string) =>
    withPaths(leak, {
      'defect.axialLength': '600 mm',
      'defect.remainingWall': remainingWall,
      'defect.growth': { depth: '0.01 mm/year', length: '0.2 mm/year' },
      'service.designPressure': '10 bar',
    });
  const [tears, leaks] = [round('3.1 mm'), round('7.5 mm')];
  /** The same pipe, dry and empty as well, with a loss in place of the hole. */
  const noLeak = withPaths(emptyLeak, {
    'defect.kind': 'metal loss',
    'defect.holeDiameter': undefined,
    'defect.remainingWall': '6 mm',
    'defect.growth': { depth: '0.01 mm/year', length: '0.2 mm/year' },
  });

  it('are there: tearing open, and a line that has to be empty and dry', () => {
    expect(newWarnings(tears, leaks)).toHaveLength(1);
    expect([emptyLeak, noLeak].map(verdictOf)).toEqual(['designed', 'designed']);
    expect(newWarnings(emptyLeak, noLeak)).not.toEqual([]);
  });

  it('stand in the plan: tearing open', () => {
    const known = new Set(allTexts(leaks));
    expect(allTexts(tears).filter((text) => !known.has(text))).not.toEqual([]);
  });

  it('stand in the plan: a leaking line that has to be empty and dry before it is touched', () => {
    const known = new Set(textsOf(stepOf(planOf(noLeak), 'permit')));
    expect(textsOf(stepOf(planOf(emptyLeak), 'permit')).filter((text) => !known.has(text))).not.toEqual([]);
  });

  /**
   * The issue counts 44.0 bar against 41.6: that is what the laminate resists at the end of its life at 60 degC. By the
   * issue's own words the test is held to the day on which it is made: 25 degC, no mismatch, the wall of today.
   */
  it('stand in the plan: no test above what the repair resists on the day of the test', () => {
    const { acceptance, laminate } = designOf(loss);
    const { pressure, resistance } = acceptance?.pressureTest ?? {};
    expect(pressure).toBeGreaterThan(laminate?.resistance.value ?? Number.NaN);
    expect(pressure).toBeLessThanOrEqual(resistance ?? Number.NaN);
    // By hand: hoop strain 0.25 % of class 3 in place of 0.1953 %, without mismatch and at a temperature factor of 1.
    expect((resistance ?? Number.NaN) / (laminate?.resistance.value ?? Number.NaN)).toBeCloseTo(0.0025 / 0.001953, 4);
  });

  it('put a stop in place of the pressure test where that level lies above it', () => {
    // As warm in service as on the day, and at 45 bar the whole plies leave next to nothing: 49.5 bar against 45.6.
    const full = withPaths(evenLoss, { 'service.designPressure': '45 bar' });
    const { acceptance } = designOf(full);
    const { pressure, resistance } = acceptance?.pressureTest ?? {};
    expect(pressure).toBeGreaterThan(resistance ?? Number.NaN);
    const step = stepOf(planOf(full), 'pressure-test');
    expect(step.title).toMatch(/^STOP/);
    expect(step.signs).toMatch(/nobody/);
    expect(linesOf(step).some(({ text }) => /^(?:Raise|Fill)/u.test(text))).toBe(false);
    expect(planOf(full).alerts.map(({ text }) => text)).toContainEqual(expect.stringMatching(/NO PRESSURE TEST/));
  });
});
