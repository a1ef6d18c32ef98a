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
