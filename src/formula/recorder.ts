/** A formula call that was recorded: the function, what it was given, what it returned, and what it was for. */
export interface RecordedStep {
  readonly sort: 'step';
  // biome-ignore lint/suspicious/noExplicitAny: a record holds calls of every formula; the registry knows their types.
  readonly compute: (input: any) => unknown;
  readonly input: Readonly<Record<string, unknown>>;
  readonly result: unknown;
  /** What this call was for, when the title of the formula does not say it. */
  readonly purpose?: string;
}

/** A decision between formulas. */
export interface RecordedDecision {
  readonly sort: 'decision';
  readonly what: string;
  readonly because: string;
}

/** The start of a part of the design: "Pipe as found". */
export interface RecordedHeading {
  readonly sort: 'heading';
  readonly title: string;
}

export type RecordedEntry = RecordedStep | RecordedDecision | RecordedHeading;

/** Collects what a design did, in order. Only the report turns it into text. */
export interface Recorder {
  readonly entries: RecordedEntry[];
}

/** A recorder with nothing in it. */
export function createRecorder(): Recorder {
  return { entries: [] };
}

/** Calls a formula and records the call. Without a recorder this is the bare call. */
export function step<I extends object, O>(
  recorder: Recorder | undefined,
  compute: (input: I) => O,
  input: I,
  purpose?: string,
): O {
  const result = compute(input);
  if (recorder !== undefined) {
    const entry = { sort: 'step', compute, input: input as Readonly<Record<string, unknown>>, result } as const;
    recorder.entries.push(purpose === undefined ? entry : { ...entry, purpose });
  }
  return result;
}

/** Records a decision between formulas. */
export function decide(recorder: Recorder | undefined, what: string, because: string): void {
  recorder?.entries.push({ sort: 'decision', what, because });
}

/** Records the start of a part of the design. */
export function heading(recorder: Recorder | undefined, title: string): void {
  recorder?.entries.push({ sort: 'heading', title });
}
