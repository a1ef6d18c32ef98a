/** ln(a/b) of positive numbers to the last digits, also where they are nearly equal and the quotient rounds to one. */
export function logRatio(a: number, b: number): number {
  // Between half and twice, a - b is exact.
  return a > b / 2 && a < 2 * b ? Math.log1p((a - b) / b) : Math.log(a / b);
}
