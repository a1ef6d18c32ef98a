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

/** A test that was run, with as many runs of its properties as it needs: one that counts what it met needs all of them. */
export interface Tried {
  readonly run: () => void;
  readonly needsAll: boolean;
  readonly holds: boolean;
  /** Milliseconds. */
  readonly took: number;
}

export function tried(run: () => void): Tried {
  const brief = timed(run);
  if (brief.holds) return { run, needsAll: false, ...brief };
  const all = (): void => inFull(run);
  return { run: all, needsAll: true, ...timed(all) };
}

function timed(run: () => void): Pick<Tried, 'holds' | 'took'> {
  const started = performance.now();
  const holds = passes(run);
  return { holds, took: performance.now() - started };
}
