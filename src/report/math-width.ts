import { type Expression, parseExpression } from './expression.js';
import { TIE } from './substitute.js';

/** Characters that a column of the printed page holds at full size. */
const COLUMN = 56;

/** A number with its unit. */
const AMOUNT = new RegExp(`-?[\\d.]+(?:e[+-]?\\d+)?(?:${TIE}[\\w/]+)+`, 'gu');

/**
 * How much smaller a line of an equation is set on paper so that it stays in its column: 1 at full size, 2 and 3 smaller. One of
 * size 4 could not be read any more: on paper it stands as text, which goes on in the next line.
 */
export function sizeStep(text: string): 1 | 2 | 3 | 4 {
  const share = widthOf(text) / COLUMN;
  if (share <= 1) return 1;
  if (share <= 1.18) return 2;
  return share <= 1.4 ? 3 : 4;
}

/** Characters that a telephone shows beside the symbol on the left. */
const TELEPHONE = 24;

/** Whether a line of an equation may have to be moved sideways on a telephone. */
export function isWide(text: string): boolean {
  return widthOf(text) > TELEPHONE;
}

function widthOf(text: string): number {
  try {
    return width(parseExpression(text.replaceAll(AMOUNT, (amount) => 'x'.repeat(amount.length))));
  } catch {
    // A result with its unit is no expression.
    return text.length;
  }
}

/** About how many characters wide an expression is set: a fraction is as wide as its wider part. */
function width(part: Expression): number {
  switch (part.sort) {
    case 'number':
    case 'word':
      return part.text.length;
    case 'name':
      return part.name.length;
    case 'unary':
      return width(part.operand) + 1;
    case 'call':
      return part.args.reduce((sum, arg) => sum + width(arg) + 1, part.name.length + 1);
    case 'binary': {
      const [left, right] = [width(part.left), width(part.right)];
      if (part.operator === '/') return Math.max(left, right) + 1;
      return part.operator === '^' ? left + right * 0.7 : left + right + 3;
    }
  }
}
