import { binding, type Expression } from './expression.js';

/** What a name is replaced by: a number, and its unit when it has one. */
export interface Substitute {
  readonly text: string;
  readonly unit?: string | undefined;
}

/** How the multiplication sign is written. */
export type Times = '*' | '\u00d7';

/** Joins a number to its unit, so that a line is never broken between them; the renderers print it as a space. */
export const TIE = '\u00a0';

const ATOM = 9;

interface Printed {
  readonly text: string;
  /** How tightly the text holds together. */
  readonly level: number;
  /** How tightly it must be read as the right operand of a division: `0.1 mm/year` is one thing, and looks like two. */
  readonly divisor?: number;
}

function printedName({ text, unit }: Substitute): Printed {
  const negative = text.startsWith('-');
  if (unit === undefined || unit === '') return { text, level: negative ? binding.unary : ATOM };
  const compound = /[/ ]/u.test(unit);
  return {
    text: `${text}${TIE}${unit.replaceAll(' ', TIE)}`,
    level: negative ? binding['+'] : binding.unary,
    divisor: compound ? binding['+'] : ATOM,
  };
}

/**
 * Prints an expression with its names replaced, and with no more parentheses than it takes to be read as it is meant.
 * A name that `of` does not know stays as it is; without `of` this is the expression in one even spelling.
 */
export function substitute(
  expression: Expression,
  of: (name: string) => Substitute | undefined = () => undefined,
  times: Times = '*',
): string {
  const wrap = (printed: Printed, least: number, level = printed.level): string =>
    level < least ? `(${printed.text})` : printed.text;

  const print = (part: Expression): Printed => {
    switch (part.sort) {
      case 'number':
        return { text: part.text, level: ATOM };
      case 'word':
        return { text: `"${part.text}"`, level: ATOM };
      case 'name': {
        const known = of(part.name);
        return known === undefined ? { text: part.name, level: ATOM } : printedName(known);
      }
      case 'call':
        return { text: `${part.name}(${part.args.map((arg) => print(arg).text).join(', ')})`, level: ATOM };
      case 'unary': {
        const operand = print(part.operand);
        const inside = wrap(operand, operand.text.startsWith('-') ? ATOM : binding.unary);
        return { text: part.operator === '-' ? `-${inside}` : `not ${inside}`, level: binding.unary };
      }
      case 'binary':
        return printBinary(part);
    }
  };

  const printBinary = ({ operator, left, right }: Extract<Expression, { sort: 'binary' }>): Printed => {
    const level = binding[operator];
    const a = print(left);
    const b = print(right);
    if (operator === '^') return { text: `${wrap(a, ATOM)}^${wrap(b, ATOM)}`, level };
    const leftText = wrap(a, level);
    // A sign after an operator is put in parentheses, as on paper.
    const signed = level > binding['<'] && (right.sort === 'unary' || b.text.startsWith('-'));
    const associative = operator === '+' || operator === '*' || operator === 'and' || operator === 'or';
    const least = signed ? ATOM : associative ? level : level + 1;
    const rightText = wrap(b, least, operator === '/' && !signed ? (b.divisor ?? b.level) : b.level);
    return { text: `${leftText} ${operator === '*' ? times : operator} ${rightText}`, level };
  };

  return print(expression).text;
}
