import ts from 'typescript';

/**
 * The guards of the job, found in its syntax tree: each place at which it refuses, asks, warns, stops or fails a record, and
 * each condition that such a place hangs on. A guard can be switched off by its number, which is how the hazard log is
 * executed.
 */

export interface Guard {
  /** `limits/bond.ts: need laminate.lapShearStrength`: stands in the hazard log. */
  readonly key: string;
  readonly file: string;
  readonly line: number;
  readonly edits: readonly Edit[];
}

/** A place of the text and what is put there, given the number of the guard. */
interface Edit {
  readonly at: number;
  readonly text: (off: string) => string;
  /** Outer brackets open before inner ones, and close after them. */
  readonly depth: number;
  readonly closes: boolean;
}

/** Calls that refuse, ask or warn. */
const CALLS = new Set([
  ...['need', 'warn', 'warnCrew', 'warnOwner', 'note', 'atMost', 'atLeast', 'refuse'],
  ...['nonNegative', 'positive', 'wholeNumber', 'yesOrNo', 'needed'],
]);
/** Lists that hold what speaks against a design, a start or a record. */
const LISTS = /(?:^|\.)(?:reasons|notCovered|missing|alerts|against|faults|open|stops)$/u;
/** Types of such lists where a function gives one back. */
const FINDINGS = /^(?:Reason|SiteReason)\[\]$/u;
const AGAINST = new Set(['does not meet', 'not shown']);
/** What a record that is refused a rating would be rated for. */
const GOOD = "({ pressure: design.case.service.designPressure, because: { text: '' } } as never)";
/** Calls that make a hold point of a record, by the point in their first argument. */
const POINTS = new Set(['notShown', 'reaching', 'measured', 'seenTrue', 'pointBy']);
/** Files that only pass on what others found. */
const PASSES_ON = new Set(['job/workbook.ts', 'case/contradiction.ts', 'job/missing-input.ts']);

export function isGuarded(file: string): boolean {
  return file.startsWith('src/repair/') && !PASSES_ON.has(shortOf(file));
}

const shortOf = (file: string): string => file.replace(/^src\/repair\//u, '');

const isFunction = (node: ts.Node): node is ts.SignatureDeclaration =>
  ts.isFunctionDeclaration(node) || ts.isArrowFunction(node) || ts.isFunctionExpression(node);

function ancestorsOf(node: ts.Node): ts.Node[] {
  const found: ts.Node[] = [];
  for (let at = node.parent; at !== undefined; at = at.parent) found.push(at);
  return found;
}

/** What a call, a list or a verdict does when it is switched off. */
function removalOf(node: ts.Node, file: string): { readonly instead: string; readonly called: string } | undefined {
  if (ts.isCallExpression(node)) {
    const called = node.expression.getText();
    if (CALLS.has(called)) return { instead: 'undefined', called };
    if (called === 'unrated') return { instead: GOOD, called };
    const [point] = node.arguments;
    if (file.startsWith('src/repair/as-built/') && POINTS.has(called) && point !== undefined)
      return { instead: `({ point: ${point.getText()}, verdict: 'meets', text: '' } as never)`, called };
    if (ts.isPropertyAccessExpression(node.expression) && node.expression.name.text === 'push') {
      const list = node.expression.expression.getText();
      const isSpread = node.arguments.every(ts.isSpreadElement);
      if (LISTS.test(list) && !isSpread) return { instead: '0', called: list.replace(/^.*\./u, '') };
    }
  }
  if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && !node.elements.every(ts.isSpreadElement)) {
    const holder = ancestorsOf(node).find(isFunction);
    const isAlert = file === 'src/repair/plan/alerts.ts' && holder?.type?.getText() === 'Line[]';
    if (isReturned(node) && (isAlert || FINDINGS.test(holder?.type?.getText() ?? '')))
      return { instead: '[]', called: 'reason' };
  }
  if (file.startsWith('src/repair/as-built/') && ts.isStringLiteral(node) && AGAINST.has(node.text)) {
    const isType = ancestorsOf(node).some(ts.isTypeNode);
    const isCompared = ts.isBinaryExpression(node.parent);
    if (!isType && !isCompared) return { instead: "'meets' as never", called: node.text };
  }
  return undefined;
}

function isReturned(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isReturnStatement(parent)) return true;
  if (ts.isConditionalExpression(parent)) return isReturned(parent);
  return ts.isArrowFunction(parent) && parent.body === node;
}

/** Which argument of a call says what it is about, counted from 1; else the first that is no list. */
const ABOUT = new Map([
  ...['need', 'warn', 'warnOwner', 'atMost', 'atLeast', 'notShown', 'nonNegative', 'positive', 'yesOrNo', 'needed'].map(
    (call) => [call, 2] as const,
  ),
  ...['warnCrew', 'wholeNumber'].map((call) => [call, 3] as const),
]);

/** What a guard is called: by the field or the words that it is about, else by the function that it stands in. */
function labelOf(node: ts.Node, called: string): string {
  if (ts.isStringLiteral(node)) {
    const holder = ancestorsOf(node).find(ts.isFunctionDeclaration);
    return `${holder?.name?.text ?? ''}: ${called}`;
  }
  const [first, second, third] = ts.isCallExpression(node) ? node.arguments : [];
  const [own] = [first, second].filter(
    (each) => each !== undefined && !(ts.isIdentifier(each) && LISTS.test(each.text)),
  );
  const about = [undefined, first, second, third][ABOUT.get(called) ?? 0] ?? own ?? node;
  return `${called} ${wordsOf(about)}`;
}

