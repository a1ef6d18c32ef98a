/**
 * Slack for counts: 1e-9 of the count. It is far above the rounding of a quotient (about 1e-16) and far below anything
 * that could be measured on a ply, a roll or an overlap.
 */
const SLACK = 1e-9;

/** Whole things needed for an amount: plies, rolls, kits. 3.0000000000000004 needs 3. */
export function countUp(amount: number): number {
  return Math.ceil(amount - SLACK * Math.max(1, Math.abs(amount)));
}

/** Whole things that are surely there: layers under an overlapped tape. 2.9999999999999996 means 3. */
export function countDown(amount: number): number {
  return Math.floor(amount + SLACK * Math.max(1, Math.abs(amount)));
}
