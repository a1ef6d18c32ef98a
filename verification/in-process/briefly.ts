/** Properties that are run hundreds of times: fewer runs, and a failing one is not shrunk. */

const RUNS = 50;
let full = false;

/** Runs an act with as many runs of each property as its test asks for. */
export function inFull<T>(act: () => T): T {
  full = true;
  try {
    return act();
  } finally {
    full = false;
  }
}

/** fast-check whose failing properties are not shrunk, since that they fail is all that is asked. */
export function briefly(fc: Record<string, unknown>): unknown {
  const assert = fc['assert'] as (property: unknown, options?: { numRuns?: number }) => void;
  const brief = (property: unknown, options: { numRuns?: number } = {}): void =>
    assert(property, {
      ...options,
      ...(full ? {} : { numRuns: Math.min(RUNS, options.numRuns ?? RUNS) }),
      endOnFailure: true,
    } as never);
  return { ...fc, assert: brief, default: { ...(fc['default'] as object | undefined), ...fc, assert: brief } };
}