/** The first words in a guard that are no code word of a refusal. */
function wordsOf(node: ts.Node): string {
  let words = '';
  const visit = (at: ts.Node): void => {
    if (words !== '') return;
    if (ts.isStringLiteral(at) || ts.isNoSubstitutionTemplateLiteral(at))
      words = at.text === 'invalid-input' ? '' : at.text;
    else if (ts.isTemplateExpression(at)) words = at.getText().slice(1, -1);
    else ts.forEachChild(at, visit);
  };
  visit(node);
  return short(words === '' ? node.getText() : words);
}

/** What stands in for an expression is written `<expression>`. */
const short = (text: string): string =>
  text
    .replace(/\s+/gu, ' ')
    .replace(/\$\{([^}]*)\}/gu, '<$1>')
    .trim()
    .slice(0, 64)
    .trim();

type Half = readonly [operand: ts.Expression, instead: string];

/** The parts of a condition that each let a guard speak: of `a || b` where it must hold, of `a && b` where it must not. */
function halvesOf(condition: ts.Expression, mustHold: boolean): Half[] {
  if (ts.isParenthesizedExpression(condition)) return halvesOf(condition.expression, mustHold);
  if (ts.isPrefixUnaryExpression(condition) && condition.operator === ts.SyntaxKind.ExclamationToken)
    return halvesOf(condition.operand, !mustHold);
  if (!ts.isBinaryExpression(condition)) return [];
  const { kind } = condition.operatorToken;
  const isOr = kind === ts.SyntaxKind.BarBarToken;
  if (!isOr && kind !== ts.SyntaxKind.AmpersandAmpersandToken) return [];
  const operands = [condition.left, condition.right];
  const inner = operands.flatMap((operand) => halvesOf(operand, mustHold));
  if (isOr !== mustHold) return inner;
  // Of a chain `(a || b) || c` the left side is no half of its own.
  const own = operands.filter((operand) => !ts.isBinaryExpression(operand) || operand.operatorToken.kind !== kind);
  return [...inner, ...own.map((operand): Half => [operand, String(!mustHold)])];
}

/** The conditions above a guard within its function, and those that leave the function before it. */
function conditionsOver(node: ts.Node): Half[] {
  const found: Half[] = [];
  let below: ts.Node = node;
  for (const at of ancestorsOf(node)) {
    if (isFunction(at)) break;
    if (ts.isIfStatement(at) && below !== at.expression)
      found.push(...halvesOf(at.expression, below === at.thenStatement));
    if (ts.isConditionalExpression(at) && below !== at.condition)
      found.push(...halvesOf(at.condition, below === at.whenTrue));
    if (ts.isBlock(at)) {
      for (const statement of at.statements) {
        if (statement === below) break;
        if (ts.isIfStatement(statement) && leaves(statement.thenStatement) && statement.elseStatement === undefined)
          found.push(...halvesOf(statement.expression, false));
      }
    }
    below = at;
  }
  return found;
}

function leaves(statement: ts.Statement): boolean {
  const last = ts.isBlock(statement) ? statement.statements.at(-1) : statement;
  return last !== undefined && (ts.isReturnStatement(last) || ts.isContinueStatement(last));
}

/** Every guard of a file, in the order in which they stand there. */
export function guardsOf(file: string, text: string): Guard[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Guard[] = [];
  const known = new Map<string, number>();
  const add = (node: ts.Node, label: string, instead: string): void => {
    const called = `${shortOf(file)}: ${label}`;
    const times = (known.get(called) ?? 0) + 1;
    known.set(called, times);
    const depth = ancestorsOf(node).length;
    found.push({
      key: times === 1 ? called : `${called} (${times})`,
      file,
      line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1,
      edits: [
        { at: node.getStart(), depth, closes: false, text: (off) => `(${off} ? ${instead} : ` },
        { at: node.getEnd(), depth, closes: true, text: () => ')' },
      ],
    });
  };
  const halves = new Map<ts.Expression, string>();
  const visit = (node: ts.Node): void => {
    const removal = removalOf(node, file);
    if (removal !== undefined) {
      add(node, labelOf(node, removal.called), removal.instead);
      for (const [operand, instead] of conditionsOver(node)) halves.set(operand, instead);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const [operand, instead] of halves) add(operand, `if ${short(operand.getText())}`, instead);
  return found;
}

/** The text of a file in which each guard asks whether it is switched off. */
export function switchable(text: string, guards: readonly (Guard & { readonly index: number })[]): string {
  const edits = guards.flatMap(({ edits: own, index }) =>
    own.map((edit) => ({ ...edit, by: edit.text(`__off(${index})`) })),
  );
  // From the end, so that places stay right; at one place what closes stands before what opens.
  edits.sort((a, b) => {
    if (a.at !== b.at) return b.at - a.at;
    if (a.closes !== b.closes) return a.closes ? 1 : -1;
    return a.closes ? a.depth - b.depth : b.depth - a.depth;
  });
  let changed = text;
  for (const { at, by } of edits) changed = changed.slice(0, at) + by + changed.slice(at);
  return changed;
}
