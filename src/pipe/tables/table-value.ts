import type { SourceReference, SourceTag } from '../../formula/index.js';

/** A number read from a table, with what stands behind it. Every one may be overridden: give your own number instead. */
export interface TableValue<T = number> {
  /** The entry itself. */
  readonly value: T;
  /** Whether the source of this very entry was seen; between two entries, the weaker of their tags. */
  readonly tag: SourceTag;
  /** Where it stands. */
  readonly source: SourceReference;
  /** What else there is to know of it. */
  readonly note?: string;
}
