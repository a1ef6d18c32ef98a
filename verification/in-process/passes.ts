import { inFull } from './briefly.js';

/** Whether a test goes through. */
export function passes(run: () => void): boolean {
  try {
    run();
    return true;
  } catch {
    return false;
  }
}

/** The test with as many runs as it needs: one that counts what it met needs all of them. */
export function asItNeeds(run: () => void): { readonly run: () => void; readonly inFull: boolean } {
  return passes(run) ? { run, inFull: false } : { run: () => inFull(run), inFull: true };
}
