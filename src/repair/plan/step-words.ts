import type { Line } from '../../quantity/index.js';
import type { StepId } from '../timeline/timeline.js';

/** What a step of the timeline says to the crew. */
export interface StepWords {
  readonly id: StepId;
  readonly title: string;
  readonly does: readonly Line[];
  readonly uses?: readonly Line[];
  readonly practice?: readonly Line[];
  readonly goes: readonly Line[];
  readonly stops: readonly Line[];
  readonly call: string;
  readonly signs: string;
}

/** A text as the start of a sentence. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
