import type { Line } from '../../quantity/index.js';
import type { StepId } from '../timeline/timeline.js';
import type { HourlyReading } from './plan.js';

/** What a step of the timeline says to the crew. */
export interface StepWords {
  readonly id: StepId;
  readonly title: string;
  readonly does: readonly Line[];
  readonly uses?: readonly Line[];
  readonly practice?: readonly Line[];
  readonly goes: readonly Line[];
  readonly stops: readonly Line[];
  /** What is read and written down each hour of the step. */
  readonly hourly?: readonly HourlyReading[];
  readonly call: string;
  readonly signs: string;
}

/** A text as the start of a sentence. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
