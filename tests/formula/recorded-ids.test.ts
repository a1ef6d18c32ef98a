import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { formulaOf } from '../../src/registry/index.js';

/**
 * A step is recorded under an id that stands beside its function in the source, and nothing but this file knows whether
 * the two belong together. Every call is read from the syntax tree; its function is found by the import that brings it.
 */

const source = fileURLToPath(new URL('../../src', import.meta.url));

interface StepCall {
  readonly at: string;
  readonly file: string;
  readonly arguments: readonly ts.Expression[];
}

/** Where a name comes from: the path of its module as written, and what it is called there. */
type Imports = ReadonlyMap<string, { readonly module: string; readonly exported: string }>;

function importsOf(file: ts.SourceFile): Imports {
  const imports = new Map<string, { module: string; exported: string }>();
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement) || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    const bindings = statement.importClause?.namedBindings;
    if (bindings === undefined || !ts.isNamedImports(bindings)) continue;
    const module = statement.moduleSpecifier.text;
    for (const { name, propertyName } of bindings.elements) {
      imports.set(name.text, { module, exported: (propertyName ?? name).text });
    }
  }
  return imports;
}

function callsOf(file: ts.SourceFile, imports: Imports): StepCall[] {
  const own = [...imports].filter(
    ([, { module, exported }]) => exported === 'step' && /formula\/|recorder/u.test(module),
  );
  const names = new Set(own.map(([name]) => name));
  const found: StepCall[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && names.has(node.expression.text)) {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
      found.push({ at: `${file.fileName}:${line + 1}`, file: file.fileName, arguments: node.arguments });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => ts.createSourceFile(name, readFileSync(`${source}/${name}`, 'utf8'), ts.ScriptTarget.Latest, true));

const calls = files.flatMap((file) => {
  const imports = importsOf(file);
  return callsOf(file, imports).map((call) => ({ ...call, imports }));
});

/** The function that the source hands to the recorder, by the module that it is imported from. */
async function functionOf(file: string, imports: Imports, name: string): Promise<unknown> {
  const from = imports.get(name);
  if (from === undefined) return undefined;
  const url = new URL(from.module.replace(/\.js$/u, '.ts'), new URL(`../../src/${file}`, import.meta.url));
  const module: Record<string, unknown> = await import(fileURLToPath(url));
  return module[from.exported];
}

describe('every recorded step in the source', () => {
  it('is found: no file calls a step whose calls were not read', () => {
    const read = new Set(calls.map(({ file }) => file));
    const unread = files.filter(({ text, fileName }) => /\bstep\(/u.test(text) && !read.has(fileName));
    expect(unread.map(({ fileName }) => fileName)).toEqual([]);
    expect(calls.length).toBeGreaterThan(100);
  });

  it.each(calls.map((call) => [call.at, call] as const))('names the formula of its function: %s', async (_, call) => {
    const [, id, compute] = call.arguments;
    if (id === undefined || !ts.isStringLiteral(id)) throw new Error('the id is not written out');
    if (compute === undefined || !ts.isIdentifier(compute)) throw new Error('the function is not named');
    const formula = formulaOf(await functionOf(call.file, call.imports, compute.text));
    expect(formula?.id, `${compute.text} is not in the registry`).toBe(id.text);
  });
});
