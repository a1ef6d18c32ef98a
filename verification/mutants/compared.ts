import ts from 'typescript';

/**
 * The instrumented source with each changed value beside its own, so that a run of a test tells which changes make a difference
 * where they stand. A test in which a change makes none there cannot notice it, and is not asked.
 */

/** Reading calls: what calls something else may do a thing twice when it is worked out beside the original. */
const READS = new Set(
  ['abs', 'at', 'endsWith', 'every', 'filter', 'find', 'get', 'has', 'hasOwn', 'includes', 'isArray', 'isFinite']
    .concat(['isSafeInteger', 'join', 'keys', 'map', 'max', 'min', 'replaceAll', 'some', 'sqrt', 'startsWith', 'test'])
    .concat(['toLowerCase', 'toUpperCase', 'trim']),
);

/** `stryMutAct("5") ? left <= t : stryMutAct("4") ? … : (stryCov("4", "5"), left > t)` */
interface Choice {
  readonly changes: readonly { readonly id: string; readonly value: ts.Expression }[];
  /** Everything after the changes. */
  readonly last: ts.Expression;
  readonly original: ts.Expression;
}

const idOf = (node: ts.Expression): string | undefined => {
  if (!ts.isCallExpression(node) || node.expression.getText() !== 'stryMutAct_9fa48') return undefined;
  const [id] = node.arguments;
  return id !== undefined && ts.isStringLiteral(id) ? id.text : undefined;
};

function choiceIn(node: ts.Node): Choice | undefined {
  const changes: { id: string; value: ts.Expression }[] = [];
  let last = node;
  while (ts.isConditionalExpression(last)) {
    const id = idOf(last.condition);
    if (id === undefined) break;
    changes.push({ id, value: last.whenTrue });
    last = last.whenFalse;
  }
  if (changes.length === 0 || !ts.isParenthesizedExpression(last)) return undefined;
  const both = last.expression;
  return ts.isBinaryExpression(both) ? { changes, last, original: both.right } : undefined;
}

function onlyReads(node: ts.Node): boolean {
  if (ts.isCallExpression(node)) {
    const { expression: called } = node;
    if (!ts.isPropertyAccessExpression(called) || !READS.has(called.name.text)) return false;
  }
  if (ts.isNewExpression(node) || ts.isPostfixUnaryExpression(node) || ts.isDeleteExpression(node)) return false;
  if (ts.isPrefixUnaryExpression(node) && /^(?:\+\+|--)/u.test(node.getText())) return false;
  if (ts.isBinaryExpression(node) && isAssignment(node.operatorToken.kind)) return false;
  return !ts.forEachChild(node, (child) => !onlyReads(child));
}

const isAssignment = (kind: ts.SyntaxKind): boolean =>
  kind >= ts.SyntaxKind.FirstAssignment && kind <= ts.SyntaxKind.LastAssignment;

/** A source as the instrumenter left it, with `compared` of `Switches` in it wherever a value can be worked out beside another. */
export function withComparisons(text: string): string {
  const source = ts.createSourceFile('source.ts', text, ts.ScriptTarget.Latest, true);
  const written = (node: ts.Node): string => {
    const choice = choiceIn(node);
    if (choice !== undefined) {
      const { changes, original } = choice;
      const beside = changes.map(({ id, value }) => `${id}: ${onlyReads(value) ? `() => (${value.getText()})` : '0'}`);
      return ` stryNS_9fa48().compared(() => (${written(original)}), { ${beside.join(', ')} })`;
    }
    let [done, at] = ['', node.getFullStart()];
    ts.forEachChild(node, (child) => {
      done += text.slice(at, child.getFullStart()) + written(child);
      at = child.end;
    });
    return done + text.slice(at, node.end);
  };
  return written(source);
}
