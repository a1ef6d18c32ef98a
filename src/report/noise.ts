import type { Expression } from './expression.js';

/** Below this a share keeps float rounding out of a count; on paper there is none to keep out. */
const SLACK = 1e-8;

/**
 * An expression as it is written on paper: `0 * D` keeps the kind of a nought for the machine, and is 0; a billionth that is
 * taken off in front of a rounding up is nothing.
 */
export function withoutNoise(part: Expression): Expression {
  if (part.sort === 'unary') return { sort: 'unary', operator: part.operator, operand: withoutNoise(part.operand) };
  if (part.sort === 'call') {
    const isCount = part.name === 'floor' || part.name === 'ceil';
    return {
      sort: 'call',
      name: part.name,
      args: part.args.map((arg) => withoutNoise(isCount ? withoutSlack(arg) : arg)),
    };
  }
  if (part.sort !== 'binary') return part;
  const { operator, left, right } = part;
  if (operator === '*' && left.sort === 'number' && Number(left.text) === 0) return { sort: 'number', text: '0' };
  return { sort: 'binary', operator, left: withoutNoise(left), right: withoutNoise(right) };
}

/** Only in front of a rounding: elsewhere a small coefficient is a coefficient. */
function withoutSlack(part: Expression): Expression {
  if (part.sort !== 'binary' || (part.operator !== '-' && part.operator !== '+')) return part;
  return isSlack(part.right) ? part.left : part;
}

function isSlack(part: Expression): boolean {
  if (part.sort !== 'binary' || part.operator !== '*' || part.left.sort !== 'number') return false;
  const share = Number(part.left.text);
  return share > 0 && share < SLACK;
}

const ZERO: Expression = { sort: 'number', text: '0' };
/** What is nothing at nothing. */
const VANISHING = new Set(['sqrt', 'cbrt', 'abs', 'sin', 'tan', 'asin', 'atan', 'sinh', 'tanh', 'asinh']);

/**
 * An expression in which terms that are nought are left out, as on paper: no line of numbers adds `0 N m`. The line of symbols
 * above it keeps them, and the list of symbols says that they are nought.
 *
 * @param isZero whether the number that stands for a name is nought
 */
export function withoutZeros(part: Expression, isZero: (name: string) => boolean): Expression {
  const within = (inner: Expression): Expression => withoutZeros(inner, isZero);
  switch (part.sort) {
    case 'name':
      return isZero(part.name) ? ZERO : part;
    case 'unary': {
      const operand = within(part.operand);
      return isNought(operand) ? ZERO : { sort: 'unary', operator: part.operator, operand };
    }
    case 'call': {
      const args = part.args.map(within);
      const [only] = args;
      if (VANISHING.has(part.name) && only !== undefined && isNought(only)) return ZERO;
      // What a bound is held against stays, with its unit.
      return VANISHING.has(part.name) ? { sort: 'call', name: part.name, args } : part;
    }
    case 'binary':
      return joined(part.operator, within(part.left), within(part.right), part);
    default:
      return part;
  }
}

function joined(
  operator: Extract<Expression, { sort: 'binary' }>['operator'],
  left: Expression,
  right: Expression,
  whole: Expression,
): Expression {
  const [noLeft, noRight] = [isNought(left), isNought(right)];
  switch (operator) {
    case '+':
      return noLeft ? right : noRight ? left : { sort: 'binary', operator, left, right };
    case '-':
      if (noRight) return left;
      return noLeft ? { sort: 'unary', operator, operand: right } : { sort: 'binary', operator, left, right };
    case '*':
      return noLeft || noRight ? ZERO : { sort: 'binary', operator, left, right };
    case '/':
      return noRight ? whole : noLeft ? ZERO : { sort: 'binary', operator, left, right };
    case '^':
      return noLeft && !noRight ? ZERO : { sort: 'binary', operator, left, right };
    default:
      // A comparison and a condition are read as they stand.
      return whole;
  }
}

function isNought(part: Expression): boolean {
  return part.sort === 'number' && Number(part.text) === 0;
}
