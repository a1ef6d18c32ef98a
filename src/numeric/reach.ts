/**
 * Slack of a comparison with a limit: 1e-9 of it. A reading of exactly the limit reaches it, whichever way a quotient on
 * the way to it was rounded.
 */
const SLACK = 1e-9;

/** Whether a value reaches its least. */
export function reaches(value: number, least: number): boolean {
  return value >= least - SLACK * Math.abs(least);
}

/** How much is missing to the least; 0 where it is reached. */
export function missingTo(value: number, least: number): number {
  return reaches(value, least) ? 0 : least - value;
}
