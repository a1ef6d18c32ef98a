import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entryFile } from '../../verification/bench/built.js';
import { exampleNames, exampleText } from '../json/examples.js';
import { bundleForPage } from './bundle.js';
import { launchChromium } from './chromium.js';
import { documentsOf, type Library } from './documents.js';
import { openPage, type WatchedPage } from './open-page.js';

const SCRIPT = `
import * as root from 'hoopwright';
import * as json from 'hoopwright/json';
import * as report from 'hoopwright/report';
import { documentsOf } from './documents.ts';
globalThis.documentsOf = (text) => documentsOf({ root, json, report }, text);
`;

let browser: Browser;
let watched: WatchedPage;
let library: Library;

beforeAll(async () => {
  browser = await launchChromium();
  watched = await openPage(browser, {
    'index.html': '<!doctype html><meta charset="utf-8"><title>hoopwright</title><script src="bundle.js"></script>',
    'bundle.js': await bundleForPage(SCRIPT),
  });
  library = {
    root: await import(entryFile('.')),
    json: await import(entryFile('./json')),
    report: await import(entryFile('./report')),
  };
});

afterAll(async () => {
  await watched?.close();
  await browser?.close();
});

describe.each(exampleNames)('%s in a page', (name) => {
  it('gives every sheet, every plan and the design in the same bytes as in Node', async () => {
    const text = exampleText(name);
    const inNode = documentsOf(library, text);
    const inPage: typeof inNode = await watched.page.evaluate(`documentsOf(${JSON.stringify(text)})`);
    expect(Object.keys(inPage)).toEqual(Object.keys(inNode));
    for (const [document, bytes] of Object.entries(inNode)) {
      expect(bytes.length, document).toBeGreaterThan(500);
      expect(inPage[document], document).toBe(bytes);
    }
  });

  it('asks the network for nothing and logs no error', () => {
    expect(watched.complaints).toEqual([]);
  });
});
