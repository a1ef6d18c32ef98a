import { basename } from 'node:path';
import ts from 'typescript';

/**
 * The numeric constants of a source file that can make a result wrong, found in its syntax tree, and what is left out by which
 * rule.
 */

/** What a constant is for. */
type ConstantSort = 'coefficient' | 'default' | 'limit' | 'rule' | 'unit';

export interface Constant {
  readonly file: string;
  /** Whose it is, wherever its file stands: the first formula that the file declares, or the bare name of the file. */
  readonly of: string;
  readonly line: number;
  /** As written. */
  readonly text: string;
  readonly value: number;
  readonly sort: ConstantSort;
  /** Stands outside any function, so that it is read when its module is loaded. */
  readonly atLoad: boolean;
  /** The line of code around it. */
  readonly code: string;
  /** The places in the file that are changed together: a default in the function and in its declaration. */
  readonly places: readonly (readonly [start: number, end: number])[];
}

/** What is left out, in the words of the report. */
export const leftOut: readonly string[] = [
  'zero, which no relative change moves',
  'places in arrays and texts, and the steps and bounds of loops over them (i + 1, length - 1)',
  'numbers in declarations other than defaults: spans for sampling, which compute nothing',
  'defaults that stand in the declaration alone: a test holds them to what the function does',
  'keys, such as the class of a repair',
  'numbers of digits for text, and what is inside a message of refusal',
  'tolerances of floating-point comparison, written as 1e-8 or a smaller power of ten, 1e300, the number of cells of a search, and the constant that splits a double',
  'tables of sizes, grades and code factors: where another table of the kind exists the report compares row by row',
  'src/numeric: step limits and weights of root finding and quadrature, which the derivations run on',
  'src/repair, src/json, src/report, src/cli, src/registry, src/formula: they hold no formula',
];

const ROOM = /^src\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance|rules|quantity)\//u;

/** Whether constants of this file are perturbed. */
export function isPerturbed(file: string): boolean {
  if (
    /\/tables\/|\/declared-inputs\.ts$|\.data\.ts$|^src\/quantity\/(?:text|slips|dimensions|quantity|index|units\/index)\.ts$/u.test(
      file,
    )
  )
    return false;
  return ROOM.test(file);
}

const parsed = new Map<string, ts.SourceFile>();

/** The syntax tree of a file, made once. */
function treeOf(file: string, text: string): ts.SourceFile {
  const known = parsed.get(file);
  if (known?.text === text) return known;
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  parsed.set(file, tree);
  return tree;
}

const ancestorsOf = (node: ts.Node): ts.Node[] => {
  const found: ts.Node[] = [];
  for (let at = node.parent; at !== undefined; at = at.parent) found.push(at);
  return found;
};

const calleeOf = (node: ts.Node): string => (ts.isCallExpression(node) ? node.expression.getText() : '');

const TEXT_CALLS =
  /\.(?:toFixed|toPrecision|toExponential|padStart|padEnd|repeat|slice|at|charAt|substring|toSpliced|join)$/u;
const GUARDS = /^(?:within|below|atMost|positive|nonNegative|properFraction|wholeNumber|finite|oneOf|check[A-Z]\w*)$/u;
/** Tolerances of comparison and the machinery of searches and of compensated sums. */
const MACHINERY = /^(?:1e-(?:8|9|[1-9]\d+)|1e300)$/u;
const MACHINERY_NAMES = /^(?:CELLS|SPLITTER|SMALLEST|FIRST_LOOK|BOUND_SLACK)$/u;
const COMPARISONS = new Set([
  ts.SyntaxKind.LessThanToken,
  ts.SyntaxKind.LessThanEqualsToken,
  ts.SyntaxKind.GreaterThanToken,
  ts.SyntaxKind.GreaterThanEqualsToken,
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
]);

const isFunction = (node: ts.Node): boolean =>
  ts.isFunctionDeclaration(node) ||
  ts.isArrowFunction(node) ||
  ts.isFunctionExpression(node) ||
  ts.isMethodDeclaration(node);

