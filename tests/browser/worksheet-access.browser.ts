import axe, { type AxeResults } from 'axe-core';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { worksheetPage } from '../../docs/worksheet/build.js';
import { launchChromium } from './chromium.js';
import { box, type OpenWorksheet, openWorksheet, verdictOf } from './open-worksheet.js';

/** A page of many fields, gone through by axe on a busy machine. */
const SLOW = 240_000;

let browser: Browser;
let html: string;
let sheet: OpenWorksheet;
beforeAll(async () => {
  browser = await launchChromium();
  html = worksheetPage();
});
afterAll(() => browser?.close());
afterEach(() => sheet?.close());

const screens: Readonly<Record<string, BrowserContextOptions>> = {
  'a desktop, light': { viewport: { width: 1400, height: 900 }, colorScheme: 'light' },
  'a desktop, dark': { viewport: { width: 1400, height: 900 }, colorScheme: 'dark' },
  'a telephone, light': { viewport: { width: 390, height: 844 }, colorScheme: 'light' },
  'a telephone, dark': { viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
};

/** What axe finds against, with where it stands. */
async function violations(page: Page, within = 'body'): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations: found }: AxeResults = await page.evaluate(`axe.run(document.querySelector('${within}'))`);
  return found.flatMap(({ id, nodes }) =>
    nodes.slice(0, 4).map((node) => `${id}: ${node.target.join(' ')} ${node.failureSummary ?? ''}`),
  );
}

/** Scrolls from the top of a panel to its end, so that all of it has been in sight. */
async function readThrough(page: Page, panel: string): Promise<void> {
  await page.evaluate(`(async () => {
    const parts = [...document.querySelectorAll('${panel} .sheet')].flatMap(({ shadowRoot }) => [...(shadowRoot?.querySelectorAll('.step') ?? [])]);
    for (const part of parts) {
      part.scrollIntoView();
      await new Promise(requestAnimationFrame);
    }
    await new Promise(requestAnimationFrame);
  })()`);
}

async function isTooWide(page: Page): Promise<boolean> {
  return page.evaluate('document.documentElement.scrollWidth > document.documentElement.clientWidth');
}

describe.each(Object.entries(screens))('the worksheet on %s', (_, options) => {
  it(
    'has nothing that axe finds against, empty, answered, refused, and with a plan',
    async () => {
      sheet = await openWorksheet(browser, html, options);
      const { page } = sheet;
      expect(await violations(page)).toEqual([]);
      await page.click('#take-example');
      await verdictOf(page, /^Designed/u);
      await page.locator('.keep summary').click();
      expect(await violations(page, '#answer')).toEqual([]);
      expect(await violations(page, '#part-site')).toEqual([]);
      for (const tab of ['drawing', 'sheet', 'plan']) {
        await page.click(`#tab-${tab}`);
        expect(await isTooWide(page), `${tab} is wider than the screen`).toBe(false);
      }
      expect(await violations(page, '#answer')).toEqual([]);
      await page.selectOption(box('service.designPressure', 'unit'), '');
      await page.fill(box('title'), '');
      await verdictOf(page, /1 field to mend, 1 still to fill in/u);
      for (const part of ['#answer', '#part-job', '#part-measured', '#part-carries'])
        expect(await violations(page, part), part).toEqual([]);
      expect(await isTooWide(page), 'a refusal is wider than the screen').toBe(false);
    },
    SLOW,
  );

  it(
    'has nothing that axe finds against as a calculator',
    async () => {
      sheet = await openWorksheet(browser, html, options);
      const { page } = sheet;
      await page.click('#view-formula');
      await page.fill('#find', 'hoop stress');
      await page.click('#found button >> text=Hoop stress on the outside diameter');
      await page.fill(box('pressure'), '150 psig');
      await page.fill(box('outsideDiameter'), '12 3/4 in');
      await page.fill(box('wallThickness'), '0.33 in');
      await page.fill('#claimed', '1449 psi');
      await page.locator('#result .word').waitFor();
      expect(await violations(page)).toEqual([]);
      expect(await isTooWide(page), 'the calculator is wider than the screen').toBe(false);
    },
    SLOW,
  );
});

describe('the sheet and the drawing on the worksheet', () => {
  it(
    'have nothing that axe finds against',
    async () => {
      sheet = await openWorksheet(browser, html);
      const { page } = sheet;
      await page.click('#take-example');
      await verdictOf(page, /^Designed/u);
      for (const tab of ['drawing', 'sheet']) {
        await page.click(`#tab-${tab}`);
        await readThrough(page, `#panel-${tab}`);
        expect(await violations(page, `#panel-${tab}`), tab).toEqual([]);
      }
    },
    SLOW,
  );
});

describe('the worksheet by keyboard alone', () => {
  it('goes from the first field to a refusal and back to an answer', async () => {
    sheet = await openWorksheet(browser, html);
    const { page } = sheet;
    const active = (): Promise<string> => page.evaluate('document.activeElement.id');
    const tabTo = async (id: string): Promise<void> => {
      for (let presses = 0; presses < 400 && (await active()) !== id; presses++) await page.keyboard.press('Tab');
      expect(await active()).toBe(id);
    };
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await active()).toBe('form-title');
    await tabTo('take-example');
    await page.keyboard.press('Enter');
    await verdictOf(page, /^Designed/u);
    await tabTo('defect.axialLength/box');
    await page.keyboard.type('6 furlong');
    await page.keyboard.press('Tab');
    await verdictOf(page, /^No answer: 1 field to mend/u);
    await page.focus('#panel-summary .link');
    await page.keyboard.press('Enter');
    expect(await active()).toBe('defect.axialLength/box');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('60 mm');
    await verdictOf(page, /^Designed/u);
    await page.focus('#tab-summary');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await active()).toBe('tab-sheet');
    expect(await page.locator('#panel-sheet').isVisible()).toBe(true);
  });

  it('keeps the place in the form when a choice brings other fields', async () => {
    sheet = await openWorksheet(browser, html);
    const { page } = sheet;
    await page.focus(box('wrap', 'way'));
    await page.keyboard.press('t');
    expect(await page.evaluate('document.activeElement.id')).toBe('wrap/way');
    expect(await page.locator(box('wrap.overlap')).count()).toBe(1);
  });
});
