/**
 * The double itself in decimal digits, not its shortest text: 0.1 is 0.1000000000000000055511151231257827...
 * The only way by which a double reaches mathjs or decimal.js, whose constructors take the shortest text.
 * 100 significant digits hold every double from 1e-14 upward exactly and the rest to 1e-100.
 */
export function exactDecimal(value: number): string {
  return value.toPrecision(100);
}
