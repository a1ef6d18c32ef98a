import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import type { Browser, Page } from 'playwright-core';

const TYPES: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript' };

/** A page that is watched: what it may not do is written down, and the tests demand that nothing was. */
export interface WatchedPage {
  readonly page: Page;
  /** Requests beyond the files that were served, errors and warnings of the console, errors that nobody caught. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Opens `index.html` of some files, served on this machine; no request leaves it. */
export async function openPage(browser: Browser, files: Readonly<Record<string, string>>): Promise<WatchedPage> {
  const { origin, stop } = await serve(files);
  const complaints: string[] = [];
  const served = new Set(Object.keys(files).map((name) => `${origin}/${name}`));
  const context = await browser.newContext({ serviceWorkers: 'block' });
  await context.route('**', (route) => (served.has(route.request().url()) ? route.continue() : route.abort()));
  context.on('request', (request) => {
    if (!served.has(request.url())) complaints.push(`request: ${request.url()}`);
  });
  const page = await context.newPage();
  page.on('websocket', (socket) => complaints.push(`web socket: ${socket.url()}`));
  page.on('pageerror', (error) => complaints.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`console: ${message.text()}`);
  });
  await page.goto(`${origin}/index.html`);
  return {
    page,
    complaints,
    close: async () => {
      await context.close();
      await stop();
    },
  };
}

async function serve(files: Readonly<Record<string, string>>) {
  const server = createServer((request, response) => {
    const name = (request.url ?? '').slice(1);
    const text = Object.hasOwn(files, name) ? files[name] : undefined;
    const type = TYPES[extname(name)] ?? 'application/octet-stream';
    response.writeHead(text === undefined ? 404 : 200, { 'content-type': `${type}; charset=utf-8` }).end(text);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const stop = () => new Promise<void>((resolve) => server.close(() => resolve()));
  return { origin: `http://127.0.0.1:${port}`, stop };
}
