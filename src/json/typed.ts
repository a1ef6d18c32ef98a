import type { Kind } from '../quantity/index.js';

/** A quantity as it was typed: its text, the unit that was read from it, and the kind that its field gave it. */
export interface Typed {
  readonly text: string;
  readonly unit: string;
  readonly kind: Kind;
}

/** Everything that was typed, by the path of its field: `pipe.wallThickness`. */
export type TypedMap = ReadonlyMap<string, Typed>;

/** What was typed, with the kind that the field gave it: `150 psi (gauge pressure)`. */
export function echo({ text, kind }: Typed): string {
  return `${text.trim()} (${kind})`;
}
