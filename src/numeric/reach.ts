/**
 * Slack of a comparison with a limit: 1e-9 of it. A reading of exactly the limit reaches it, whichever way a quotient on
 * the way to it was rounded.
 */
const SLACK = 1e-9;

/** Whether a value reaches its least. */
export function reaches(value: number, least: number): boolean {
  return value >= least - SLACK * Math.abs(least);
}

/** A value that lies above its most by no more than the rounding of its unit counts as that most; any other stays as it is. */
export function settled(value: number, most: number): number {
  return reaches(most, value) ? Math.min(value, most) : value;
}

/** How much is missing to the least; 0 where it is reached. */
export function missingTo(value: number, least: number): number {
  return reaches(value, least) ? 0 : least - value;
}
