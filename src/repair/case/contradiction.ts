import { type Amount, type Line, line, roundedDown, roundedUp } from '../../quantity/index.js';

/** Fields of a case, each right by itself, that cannot all be right. */
export interface Contradiction {
  /** The field at fault: `defect.profile[3].depth`. */
  readonly path: string;
  /** How the sentence "it must ..." ends; its first amount is the limit. */
  readonly must: Line;
  /** The field that sets the limit, where it is one of the case. */
  readonly limit?: string | undefined;
  /** What would pass. */
  readonly passes?: Amount | undefined;
}

/** Takes note of a contradiction, or throws. */
export type Note = (found: Contradiction) => void;

/** What a field must not lie beyond: what it is called, its value, and the field that holds it. */
type Limit = readonly [what: string, kind: Amount['kind'], value: number, path?: string];

/** The field must be at most the limit. */
export function atMost(note: Note, path: string, [what, kind, value, limit]: Limit, because = ''): void {
  const passes = roundedDown(what, kind, value);
  note({ path, must: line(`be at most ${what}, {0}${because}`, passes), limit, passes });
}

/** The field must be at least the limit. */
export function atLeast(note: Note, path: string, [what, kind, value, limit]: Limit, because = ''): void {
  const passes = roundedUp(what, kind, value);
  note({ path, must: line(`be at least ${what}, {0}${because}`, passes), limit, passes });
}
