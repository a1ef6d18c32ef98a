import type { Candidate } from '../design/design.js';

/** The candidate that asks for most; of equal ones the first. */
export function largest<Q extends number, C extends string>(candidates: readonly Candidate<Q, C>[]): Candidate<Q, C> {
  let most = first(candidates);
  for (const candidate of candidates) if (candidate.value > most.value) most = candidate;
  return most;
}

/** The candidate that bears least; of equal ones the first. */
export function smallest<Q extends number, C extends string>(candidates: readonly Candidate<Q, C>[]): Candidate<Q, C> {
  let least = first(candidates);
  for (const candidate of candidates) if (candidate.value < least.value) least = candidate;
  return least;
}

/** Every thickness method has a hoop line at least: an empty list is a fault of this library. */
function first<T>(candidates: readonly T[]): T {
  const [candidate] = candidates;
  if (candidate === undefined) throw new Error('no criterion gave a value: a fault of this library');
  return candidate;
}
