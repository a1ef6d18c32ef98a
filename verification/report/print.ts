import { readFileSync, writeFileSync } from 'node:fs';
import { launchChromium } from '../../tests/browser/chromium.js';
import { html, type Pages } from './html.js';
import { pagesOfAnchors } from './pdf-pages.js';
import type { Report } from './shape.js';

/**
 * Prints the report that `npm run verify` has written as build/report/report.pdf, on A4. It is printed twice: the first print
 * tells on which page each anchor stands, the second shows it.
 */

const built = new URL('../../build/report/', import.meta.url);
const report: Report = JSON.parse(readFileSync(new URL('report.json', built), 'utf8'));
const browser = await launchChromium();

async function print(pages: Pages): Promise<Buffer> {
  const page = await browser.newPage();
  await page.setContent(html(report, pages));
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  await page.close();
  return pdf;
}

const first = pagesOfAnchors((await print(new Map())).toString('latin1'));
const pdf = await print(first);
await browser.close();
const second = pagesOfAnchors(pdf.toString('latin1'));
const moved = [...first].filter(([anchor, page]) => second.get(anchor) !== page);
if (first.size === 0 || moved.length > 0)
  throw new Error(`The pages of ${moved.length} of ${first.size} anchors moved between the two prints.`);
writeFileSync(new URL('report.pdf', built), pdf);
const body = first.get(`room-${report.summary.byRoom[0]?.room}`) ?? 1;
console.log(
  `build/report/report.pdf: ${Math.max(...first.values())} pages at least, the body ${body - 1}, the index on page ${first.get('index')}.`,
);
