import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium, launchChromium } from './chromium.js';
import { openPage } from './open-page.js';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser?.close());

describe('a watched page', () => {
  it('has nothing to complain of when it asks for nothing but its files', async () => {
    const { page, complaints, close } = await openPage(browser, {
      'index.html': '<!doctype html><title>quiet</title><script src="more.js"></script>',
      'more.js': 'document.title = "Ω"',
    });
    expect(await page.title()).toBe('Ω');
    expect(complaints).toEqual([]);
    await close();
  });

  it('complains of a request elsewhere, of what the console logs as an error, and of an error that nobody caught', async () => {
    const { page, complaints, close } = await openPage(browser, {
      'index.html': `<!doctype html><script>
        console.error('logged');
        fetch('http://127.0.0.1:9/elsewhere').catch(() => { document.title = 'refused'; });
        throw new Error('thrown');
      </script>`,
    });
    await page.waitForFunction('document.title === "refused"');
    expect(complaints).toContain('console: logged');
    expect(complaints).toContain('request: http://127.0.0.1:9/elsewhere');
    expect(complaints).toContain('error: thrown');
    await close();
  });
});

describe('the browser of the machine', () => {
  it('is asked for in a sentence when the PATH holds none', () => {
    expect(() => findChromium('')).toThrow(/chromium, chromium-browser, google-chrome .* apt-get install chromium/);
  });
});
