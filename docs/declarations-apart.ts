import { readFileSync } from 'node:fs';
import type { Plugin, ProgramNode } from 'rollup';

/** A statement of a built file, with where it stands in the text. */
type Statement = ProgramNode['body'][number] & { readonly start: number; readonly end: number };

/**
 * Takes a formula and its declaration apart, for a bundle that is split. They stand in one file, and a bundler moves whole
 * files, so that whoever calls the function would load what is printed about it too.
 */
export function declarationsApart(): Plugin {
  const parts = new Map<string, string>();
  return {
    name: 'declarations-apart',
    resolveId: (id) => (parts.has(id) ? id : null),
    load(id) {
      const part = parts.get(id);
      if (part !== undefined) return part;
      const code = readFileSync(id, 'utf8');
      const body = this.parse(code).body as unknown as readonly Statement[];
      const declared = body.filter(isDeclaration);
      if (declared.length === 0) return code;
      const others = body.filter(({ type }) => !type.startsWith('Export')).filter((each) => !isDeclaration(each));
      const textOf = (statements: readonly Statement[]): string =>
        statements.map(({ start, end }) => code.slice(start, end)).join('\n');
      const declarations = declared.flatMap(namesOf);
      const functions = body.flatMap(exportedBy).filter((name) => !declarations.includes(name));
      const words = new Set(textOf(declared).match(/[\w$]+/gu));
      const shared = new Set([...functions, ...others.flatMap(namesOf).filter((name) => words.has(name))]);
      const [ofFunction, ofDeclaration] = [`${id}?function`, `${id}?declaration`];
      parts.set(ofFunction, `${textOf(others)}\n${list('export', shared)};`);
      parts.set(
        ofDeclaration,
        `${textOf(body.filter(({ type }) => type === 'ImportDeclaration'))}\n${list('import', shared, ofFunction)}` +
          `${textOf(declared)}\n${list('export', declarations)}`,
      );
      return list('export', functions, ofFunction) + list('export', declarations, ofDeclaration);
    },
  };
}

/** Built code has one name in each declaration, and says at its end what it exports. */
function isDeclaration(statement: Statement): boolean {
  if (statement.type !== 'VariableDeclaration') return false;
  const value = statement.declarations[0]?.init;
  return value?.type === 'CallExpression' && value.callee.type === 'Identifier' && value.callee.name === 'formula';
}

function namesOf(statement: Statement): string[] {
  if (statement.type === 'FunctionDeclaration') return [statement.id.name];
  if (statement.type !== 'VariableDeclaration') return [];
  return statement.declarations.flatMap(({ id }) => (id.type === 'Identifier' ? [id.name] : []));
}

function exportedBy(statement: Statement): string[] {
  if (statement.type !== 'ExportNamedDeclaration') return [];
  return statement.specifiers.flatMap(({ exported }) => (exported.type === 'Identifier' ? [exported.name] : []));
}

function list(word: 'import' | 'export', names: Iterable<string>, from?: string): string {
  return `${word} { ${[...names].join(', ')} }${from === undefined ? '' : ` from ${JSON.stringify(from)}`};\n`;
}