/** A step of 1 along an index or a length: `i + 1`, `rows.length - 1`. */
function isStep(node: ts.NumericLiteral): boolean {
  const { parent } = node;
  if (!ts.isBinaryExpression(parent) || node.text !== '1' || parent.right !== node) return false;
  return /^(?:i|j|index|place|row|cell|next|last)$|\.length$|Index$/u.test(parent.left.getText());
}

function isComparedLength(node: ts.NumericLiteral): boolean {
  const { parent } = node;
  if (!ts.isBinaryExpression(parent) || !COMPARISONS.has(parent.operatorToken.kind)) return false;
  return /\.length$/u.test((parent.left === node ? parent.right : parent.left).getText());
}

/** Whether a number goes into words: into a text, into `refuse`, or into a function that never returns. */
function isInMessage(above: readonly ts.Node[], refusals: ReadonlySet<string>): boolean {
  return above.some(
    (at) => ts.isTemplateSpan(at) || refusals.has(calleeOf(at)) || /^(?:refuse|invalid)/u.test(calleeOf(at)),
  );
}

/** The functions of a file that never return. */
function refusalsOf(source: ts.SourceFile): ReadonlySet<string> {
  const names = source.statements
    .filter(ts.isFunctionDeclaration)
    .filter(({ type }) => type?.kind === ts.SyntaxKind.NeverKeyword)
    .map(({ name }) => name?.text ?? '');
  return new Set(names);
}

function isLeftOut(node: ts.NumericLiteral, above: readonly ts.Node[], refusals: ReadonlySet<string>): boolean {
  const { parent } = node;
  if (Number(node.text) === 0 || MACHINERY.test(node.getText())) return true;
  // A key, such as the class of a repair.
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isVariableDeclaration(parent) && MACHINERY_NAMES.test(parent.name.getText())) return true;
  if (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) return true;
  if (above.some((at) => ts.isTypeNode(at))) return true;
  if (
    above.some(
      (at) =>
        TEXT_CALLS.test(calleeOf(at)) &&
        (at as ts.CallExpression).arguments.some((own) => own === node || own === parent),
    )
  )
    return true;
  if (isInMessage(above, refusals)) return true;
  const loop = above.find(ts.isForStatement);
  if (loop !== undefined && !above.includes(loop.statement)) return true;
  return isStep(node) || isComparedLength(node);
}

function inDeclaration(above: readonly ts.Node[]): ts.CallExpression | undefined {
  return above.find((at): at is ts.CallExpression => calleeOf(at) === 'formula');
}

/** The input whose default a literal of a declaration is. */
function declaredDefault(node: ts.Node): string | undefined {
  const holder = ts.isPropertyAssignment(node.parent) ? node.parent : undefined;
  if (holder?.name.getText() !== 'default') return undefined;
  const input = holder.parent.parent;
  return ts.isPropertyAssignment(input) ? input.name.getText() : undefined;
}

/** The input whose default a literal of a function is: `{ offset: dS = 69e6 as Stress }`, or `input.offset ?? 69e6`. */
function ownDefault(node: ts.Node, above: readonly ts.Node[]): string | undefined {
  for (const [index, at] of above.entries()) {
    const below = index === 0 ? node : above[index - 1];
    if (ts.isAsExpression(at) || ts.isParenthesizedExpression(at)) continue;
    if (
      ts.isBinaryExpression(at) &&
      at.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken &&
      at.right === below
    )
      return ts.isPropertyAccessExpression(at.left) ? at.left.name.text : undefined;
    if (!ts.isBindingElement(at) || at.initializer !== below) return undefined;
    return (at.propertyName ?? at.name).getText();
  }
  return undefined;
}

