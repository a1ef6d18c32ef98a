import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const ARITHMETIC = new Set([
  ts.SyntaxKind.PlusToken,
  ts.SyntaxKind.MinusToken,
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.SlashToken,
  ts.SyntaxKind.PercentToken,
  ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.PlusEqualsToken,
  ts.SyntaxKind.MinusEqualsToken,
  ts.SyntaxKind.AsteriskEqualsToken,
  ts.SyntaxKind.SlashEqualsToken,
]);

/** A place where a file computes by itself, or holds a number of its own. */
export interface OwnNumber {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** The table of the case and its words are data: bounds, usual spans and examples stand in them and nowhere else. */
const DATA = /(?:^|\/)case\/(?:table|words)(?:-[a-z]+)?\.ts$/u;

/** Arithmetic operators, calls of `Math` other than `min` and `max`, and numeric literals but 0 and 1, below a folder. */
export function ownNumbers(folder: string): OwnNumber[] {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !DATA.test(file),
  );
  return files.sort().flatMap((file) => inFile(join(folder, file)));
}

function inFile(file: string): OwnNumber[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: OwnNumber[] = [];
  const visit = (node: ts.Node): void => {
    if (isOwn(node)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push({ file, line, text: node.getText().slice(0, 100) });
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isOwn(node: ts.Node): boolean {
  if (ts.isBinaryExpression(node)) return ARITHMETIC.has(node.operatorToken.kind) && !joinsText(node);
  if (ts.isNumericLiteral(node)) return !['0', '1'].includes(node.text) && !isType(node) && !isIndex(node);
  if (ts.isPostfixUnaryExpression(node) || ts.isPrefixUnaryExpression(node)) {
    return node.operator === ts.SyntaxKind.PlusPlusToken || node.operator === ts.SyntaxKind.MinusMinusToken;
  }
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
    const { expression, name } = node.expression;
    return expression.getText() === 'Math' && !['min', 'max'].includes(name.text);
  }
  return false;
}

function joinsText({ operatorToken, left, right }: ts.BinaryExpression): boolean {
  return (
    operatorToken.kind === ts.SyntaxKind.PlusToken &&
    [left, right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side))
  );
}

/** `class: 1 | 2 | 3` speaks of a choice, not of an amount. */
function isType(node: ts.Node): boolean {
  return ts.isLiteralTypeNode(node.parent);
}

function isIndex(node: ts.NumericLiteral): boolean {
  return ts.isElementAccessExpression(node.parent);
}
