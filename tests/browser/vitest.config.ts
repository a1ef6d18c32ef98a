import { defineConfig } from 'vitest/config';

/** The tests that need a real browser. `npm test` needs Node only and never reads a file of this name ending. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/browser/**/*.browser.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // One browser at a time: they share the cores with it.
    fileParallelism: false,
    // The built package runs as Node runs it, not as vitest would rewrite it.
    server: { deps: { external: [/\/dist\//u] } },
  },
});
