import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { root } from './identity.js';
import type { PropertyRow } from './shape.js';

/**
 * The properties that the tests assert on random input, read from the tests themselves: the sentence of each, its number of
 * runs and its seed. A property whose runs or seed cannot be read stops the report.
 */

interface Settings {
  readonly runs?: number | undefined;
  readonly seed?: number | undefined;
}

class TestFile {
  readonly source: ts.SourceFile;
  private static readonly known = new Map<string, TestFile>();
  private constructor(
    readonly path: string,
    text: string,
  ) {
    this.source = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  }

  /** A file, parsed once however many others import a constant from it. */
  static at(path: string, text = readFileSync(path, 'utf8')): TestFile {
    const file = TestFile.known.get(path) ?? new TestFile(path, text);
    TestFile.known.set(path, file);
    return file;
  }

  /** A constant of the file, or of the file that it is imported from. */
  constant(name: string): ts.Expression | undefined {
    for (const statement of this.source.statements) {
      if (ts.isVariableStatement(statement)) {
        for (const { name: own, initializer } of statement.declarationList.declarations)
          if (own.getText() === name && initializer !== undefined) return initializer;
      }
      if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)) {
        const { text } = statement.moduleSpecifier;
        const bindings = statement.importClause?.namedBindings;
        const imported = bindings !== undefined && ts.isNamedImports(bindings) ? bindings.elements : [];
        if (text.startsWith('.') && imported.some((element) => element.name.text === name)) {
          return TestFile.at(join(dirname(this.path), text.replace(/\.js$/u, '.ts'))).constant(name);
        }
      }
    }
    return undefined;
  }

  settings(expression: ts.Expression | undefined): Settings {
    if (expression === undefined) return {};
    if (
      ts.isAsExpression(expression) ||
      ts.isSatisfiesExpression(expression) ||
      ts.isParenthesizedExpression(expression)
    )
      return this.settings(expression.expression);
    if (ts.isIdentifier(expression)) return this.settings(this.constant(expression.text));
    if (!ts.isObjectLiteralExpression(expression)) return {};
    let found: Settings = {};
    for (const property of expression.properties) {
      if (ts.isSpreadAssignment(property)) found = { ...found, ...this.settings(property.expression) };
      const key = property.name?.getText();
      if (key !== 'numRuns' && key !== 'seed') continue;
      const value = ts.isPropertyAssignment(property) ? this.number(property.initializer) : this.byName(key);
      found = key === 'seed' ? { ...found, seed: value } : { ...found, runs: value };
    }
    return found;
  }

  private byName(name: string): number | undefined {
    const constant = this.constant(name);
    return constant === undefined ? undefined : this.number(constant);
  }

  number(expression: ts.Expression): number | undefined {
    if (ts.isNumericLiteral(expression)) return Number(expression.text.replaceAll('_', ''));
    return ts.isIdentifier(expression) ? this.byName(expression.text) : undefined;
  }
}

const callee = (node: ts.CallExpression): string => node.expression.getText();

/** The sentence of a test, with the sentences of the groups that it stands in. */
function sentenceOf(test: ts.CallExpression): string {
  const parts: string[] = [];
  for (let node: ts.Node = test; node !== undefined && !ts.isSourceFile(node); node = node.parent) {
    if (!ts.isCallExpression(node) || !/^(?:it|test|describe)\b/u.test(callee(node))) continue;
    const [first] = node.arguments;
    if (first === undefined) continue;
    if (ts.isStringLiteralLike(first)) parts.unshift(first.text);
    else if (ts.isTemplateExpression(first)) parts.unshift(first.getText().replaceAll(/^`|`$/gu, ''));
  }
  return parts.join(': ');
}

function enclosing(node: ts.Node, test: (node: ts.Node) => boolean): ts.Node | undefined {
  for (let at = node.parent; at !== undefined && !ts.isSourceFile(at); at = at.parent) if (test(at)) return at;
  return undefined;
}

