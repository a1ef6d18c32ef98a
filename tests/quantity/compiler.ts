import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Files other than snippets, parsed once however often the compiler is asked. */
const parsed = new Map<string, ts.SourceFile | undefined>();

/** What the compiler says of some snippets: for each the first line of every error, or nothing. */
export function compile<Name extends string>(snippets: Readonly<Record<Name, string>>): Record<Name, string[]> {
  const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const pathOf = (name: string): string => join(root, 'tests/quantity', `snippet of ${name}.ts`);
  const files = new Map(
    Object.entries<string>(snippets).map(([name, text]) => [pathOf(name), `${text}\nexport {};\n`]),
  );
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => files.has(path) || fileExists(path);
  host.readFile = (path) => files.get(path) ?? readFile(path);
  host.getSourceFile = (path, language, ...rest) => {
    const text = files.get(path);
    if (text !== undefined) return ts.createSourceFile(path, text, language);
    const known = parsed.get(path) ?? getSourceFile.call(host, path, language, ...rest);
    parsed.set(path, known);
    return known;
  };
  const program = ts.createProgram([...files.keys()], options, host);
  const errors = (name: string): string[] => {
    const source = program.getSourceFile(pathOf(name));
    const found = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)];
    return found.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n').split('\n')[0] ?? '');
  };
  return Object.fromEntries(Object.keys(snippets).map((name) => [name, errors(name)])) as Record<Name, string[]>;
}
