import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts', 'verification/**/*.test.ts'],
    testTimeout: 60_000,
    // The library holds no state, and no test may leave any: each process loads the modules once, not once for each file.
    isolate: false,
    maxWorkers: '100%',
  },
});