const isTest = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && /^(?:it|test)\b/u.test(callee(node)) && node.arguments.length >= 2;

/** The function of the file, outside any test, that an assertion stands in: `const run = (property) => fc.assert(...)`. */
function helperOf(node: ts.Node): { name: string; parameters: readonly ts.ParameterDeclaration[] } | undefined {
  const inside = enclosing(node, (at) => ts.isArrowFunction(at) || ts.isFunctionDeclaration(at));
  if (inside === undefined) return undefined;
  if (ts.isFunctionDeclaration(inside)) return { name: inside.name?.text ?? '', parameters: [...inside.parameters] };
  if (ts.isArrowFunction(inside) && ts.isVariableDeclaration(inside.parent)) {
    return { name: inside.parent.name.getText(), parameters: [...inside.parameters] };
  }
  return undefined;
}

function calls(node: ts.Node, name: string): ts.CallExpression[] {
  const found: ts.CallExpression[] = [];
  const visit = (at: ts.Node): void => {
    if (ts.isCallExpression(at) && callee(at) === name) found.push(at);
    ts.forEachChild(at, visit);
  };
  visit(node);
  return found;
}

function rowsOf(file: TestFile): PropertyRow[] {
  const rows: PropertyRow[] = [];
  const add = (at: ts.Node, { runs, seed }: Settings): void => {
    const test = enclosing(at, isTest);
    const where = `${relative(root, file.path)}:${file.source.getLineAndCharacterOfPosition(at.getStart()).line + 1}`;
    if (test === undefined) throw new Error(`${where}: a property outside any test`);
    if (runs === undefined || seed === undefined) throw new Error(`${where}: cannot read the runs and the seed`);
    rows.push({
      sort: 'other',
      file: relative(root, file.path),
      sentence: sentenceOf(test as ts.CallExpression),
      runs,
      seed,
    });
  };
  for (const assertion of calls(file.source, 'fc.assert')) {
    const options = assertion.arguments[1];
    if (enclosing(assertion, isTest) !== undefined) {
      add(assertion, file.settings(options));
      continue;
    }
    const helper = helperOf(assertion);
    if (helper === undefined) continue;
    const byDefault = file.settings(options);
    for (const call of calls(file.source, helper.name)) {
      if (enclosing(call, isTest) === undefined) continue;
      const index = helper.parameters.findIndex(({ name }) => name.getText() === 'numRuns');
      const given = index < 0 ? undefined : (call.arguments[index] ?? helper.parameters[index]?.initializer);
      add(call, { ...byDefault, ...(given === undefined ? {} : { runs: file.number(given) }) });
    }
  }
  return rows;
}

function testFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return testFiles(path);
      return entry.name.endsWith('.test.ts') ? [path] : [];
    })
    .sort();
}

/** Every property of the tests, each sentence once, in the order of the files. */
export function properties(): PropertyRow[] {
  const rows = ['tests', 'verification'].flatMap((folder) =>
    testFiles(join(root, folder)).flatMap((path) => {
      const text = readFileSync(path, 'utf8');
      return text.includes('fc.assert') ? rowsOf(TestFile.at(path, text)) : [];
    }),
  );
  const seen = new Set<string>();
  return rows.filter(({ file, sentence, runs }) => {
    const key = `${file} ${sentence} ${runs}`;
    return !seen.has(key) && seen.add(key);
  });
}

interface Listed {
  readonly sort: string;
  readonly file: string;
  readonly sentence: string;
  readonly runs: number;
  readonly seed: number | string;
}

/** Every property, by sort: those that verification/properties.json sorts first, in its order, then all others. */
export function sortedProperties(): PropertyRow[] {
  const listed: readonly Listed[] = JSON.parse(readFileSync(join(root, 'verification/properties.json'), 'utf8'));
  const known = new Set(listed.map(({ file, sentence }) => `${file} ${sentence}`));
  return [...listed, ...properties().filter(({ file, sentence }) => !known.has(`${file} ${sentence}`))];
}
