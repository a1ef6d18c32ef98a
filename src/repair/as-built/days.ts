import type { BatchRecord } from './record.js';

/** The first and the last of some days. */
export interface Days {
  readonly first: string;
  readonly last: string;
}

/** Days on which batches of one use were mixed, and a day that is stated besides; nothing where there is none. */
export function daysOf(
  batches: readonly BatchRecord[],
  wanted: BatchRecord['use'],
  besides?: string | undefined,
): Days | undefined {
  const days = besides === undefined ? [] : [besides];
  for (const { use, mixedOn } of batches) if (use === wanted && mixedOn !== undefined) days.push(mixedOn);
  // As text they are in order.
  const [first, ...later] = days.toSorted();
  return first === undefined ? undefined : { first, last: later.at(-1) ?? first };
}
