import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundleForPage } from './bundle.js';
import { launchChromium } from './chromium.js';

/** Every entry of the package that is a program, as the package itself names it. */
const { name, exports } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | object>>;
};
const entries = Object.keys(exports).filter((entry) => typeof exports[entry] === 'object');

/** Loads every entry and tells how many names each exports, and one result: 1 MPa * 200 mm / (2 * 10 mm). */
const imports = entries.map((entry, at) => `import * as entry${at} from '${name}${entry.slice(1)}';`);
const counts = entries.map((entry, at) => `${JSON.stringify(entry)}: Object.keys(entry${at}).length`);
const hoopStress = `entry${entries.indexOf('./pipe')}.hoopStress`;
const code = `${imports.join('\n')}
const stress = ${hoopStress}({ pressure: 1e6, outsideDiameter: 0.2, wallThickness: 0.01 });
const told = { counts: { ${counts.join(', ')} }, stress };
if (typeof document === 'undefined') postMessage(told);
else globalThis.told = told;`;

interface Told {
  readonly counts: Readonly<Record<string, number>>;
  readonly stress: number;
}

describe('every entry of the package', () => {
  let browser: Browser;
  let script: string;
  beforeAll(async () => {
    script = await bundleForPage(code);
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  const holds = ({ counts: found, stress }: Told): void => {
    expect(Object.keys(found)).toEqual(entries);
    for (const entry of entries) expect([entry, found[entry]]).not.toEqual([entry, 0]);
    expect(stress).toBe(1e7);
  };

  it('is there to be loaded', () => expect(entries.length).toBeGreaterThan(50));

  it('loads in a page', async () => {
    const page = await browser.newPage();
    await page.addScriptTag({ content: script });
    holds(await page.evaluate(() => (globalThis as unknown as { told: Told }).told));
  });

  it('loads in a worker', async () => {
    const page = await browser.newPage();
    // As text, since the types here are those of Node.
    const told = await page.evaluate(`new Promise((resolve, reject) => {
      const content = ${JSON.stringify(script)};
      const worker = new Worker(URL.createObjectURL(new Blob([content], { type: 'text/javascript' })));
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = ({ message }) => reject(new Error(message));
    })`);
    holds(told as Told);
  });
});
