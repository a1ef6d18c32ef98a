/** A millionth: what a number loses when it is written down with six digits. */
const WRITTEN = 1e-6;

/** Whether a value lies above a limit, by more than the rounding of a limit that was written down. */
export function exceeds(value: number, limit: number): boolean {
  return value > limit + WRITTEN * Math.abs(limit);
}

/** Whether two readings of one thing agree. */
export function agree(one: number, other: number, apart: number): boolean {
  return Math.abs(one - other) <= apart;
}

/** Whether a reading agrees with what it should be, within a share of that. */
export function agreeWithin(value: number, expected: number, share: number): boolean {
  return Math.abs(value - expected) <= share * Math.abs(expected);
}

/** Whether a stretch is as long as it has to be, or short of it by no more than readings lie apart. */
export function spans(from: number, to: number, length: number, apart: number): boolean {
  return to - from >= length - apart;
}

/** Whether a value lies beyond so many times another. */
export function exceedsTimes(value: number, times: number, other: number): boolean {
  return value > times * other;
}