function sortOf(file: string, node: ts.Node, above: readonly ts.Node[]): ConstantSort {
  if (file.startsWith('src/rules/')) return 'rule';
  if (file.startsWith('src/quantity/')) return 'unit';
  if (ownDefault(node, above) !== undefined) return 'default';
  const own = above.slice(0, 3);
  if (own.some((at) => ts.isBinaryExpression(at) && COMPARISONS.has(at.operatorToken.kind))) return 'limit';
  if (own.some((at) => GUARDS.test(calleeOf(at)))) return 'limit';
  return 'coefficient';
}

/** Every constant of a file, in the order in which they stand there. */
export function constantsOf(file: string, text: string): Constant[] {
  const source = treeOf(file, text);
  const of = returnsOf(file, text)[0]?.id ?? basename(file, '.ts');
  const refusals = refusalsOf(source);
  const found: Constant[] = [];
  const declared = new Map<string, (readonly [number, number])[]>();
  const place = (node: ts.Node): readonly [number, number] => [node.getStart(), node.getEnd()];
  const lines = text.split('\n');
  const add = (node: ts.Node, value: number, sort: ConstantSort, places: Constant['places']): void => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    const atLoad = !ancestorsOf(node).some(isFunction);
    found.push({
      file,
      of,
      line: line + 1,
      text: node.getText(),
      value,
      sort,
      atLoad,
      code: (lines[line] ?? '').trim(),
      places,
    });
  };
  const literals: { readonly node: ts.NumericLiteral; readonly above: readonly ts.Node[] }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node)) literals.push({ node, above: ancestorsOf(node) });
    if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.PI') {
      const above = ancestorsOf(node);
      if (!isInMessage(above, refusals)) add(node, Math.PI, sortOf(file, node, above), [place(node)]);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const { node, above } of literals) {
    if (inDeclaration(above) === undefined) continue;
    const input = declaredDefault(node);
    if (input !== undefined) declared.set(input, [...(declared.get(input) ?? []), place(node)]);
  }
  const defaults = new Map<string, (readonly [number, number])[]>();
  for (const { node, above } of literals) {
    if (inDeclaration(above) !== undefined || isLeftOut(node, above, refusals)) continue;
    const input = ownDefault(node, above);
    const known = defaults.get(`${input} ${node.text}`);
    if (input !== undefined && known !== undefined) {
      // One default that two functions of the file repeat is one constant.
      known.push(place(node));
      continue;
    }
    const places = [place(node), ...(input === undefined ? [] : (declared.get(input) ?? []))];
    if (input !== undefined) defaults.set(`${input} ${node.text}`, places);
    add(node, Number(node.text), sortOf(file, node, above), places);
  }
  return found.sort((a, b) => (a.places[0]?.[0] ?? 0) - (b.places[0]?.[0] ?? 0));
}

/** The function that each formula of a file declares, by its id, and the values that it returns. */
export function returnsOf(file: string, text: string): { readonly id: string; readonly places: Constant['places'] }[] {
  const source = treeOf(file, text);
  const functions = new Map<string, ts.FunctionDeclaration>();
  const declarations: { id: string; compute: string }[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionDeclaration(node) && node.name !== undefined) functions.set(node.name.text, node);
    if (ts.isCallExpression(node) && calleeOf(node) === 'formula') {
      const [fields] = node.arguments;
      const field = (name: string): string => {
        const property =
          fields !== undefined && ts.isObjectLiteralExpression(fields)
            ? fields.properties.find((each) => each.name?.getText() === name)
            : undefined;
        if (property !== undefined && ts.isPropertyAssignment(property)) {
          const { initializer } = property;
          return ts.isStringLiteral(initializer) ? initializer.text : initializer.getText();
        }
        return '';
      };
      declarations.push({ id: field('id'), compute: field('compute') });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return declarations.map(({ id, compute }) => {
    const places: (readonly [number, number])[] = [];
    const own = functions.get(compute);
    const search = (node: ts.Node): void => {
      if (node !== own && isFunction(node)) return;
      if (ts.isReturnStatement(node) && node.expression !== undefined)
        places.push([node.expression.getStart(), node.expression.getEnd()]);
      ts.forEachChild(node, search);
    };
    if (own !== undefined) search(own);
    return { id, places };
  });
}
