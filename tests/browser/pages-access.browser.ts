import axe, { type AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { calculationSheet, planHtml } from '../../src/report/index.js';
import { exampleDocument } from '../json/examples.js';
import { launchChromium } from './chromium.js';

/** A sheet holds hundreds of equations. */
const SLOW = 120_000;

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser?.close());

const designOf = (name: string) => designRepair(decodeCase(exampleDocument(name)).case, { record: true });

async function violations(html: string): Promise<string[]> {
  const context = await browser.newContext({
    viewport: { width: 375, height: 812 },
    colorScheme: 'dark',
    bypassCSP: true,
  });
  const page = await context.newPage();
  await page.setContent(html);
  await page.evaluate(axe.source);
  const { violations: found }: AxeResults = await page.evaluate('axe.run(document)');
  await context.close();
  return found.flatMap(({ id, nodes }) => nodes.slice(0, 4).map((node) => `${id}: ${node.target.join(' ')}`));
}

describe.each(['cooling-water-leak.json', 'sour-gas-crack.json'])(
  'the pages of %s on a telephone in the dark',
  (name) => {
    it(
      'have nothing that axe finds against',
      async () => {
        const design = designOf(name);
        expect(await violations(planHtml(planWork(design))), 'plan').toEqual([]);
        expect(await violations(calculationSheet(design, { format: 'html' })), 'sheet').toEqual([]);
      },
      SLOW,
    );
  },
);
