import { expect } from 'vitest';

interface Matchers<R> {
  /** Within 1e-12 of the expected number, relative to it. */
  toBeCloseToRelative(expected: number, tolerance?: number): R;
}

declare module 'vitest' {
  // biome-ignore lint/suspicious/noExplicitAny: the signature has to match that of vitest.
  interface Assertion<T = any> extends Matchers<T> {}
}

expect.extend({
  toBeCloseToRelative(found: unknown, expected: number, tolerance = 1e-12) {
    const pass =
      typeof found === 'number' && (found === expected || Math.abs(found - expected) <= tolerance * Math.abs(expected));
    return { pass, message: () => `${String(found)} is not within ${tolerance} of ${expected}` };
  },
});
