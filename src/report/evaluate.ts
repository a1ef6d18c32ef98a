import type { BinaryOperator, Expression } from './expression.js';

/** What a name may stand for. */
export type Value = number | string | boolean;

const FUNCTIONS: Readonly<Record<string, (...args: number[]) => number>> = {
  sqrt: Math.sqrt,
  cbrt: Math.cbrt,
  exp: Math.exp,
  log: Math.log,
  log10: Math.log10,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  sinh: Math.sinh,
  cosh: Math.cosh,
  tanh: Math.tanh,
  asinh: Math.asinh,
  acosh: Math.acosh,
  atanh: Math.atanh,
  abs: Math.abs,
  min: Math.min,
  max: Math.max,
  floor: Math.floor,
  ceil: Math.ceil,
};

const CONSTANTS: Readonly<Record<string, Value>> = { pi: Math.PI, true: true, false: false };

function number(value: Value): number {
  if (typeof value === 'number') return value;
  throw new TypeError(`${JSON.stringify(value)} stands where a number belongs`);
}

function truth(value: Value): boolean {
  if (typeof value === 'boolean') return value;
  throw new TypeError(`${JSON.stringify(value)} stands where a condition belongs`);
}

const OPERATIONS: Readonly<Record<Exclude<BinaryOperator, 'and' | 'or'>, (a: Value, b: Value) => Value>> = {
  '==': (a, b) => a === b,
  '!=': (a, b) => a !== b,
  '<': (a, b) => number(a) < number(b),
  '<=': (a, b) => number(a) <= number(b),
  '>': (a, b) => number(a) > number(b),
  '>=': (a, b) => number(a) >= number(b),
  '+': (a, b) => number(a) + number(b),
  '-': (a, b) => number(a) - number(b),
  '*': (a, b) => number(a) * number(b),
  '/': (a, b) => number(a) / number(b),
  '^': (a, b) => number(a) ** number(b),
};

function own<T>(record: Readonly<Record<string, T>>, name: string): T | undefined {
  return Object.hasOwn(record, name) ? record[name] : undefined;
}

/**
 * The value of an expression, with the values of its names.
 *
 * @throws ReferenceError on a name or a function that is not known; TypeError where a word stands for a number
 */
export function evaluate(expression: Expression, scope: Readonly<Record<string, Value>>): Value {
  switch (expression.sort) {
    case 'number':
      return Number(expression.text);
    case 'word':
      return expression.text;
    case 'name': {
      const value = own(scope, expression.name) ?? own(CONSTANTS, expression.name);
      if (value === undefined) throw new ReferenceError(`${expression.name} has no value`);
      return value;
    }
    case 'unary':
      return expression.operator === '-'
        ? -number(evaluate(expression.operand, scope))
        : !truth(evaluate(expression.operand, scope));
    case 'binary': {
      const { operator, left, right } = expression;
      if (operator === 'and') return truth(evaluate(left, scope)) && truth(evaluate(right, scope));
      if (operator === 'or') return truth(evaluate(left, scope)) || truth(evaluate(right, scope));
      return OPERATIONS[operator](evaluate(left, scope), evaluate(right, scope));
    }
    case 'call': {
      const compute = own(FUNCTIONS, expression.name);
      if (compute === undefined) throw new ReferenceError(`${expression.name} is not a function of this sheet`);
      return compute(...expression.args.map((arg) => number(evaluate(arg, scope))));
    }
  }
}
