import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodeCase } from '../../src/json/index.js';
import { designRepair } from '../../src/repair/index.js';
import { repairDrawings } from '../../src/report/index.js';
import { exampleDocument, exampleNames } from '../json/examples.js';
import { launchChromium } from './chromium.js';

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const BOXES = `(() => {
  const box = (element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return { text: element.textContent.trim().slice(0, 60), left, right, top, bottom };
  };
  return { sheet: box(document.querySelector('svg')), texts: [...document.querySelectorAll('text')].map(box) };
})()`;

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser?.close());

describe.each(exampleNames)('the drawings of %s as the browser sets them', (name) => {
  it('hold every text inside, and none over another', async () => {
    const drawings = repairDrawings(designRepair(decodeCase(exampleDocument(name)).case));
    for (const [drawing, svg] of Object.entries(drawings)) {
      if (svg === undefined) continue;
      const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
      await page.setContent(
        `<body style="margin:0">${svg.replace('<svg ', '<svg style="width:374px;height:auto" ')}</body>`,
      );
      const { sheet, texts }: { sheet: Box; texts: Box[] } = await page.evaluate(BOXES);
      await page.close();
      expect(texts.length).toBeGreaterThan(5);
      for (const [index, box] of texts.entries()) {
        const isInside =
          box.left >= sheet.left &&
          box.right <= sheet.right &&
          box.top >= sheet.top - 1 &&
          box.bottom <= sheet.bottom + 1;
        expect(isInside, `${drawing}: "${box.text}"`).toBe(true);
        for (const other of texts.slice(index + 1)) {
          // The box of a text has room above its letters and below, of which two lines may share a pixel or two.
          const apart =
            box.right <= other.left ||
            other.right <= box.left ||
            box.bottom <= other.top + 3 ||
            other.bottom <= box.top + 3;
          expect(apart, `${drawing}: "${box.text}" and "${other.text}"`).toBe(true);
        }
      }
    }
  });
});
