import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { planHtml } from '../../src/report/index.js';
import { planStepTimes } from '../../src/report/plan-text.js';
import { exampleDocument } from '../json/examples.js';
import { launchChromium } from './chromium.js';
import { openPage, type WatchedPage } from './open-page.js';

const design = designRepair(decodeCase(exampleDocument('cooling-water-leak.json')).case);
const plan = planWork(design);

let browser: Browser;
let watched: WatchedPage;
beforeAll(async () => {
  browser = await launchChromium();
  watched = await openPage(browser, { 'index.html': planHtml(plan) });
});
afterAll(async () => {
  await watched?.close();
  await browser?.close();
});

describe('the page of the plan in a browser', () => {
  it('runs under its own security policy, moves by the command, and keeps what was entered over a reload', async () => {
    const { page, complaints } = watched;
    await page.fill('[data-step="filler"]', '15:45');
    for (const box of await page.locator('[data-hold]').all()) await box.check();
    const moved = planWork(design, { actual: { filler: '15:45' } });
    const shown = async (): Promise<(string | null)[]> =>
      Promise.all(moved.steps.map(({ id }) => page.locator(`#when-${id}`).textContent()));
    expect(await shown()).toEqual(moved.steps.map((step) => planStepTimes(moved, step)));
    await page.reload();
    expect(await shown()).toEqual(moved.steps.map((step) => planStepTimes(moved, step)));
    await page.uncheck('[data-hold="gate"]');
    expect(await page.locator('#return').textContent()).toContain('no time');
    await page.click('#clear');
    await page.click('#clear');
    expect(await shown()).toEqual(plan.steps.map((step) => planStepTimes(plan, step)));
    expect(complaints).toEqual([]);
  });
});
