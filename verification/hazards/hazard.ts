/** A row of the hazard log. */
export interface Hazard {
  /** What could go wrong, in the words of the people at the pipe. */
  readonly could: string;
  /** What it would do. */
  readonly would: string;
  /** The guards against it, by their keys: each stands in one row and no other. */
  readonly guards: readonly string[];
  /**
   * The tests that go red without them, `tests/faults/live-line.test.ts: a live leak: needs a seal`: through a public door,
   * on a verdict or a value.
   */
  readonly tests: readonly string[];
}

/** Tests of one group of one file, by their own names. */
export const shownIn =
  (group: string) =>
  (...names: readonly string[]): string[] =>
    names.map((name) => `${group}: ${name}`);
