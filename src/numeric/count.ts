/**
 * Slack for counts: 1e-9 of the count. It is far above the rounding of a quotient (about 1e-16) and far below anything
 * that could be measured on a ply, a roll or an overlap.
 */
const SLACK = 1e-9;

function isWhole(amount: number, whole: number): boolean {
  return Math.abs(amount - whole) <= SLACK * Math.max(1, Math.abs(amount));
}

/** Whole things needed for an amount: plies, rolls, kits. 3.0000000000000004 needs 3. */
export function countUp(amount: number): number {
  const nearest = Math.round(amount);
  return isWhole(amount, nearest) ? nearest : Math.ceil(amount);
}

/** Whole things that are surely there: layers under an overlapped tape. 2.9999999999999996 means 3. */
export function countDown(amount: number): number {
  const nearest = Math.round(amount);
  return isWhole(amount, nearest) ? nearest : Math.floor(amount);
}
