import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { calculationSheet, planHtml } from '../../src/report/index.js';
import { exampleDocument } from '../json/examples.js';
import { launchChromium } from './chromium.js';

const design = designRepair(decodeCase(exampleDocument('cooling-water-leak.json')).case, { record: true });

/** The height of the page as it stands, and with each of its cards open in turn. */
const EACH_CARD = `(() => {
  const height = () => document.documentElement.scrollHeight;
  const cards = [...document.querySelectorAll('details')];
  return [height(), ...cards.map((card) => {
    for (const each of cards) each.open = each === card;
    return height();
  })];
})()`;

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser?.close());

const SCREEN = 844;

async function measure(html: string): Promise<{ pages: number; width: number; screens: number[] }> {
  const page = await browser.newPage({ viewport: { width: 390, height: SCREEN } });
  await page.setContent(html);
  const heights: number[] = await page.evaluate(EACH_CARD);
  const width: number = await page.evaluate('document.documentElement.scrollWidth');
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  await page.close();
  return {
    pages: pdf.match(/\/Type\s*\/Page\b/gu)?.length ?? 0,
    width,
    screens: heights.map((height) => height / SCREEN),
  };
}

describe('the first example on paper and on a telephone', () => {
  it('is a sheet of at most 12 pages that is no wider than the telephone', async () => {
    const { pages, width } = await measure(calculationSheet(design, { format: 'html' }));
    expect(pages).toBeLessThanOrEqual(12);
    expect(width).toBeLessThanOrEqual(390);
  });

  it('is a plan of at most 5 pages and, whichever step is open, of 8 screens, no wider than the telephone', async () => {
    const { pages, width, screens } = await measure(planHtml(planWork(design)));
    expect(pages).toBeLessThanOrEqual(5);
    expect(width).toBeLessThanOrEqual(390);
    expect(screens.length).toBe(17);
    for (const each of screens) expect(each).toBeLessThanOrEqual(8);
  });
});
