/** An operator between two operands, as declarations write it. */
export type BinaryOperator = 'or' | 'and' | '==' | '!=' | '<' | '<=' | '>' | '>=' | '+' | '-' | '*' | '/' | '^';

/** The tree of a declared expression. */
export type Expression =
  | { readonly sort: 'number'; readonly text: string }
  | { readonly sort: 'word'; readonly text: string }
  | { readonly sort: 'name'; readonly name: string }
  | { readonly sort: 'unary'; readonly operator: '-' | 'not'; readonly operand: Expression }
  | {
      readonly sort: 'binary';
      readonly operator: BinaryOperator;
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly sort: 'call'; readonly name: string; readonly args: readonly Expression[] };

/** How tightly each operator binds, from the loosest. A unary minus stands between `*` and `^`, as on paper. */
export const binding: Readonly<Record<BinaryOperator | 'unary', number>> = {
  or: 1,
  and: 2,
  '==': 3,
  '!=': 3,
  '<': 3,
  '<=': 3,
  '>': 3,
  '>=': 3,
  '+': 4,
  '-': 4,
  '*': 5,
  '/': 5,
  unary: 6,
  '^': 7,
};

const TOKEN = /\s*((?:\d+\.?\d*|\.\d+)(?:[Ee][+-]?\d+)?|[A-Za-z_]\w*|"[^"]*"|'[^']*'|[<>=!]=|[-+*/^(),<>])/uy;

/** What a token is shows at its first character. */
function sortOf(text: string): Token['sort'] {
  const first = text.charCodeAt(0);
  if ((first >= 48 && first <= 57) || (first === 46 && text.length > 1)) return 'number';
  if (first === 34 || first === 39) return 'word';
  return /[A-Za-z_]/u.test(text.charAt(0)) ? 'name' : 'mark';
}

interface Token {
  readonly sort: 'number' | 'name' | 'word' | 'mark';
  readonly text: string;
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  const scanner = new RegExp(TOKEN);
  const end = text.trimEnd().length;
  while (scanner.lastIndex < end) {
    const at = scanner.lastIndex;
    const found = scanner.exec(text)?.[1];
    if (found === undefined) throw new SyntaxError(`${JSON.stringify(text)}: cannot read "${text.slice(at).trim()}"`);
    tokens.push({ sort: sortOf(found), text: found });
  }
  return tokens;
}

/** Trees by their text: a sheet meets the same few hundred expressions again and again. */
const trees = new Map<string, Expression>();

/**
 * Reads an expression of a declaration: numbers, names, words in quotes, `+ - * / ^`, unary minus, calls, comparisons, `and`,
 * `or`, `not` and parentheses, with the precedence that mathjs gives them.
 *
 * @throws SyntaxError on anything else, since a sheet that prints half an equation is worse than none
 */
export function parseExpression(text: string): Expression {
  const known = trees.get(text);
  if (known !== undefined) return known;
  const tree = read(text);
  trees.set(text, tree);
  return tree;
}

function read(text: string): Expression {
  const tokens = tokensOf(text);
  let next = 0;

  const fail = (): never => {
    throw new SyntaxError(`${JSON.stringify(text)}: unexpected ${tokens[next]?.text ?? 'end'}`);
  };
  const accept = (...texts: string[]): string | undefined => {
    const token = tokens[next];
    if (token === undefined || token.sort === 'word' || token.sort === 'number' || !texts.includes(token.text))
      return undefined;
    next++;
    return token.text;
  };
  const expect = (mark: string): void => {
    if (accept(mark) === undefined) fail();
  };

  const level =
    (operators: readonly BinaryOperator[], operand: () => Expression, chains = true) =>
    (): Expression => {
      let left = operand();
      let operator = accept(...operators) as BinaryOperator | undefined;
      while (operator !== undefined) {
        left = { sort: 'binary', operator, left, right: operand() };
        operator = accept(...operators) as BinaryOperator | undefined;
        if (operator !== undefined && !chains) fail();
      }
      return left;
    };

  const primary = (): Expression => {
    if (accept('(') !== undefined) {
      const inside = either();
      expect(')');
      return inside;
    }
    const token = tokens[next++];
    if (token?.sort === 'number') return { sort: 'number', text: token.text };
    if (token?.sort === 'word') return { sort: 'word', text: token.text.slice(1, -1) };
    if (token?.sort !== 'name' || ['and', 'or', 'not'].includes(token.text)) {
      next--;
      return fail();
    }
    if (accept('(') === undefined) return { sort: 'name', name: token.text };
    const args = [either()];
    while (accept(',') !== undefined) args.push(either());
    expect(')');
    return { sort: 'call', name: token.text, args };
  };
  const power = (): Expression => {
    const base = primary();
    return accept('^') === undefined ? base : { sort: 'binary', operator: '^', left: base, right: signed() };
  };
  const signed = (): Expression => {
    const operator = accept('-', 'not') as '-' | 'not' | undefined;
    return operator === undefined ? power() : { sort: 'unary', operator, operand: signed() };
  };
  const product = level(['*', '/'], signed);
  const sum = level(['+', '-'], product);
  const comparison = level(['==', '!=', '<=', '>=', '<', '>'], sum, false);
  const both = level(['and'], comparison);
  const either = level(['or'], both);

  const whole = either();
  if (next < tokens.length) fail();
  return whole;
}

/** The names an expression uses, without those of functions and `pi`, in order of first use. */
export function namesIn(expression: Expression): string[] {
  const names = new Set<string>();
  const visit = (part: Expression): void => {
    if (part.sort === 'name' && !['pi', 'true', 'false'].includes(part.name)) names.add(part.name);
    if (part.sort === 'unary') visit(part.operand);
    if (part.sort === 'call') part.args.forEach(visit);
    if (part.sort === 'binary') {
      visit(part.left);
      visit(part.right);
    }
  };
  visit(expression);
  return [...names];
}
