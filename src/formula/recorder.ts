import type { Line } from '../quantity/index.js';

/** A formula call that was recorded: which formula, what it was given, what it returned, and what it was for. */
export interface RecordedStep {
  /** Tells it from the other entries. */
  readonly sort: 'step';
  /** Id of the formula: `pipe/hoop-stress`. */
  readonly formula: string;
  /** What the formula was given, in SI. */
  readonly input: Readonly<Record<string, unknown>>;
  /** What it gave, in SI. */
  readonly result: unknown;
  /** What this call was for, when the title of the formula does not say it. */
  readonly purpose?: string;
}

/** A decision between formulas. */
export interface RecordedDecision {
  /** Tells it from the other entries. */
  readonly sort: 'decision';
  /** What was decided. */
  readonly what: Line;
  /** Why. */
  readonly because: Line;
}

/** The start of a part of the design: "Pipe as found". */
export interface RecordedHeading {
  /** Tells it from the other entries. */
  readonly sort: 'heading';
  /** The heading. */
  readonly title: string;
}

/** Plain data: a record can be stored, sent to a worker, and read by another copy of this library. */
export type RecordedEntry = RecordedStep | RecordedDecision | RecordedHeading;

/** Collects what a design did, in order. Only the report turns it into text. */
export interface Recorder {
  /** Everything recorded so far, in order. */
  readonly entries: RecordedEntry[];
}

/** A recorder with nothing in it. */
export function createRecorder(): Recorder {
  return { entries: [] };
}

/**
 * Calls a formula and records the call. Without a recorder this is the bare call.
 *
 * @param formula id of the formula, since neither the function nor this room knows its declaration; a test holds the two
 *                together at every call
 */
export function step<I extends object, O>(
  recorder: Recorder | undefined,
  formula: string,
  compute: (input: I) => O,
  input: I,
  purpose?: string,
): O {
  const result = compute(input);
  if (recorder !== undefined) {
    const entry = { sort: 'step', formula, input: input as Readonly<Record<string, unknown>>, result } as const;
    recorder.entries.push(purpose === undefined ? entry : { ...entry, purpose });
  }
  return result;
}

/** Records a decision between formulas. */
export function decide(recorder: Recorder | undefined, what: string | Line, because: string | Line): void {
  recorder?.entries.push({ sort: 'decision', what: asLine(what), because: asLine(because) });
}

function asLine(text: string | Line): Line {
  return typeof text === 'string' ? { text } : text;
}

/** Records the start of a part of the design. */
export function heading(recorder: Recorder | undefined, title: string): void {
  recorder?.entries.push({ sort: 'heading', title });
}
