/**
 * Writes the types of the package into dist, file by file as the JavaScript stands: `npm run build:types`.
 *
 * The compiler's own declarations are what an ESM import reads. A CommonJS `require` reads the same text once more under
 * `.d.cts`, with its imports led to the other `.d.cts`. Rolled up, they took four times as long.
 *
 * A field that has its words in a table gets them as its doc comment, so that an editor shows them.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { entries } from './contents.js';
import { fieldWords } from './field-words.js';

const root = fileURLToPath(new URL('..', import.meta.url));

const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), (path) => readFileSync(path, 'utf8'));
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
const program = ts.createProgram(
  [...entries().values()].map((file) => join(root, `src/${file}.ts`)),
  {
    ...options,
    noEmit: false,
    // `npm run types` has checked them.
    noCheck: true,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: join(root, 'src'),
    outDir: join(root, 'dist'),
  },
);

const words = fieldWords(program);

/** Sets the words of each field in front of it. */
function withWords(context: ts.TransformationContext): ts.Transformer<ts.SourceFile | ts.Bundle> {
  const visit = (node: ts.Node): ts.Node => {
    const text = words.get(ts.getOriginalNode(node));
    if (text !== undefined)
      ts.addSyntheticLeadingComment(node, ts.SyntaxKind.MultiLineCommentTrivia, `* ${text} `, true);
    return ts.visitEachChild(node, visit, context);
  };
  return (file) => ts.visitNode(file, visit) as ts.SourceFile;
}

const write: ts.WriteFileCallback = (path, text) => {
  ts.sys.writeFile(path, text);
  const required = text.replaceAll(/(['"])(\.{1,2}\/[^'"]+)\.js\1/gu, '$1$2.cjs$1');
  ts.sys.writeFile(path.replace(/\.d\.ts$/u, '.d.cts'), required);
};
const { diagnostics } = program.emit(undefined, write, undefined, undefined, { afterDeclarations: [withWords] });
if (diagnostics.length > 0) {
  process.stderr.write(ts.formatDiagnostics(diagnostics, ts.createCompilerHost(options)));
  process.exitCode = 1;
}
