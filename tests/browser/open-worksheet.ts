import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

/** The worksheet page as a reader opens it: from a disk, with no network. */
export interface OpenWorksheet {
  readonly page: Page;
  readonly address: string;
  /** Requests for anything but the file, errors and warnings of the console, errors that nobody caught. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Opens the page from a file of its own. */
export async function openWorksheet(
  browser: Browser,
  html: string,
  options: BrowserContextOptions = {},
  fragment = '',
): Promise<OpenWorksheet> {
  const folder = mkdtempSync(join(tmpdir(), 'worksheet-'));
  const file = join(folder, 'worksheet.html');
  writeFileSync(file, html);
  const address = pathToFileURL(file).href;
  const complaints: string[] = [];
  const context = await browser.newContext({ offline: true, ...options });
  context.on('request', (request) => {
    if (request.url().split('#')[0] !== address) complaints.push(`request: ${request.url()}`);
  });
  const page = await context.newPage();
  page.on('websocket', (socket) => complaints.push(`web socket: ${socket.url()}`));
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`console: ${message.text()}`);
  });
  await page.goto(`${address}${fragment}`);
  return {
    page,
    address,
    complaints,
    close: async () => {
      await context.close();
      rmSync(folder, { recursive: true });
    },
  };
}

/** A box of a field of the form, by its place in the case. */
export function box(path: string, part = 'box'): string {
  return `[id="${path}/${part}"]`;
}

/** What the page says of the case in one line, as soon as it begins so. */
export async function verdictOf(page: Page, begins: RegExp): Promise<string> {
  const brief = page.locator('#brief-text');
  await brief.filter({ hasText: begins }).waitFor();
  return (await brief.textContent()) ?? '';
}
