const bits = new DataView(new ArrayBuffer(8));

/** The next double above a finite one. */
export function nextUp(value: number): number {
  if (value === 0) return Number.MIN_VALUE;
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + (value > 0 ? 1n : -1n));
  return bits.getFloat64(0);
}

/** The next double below a finite one. */
export function nextDown(value: number): number {
  return -nextUp(-value);
}

/** The gap between a double and its neighbour away from zero: one unit in the last place. */
export function ulp(value: number): number {
  const size = Math.abs(value);
  return nextUp(size) - size;
}
