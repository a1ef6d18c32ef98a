import { attempt, type Workbook } from './workbook.js';

/** A part that could not be worked out. Why stands in the workbook, as a reason or as a missing input. */
export const open: unique symbol = Symbol('open');

export type Open = typeof open;

/** A part for a stage that can do without it. */
export function ifKnown<T>(part: T | Open): T | undefined {
  return part === open ? undefined : part;
}

/**
 * Works out one part of the design from parts before it. It stays open where one of those is open; a refusal inside it
 * (`no-solution`, `outside-validity`) is an answer, and leaves it open too.
 */
export function stage<N extends object, T>(
  work: Workbook,
  name: string,
  needs: { readonly [K in keyof N]: N[K] | Open },
  run: (work: Workbook, needs: N) => T | Open | undefined,
): T | Open {
  for (const key in needs) if (needs[key] === open) return open;
  const part = attempt(work, name, () => run(work, needs as N));
  return part === undefined ? open : part;
}
